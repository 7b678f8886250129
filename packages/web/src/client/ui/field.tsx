import type { Refusal } from "@nightspan/core";
import { useSignal } from "@preact/signals";
import type { ComponentChildren } from "preact";
import { useEffect, useId } from "preact/hooks";
import { editCamp, opened, settleEdit } from "../state/camp-store.ts";
import { readAt, writeAt, writePath, type DocumentPath } from "../state/document-path.ts";
import { noteFault } from "../state/field-faults.ts";
import { FaultNote } from "./fault-note.tsx";
import { readNumber } from "./read-number.ts";

interface FieldProps {
  readonly path: DocumentPath;
  readonly label: string;
}

/** What is being typed; it stays as typed where it cannot be used, until it is put right. */
interface Draft {
  readonly text: string;
  readonly refusals: readonly Refusal[];
}

/** The value of a field in the camp in hand. */
export function fieldValue(path: DocumentPath): unknown {
  return readAt(opened.value?.document, path);
}

/** Sets a field of the camp in hand; the refusals where the camp cannot bear it. */
export function setField(path: DocumentPath, value: unknown): readonly Refusal[] {
  return editCamp(writePath(path), (document) => writeAt(document, path, value));
}

interface TypedFieldProps extends FieldProps {
  readonly unit?: string;
  readonly hint?: string;
  readonly read: (text: string) => unknown;
  readonly numeric: boolean;
}

/** A field typed as text. What cannot be used stays as typed, with what is needed instead. */
function TypedField({ path, label, unit, hint, read, numeric }: TypedFieldProps) {
  const id = useId();
  const draft = useSignal<Draft | undefined>(undefined);
  const value = fieldValue(path);
  const written = typeof value === "string" || typeof value === "number" ? String(value) : "";
  const refusals = draft.value?.refusals ?? [];
  const faulty = refusals.length > 0;
  useEffect(() => noteFault(id, faulty), [faulty]);
  useEffect(() => () => noteFault(id, false), []);
  return (
    <div class={faulty ? "field field-faulty" : "field"}>
      <label for={id}>{label}</label>
      <span class="field-value">
        <input
          id={id}
          class={numeric ? "input input-number" : "input"}
          inputMode={numeric ? "decimal" : "text"}
          autocomplete="off"
          dir={numeric ? "ltr" : "auto"}
          value={draft.value?.text ?? written}
          placeholder={hint ?? ""}
          aria-invalid={faulty}
          aria-describedby={faulty ? `${id}-fault` : undefined}
          onInput={(event) => {
            const text = event.currentTarget.value;
            draft.value = { text, refusals: setField(path, read(text)) };
          }}
          onBlur={() => {
            if (draft.value?.refusals.length === 0) draft.value = undefined;
            settleEdit();
          }}
        />
        {numeric ? <span class="field-unit">{unit}</span> : null}
      </span>
      {faulty ? <FaultNote id={`${id}-fault`} refusals={refusals} at={path} /> : null}
    </div>
  );
}

interface NumberFieldProps extends FieldProps {
  readonly unit?: string;
  /** What is taken where the field is left empty. */
  readonly hint?: string;
}

export function NumberField(props: NumberFieldProps) {
  return <TypedField {...props} numeric read={readNumber} />;
}

export function TextField(props: FieldProps & { readonly hint?: string }) {
  return <TypedField {...props} numeric={false} read={readText} />;
}

/** A civil day, by the browser's own calendar. */
export function DayField({ path, label }: FieldProps) {
  const id = useId();
  const value = fieldValue(path);
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <span class="field-value">
        <input
          id={id}
          type="date"
          class="input"
          value={typeof value === "string" ? value : ""}
          onChange={(event) => {
            setField(path, readText(event.currentTarget.value));
            settleEdit();
          }}
        />
      </span>
    </div>
  );
}

function readText(text: string): unknown {
  return text === "" ? undefined : text;
}

interface ChoiceFieldProps extends FieldProps {
  readonly choices: readonly (readonly [value: string, word: string])[];
  /** What holds where the file is silent. */
  readonly silentValue?: string;
}

export function ChoiceField({ path, label, choices, silentValue = "" }: ChoiceFieldProps) {
  const id = useId();
  const value = fieldValue(path);
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <span class="field-value">
        <select
          id={id}
          class="input"
          value={typeof value === "string" ? value : silentValue}
          onChange={(event) => {
            setField(path, readText(event.currentTarget.value));
            settleEdit();
          }}
        >
          {choices.map(([choice, word]) => (
            <option key={choice} value={choice}>
              {word}
            </option>
          ))}
        </select>
      </span>
    </div>
  );
}

interface FlagFieldProps extends FieldProps {
  /** What holds where the file is silent; that value is not written. */
  readonly silent: boolean;
}

export function FlagField({ path, label, silent }: FlagFieldProps) {
  const id = useId();
  const value = fieldValue(path);
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <span class="field-value">
        <input
          id={id}
          type="checkbox"
          class="check"
          checked={typeof value === "boolean" ? value : silent}
          onChange={(event) => {
            const checked = event.currentTarget.checked;
            setField(path, checked === silent ? undefined : checked);
            settleEdit();
          }}
        />
      </span>
    </div>
  );
}

export function FieldList({ children }: { readonly children: ComponentChildren }) {
  return <div class="fields">{children}</div>;
}
