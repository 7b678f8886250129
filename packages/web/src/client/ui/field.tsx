import type { Refusal } from "@nightspan/core";
import type { ComponentChildren } from "preact";
import { useId } from "preact/hooks";
import { settleEdit } from "../state/camp-store.ts";
import { fieldValue, setField, type FieldProps } from "../state/field-value.ts";
import { FieldFrame, noteId } from "./field-frame.tsx";
import { readNumber } from "./read-number.ts";
import { TypedField, type TypedFieldProps } from "./typed-field.tsx";

type NumberFieldProps = Omit<TypedFieldProps, "read" | "write" | "numeric">;

export function NumberField(props: NumberFieldProps) {
  return <TypedField {...props} numeric read={readNumber} />;
}

/** A share from 0 to 1 in the file, typed and shown in hundredths. */
export function PercentField(props: Omit<NumberFieldProps, "unit">) {
  return <TypedField {...props} numeric unit="%" read={readPercent} write={writePercent} />;
}

export function TextField(props: Omit<NumberFieldProps, "unit">) {
  return <TypedField {...props} numeric={false} read={readText} />;
}

/** Several words in one line, parted by commas. */
export function ListField(props: Omit<NumberFieldProps, "unit">) {
  return <TypedField {...props} numeric={false} read={readList} write={writeList} />;
}

function readPercent(text: string): unknown {
  const value = readNumber(text.replace("%", ""));
  return typeof value === "number" ? Number((value / 100).toFixed(6)) : value;
}

function writePercent(value: unknown): string {
  return typeof value === "number" ? String(Number((value * 100).toFixed(4))) : "";
}

function readText(text: string): unknown {
  return text === "" ? undefined : text;
}

function readList(text: string): unknown {
  const words = text.split(",").map((word) => word.trim());
  const said = words.filter((word) => word !== "");
  return said.length === 0 ? undefined : said;
}

function writeList(value: unknown): string {
  return Array.isArray(value) ? value.join(", ") : "";
}

interface SetFieldProps extends FieldProps {
  readonly note?: string | undefined;
  /** Where more than the field itself has to change. */
  readonly set?: ((value: unknown) => readonly Refusal[]) | undefined;
}

/** A civil day, by the browser's own calendar. */
export function DayField({ path, label, note, set }: SetFieldProps) {
  const id = useId();
  const value = fieldValue(path);
  return (
    <FieldFrame id={id} label={label} note={note}>
      <input
        id={id}
        type="date"
        class="input"
        aria-describedby={note === undefined ? undefined : noteId(id)}
        value={typeof value === "string" ? value : ""}
        onChange={(event) => settled(path, set, readText(event.currentTarget.value))}
      />
    </FieldFrame>
  );
}

interface ChoiceFieldProps extends SetFieldProps {
  readonly choices: readonly (readonly [value: string, word: string])[];
  /** What holds where the file is silent. */
  readonly silentValue?: string;
}

export function ChoiceField({ path, label, note, set, choices, silentValue = "" }: ChoiceFieldProps) {
  const id = useId();
  const value = fieldValue(path);
  return (
    <FieldFrame id={id} label={label} note={note}>
      <select
        id={id}
        class="input"
        aria-describedby={note === undefined ? undefined : noteId(id)}
        value={typeof value === "string" || typeof value === "boolean" ? String(value) : silentValue}
        onChange={(event) => settled(path, set, readText(event.currentTarget.value))}
      >
        {choices.map(([choice, word]) => (
          <option key={choice} value={choice}>
            {word}
          </option>
        ))}
      </select>
    </FieldFrame>
  );
}

interface FlagFieldProps extends SetFieldProps {
  /** What holds where the file is silent; that value is not written. */
  readonly silent: boolean;
}

export function FlagField({ path, label, note, set, silent }: FlagFieldProps) {
  const id = useId();
  const value = fieldValue(path);
  return (
    <FieldFrame id={id} label={label} note={note}>
      <input
        id={id}
        type="checkbox"
        class="check"
        aria-describedby={note === undefined ? undefined : noteId(id)}
        checked={typeof value === "boolean" ? value : silent}
        onChange={(event) => {
          const { checked } = event.currentTarget;
          settled(path, set, checked === silent ? undefined : checked);
        }}
      />
    </FieldFrame>
  );
}

/** A choice is a whole change at once: the next one is undone apart. */
function settled(path: FieldProps["path"], set: SetFieldProps["set"], value: unknown): void {
  if (set === undefined) setField(path, value);
  else set(value);
  settleEdit();
}

export function FieldList({ children }: { readonly children: ComponentChildren }) {
  return <div class="fields">{children}</div>;
}
