import type { Refusal } from "@nightspan/core";
import { useSignal } from "@preact/signals";
import { useEffect, useId } from "preact/hooks";
import { settleEdit } from "../state/camp-store.ts";
import { writePath } from "../state/document-path.ts";
import { noteFault } from "../state/field-faults.ts";
import { fieldValue, setField, type FieldProps } from "../state/field-value.ts";
import { FaultNote } from "./fault-note.tsx";
import { FieldFrame, noteId } from "./field-frame.tsx";

/** What is being typed; it stays as typed where it cannot be used, until it is put right. */
interface Draft {
  readonly text: string;
  readonly refusals: readonly Refusal[];
}

export interface TypedFieldProps extends FieldProps {
  readonly unit?: string | undefined;
  /** What is taken where the field is left empty. */
  readonly hint?: string | undefined;
  readonly note?: string | undefined;
  /** From what is typed to the camp file's value, and back. */
  readonly read: (text: string) => unknown;
  readonly write?: (value: unknown) => string;
  /** Where more than the field itself has to change. */
  readonly set?: ((value: unknown) => readonly Refusal[]) | undefined;
  readonly numeric: boolean;
}

/** A field typed as text. What cannot be used stays as typed, with what is needed instead. */
export function TypedField(props: TypedFieldProps) {
  const { path, label, unit, hint, note, read, write = written, numeric } = props;
  const set = props.set ?? ((value: unknown) => setField(path, value));
  const id = useId();
  const draft = useSignal<Draft | undefined>(undefined);
  const refusals = draft.value?.refusals ?? [];
  const faulty = refusals.length > 0;
  useEffect(() => noteFault(id, faulty), [faulty]);
  useEffect(() => () => noteFault(id, false), []);
  return (
    <FieldFrame
      id={id}
      label={label}
      faulty={faulty}
      note={note}
      below={faulty ? <FaultNote id={`${id}-fault`} refusals={refusals} at={writePath(path)} /> : null}
    >
      <input
        id={id}
        class={numeric ? "input input-number" : "input"}
        inputMode={numeric ? "decimal" : "text"}
        autocomplete="off"
        dir={numeric ? "ltr" : "auto"}
        value={draft.value?.text ?? write(fieldValue(path))}
        placeholder={hint ?? ""}
        aria-invalid={faulty}
        aria-describedby={faulty ? `${id}-fault` : note === undefined ? undefined : noteId(id)}
        onInput={(event) => {
          const text = event.currentTarget.value;
          draft.value = { text, refusals: set(read(text)) };
        }}
        onBlur={() => {
          if (draft.value?.refusals.length === 0) draft.value = undefined;
          settleEdit();
        }}
      />
      {numeric ? <span class="field-unit">{unit}</span> : null}
    </FieldFrame>
  );
}

function written(value: unknown): string {
  return typeof value === "string" || typeof value === "number" ? String(value) : "";
}
