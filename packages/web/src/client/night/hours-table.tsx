import { useSignal } from "@preact/signals";
import type { Refusal } from "@nightspan/core";
import { editCamp, opened, settleEdit } from "../state/camp-store.ts";
import { writeAt, writePath, type DocumentPath } from "../state/document-path.ts";
import { fieldValue, setField } from "../state/field-value.ts";
import { Button } from "../ui/button.tsx";
import { FaultNote } from "../ui/fault-note.tsx";
import { readNumber } from "../ui/read-number.ts";
import { fill, WORDS } from "../words.ts";

const COLUMNS = [
  { name: "at", word: WORDS.night.at, unit: "" },
  { name: "air_c", word: WORDS.night.air, unit: "°C" },
  { name: "wind_m_s", word: WORDS.night.wind, unit: "m/s" },
  { name: "gust_m_s", word: WORDS.night.gust, unit: "m/s" },
  { name: "rain_mm_h", word: WORDS.night.rain, unit: "mm/h" },
] as const;

/** The forecast hour by hour, as a table that can be typed into. */
export function HoursTable() {
  const hours = opened.value?.document.night?.hours ?? [];
  return (
    <details class="item hours">
      <summary class="item-top">
        <span class="row-name">
          {hours.length === 0 ? WORDS.night.hours : fill(WORDS.night.hoursOf, { count: hours.length })}
        </span>
      </summary>
      {hours.length === 0 ? <p class="note soft">{WORDS.night.hoursNone}</p> : <Hours count={hours.length} />}
      <div class="choice-row">
        <Button onPress={addHour}>{WORDS.night.addHour}</Button>
        {hours.length === 0 ? null : (
          <Button kind="plain" onPress={() => setField(["night", "hours"], undefined)}>
            {WORDS.night.removeHours}
          </Button>
        )}
      </div>
    </details>
  );
}

function Hours({ count }: { readonly count: number }) {
  return (
    <div class="table-frame">
      <table class="trees hours-table">
        <thead>
          <tr>
            {COLUMNS.map(({ name, word, unit }) => (
              <th key={name} scope="col">
                {word} {unit}
              </th>
            ))}
            <th />
          </tr>
        </thead>
        <tbody>
          {Array.from({ length: count }, (_, index) => (
            <HourRow key={index} index={index} />
          ))}
        </tbody>
      </table>
    </div>
  );
}

function HourRow({ index }: { readonly index: number }) {
  const path: DocumentPath = ["night", "hours", index];
  const written = fieldValue([...path, "at"]);
  const at = typeof written === "string" ? written : "";
  return (
    <tr>
      {COLUMNS.map(({ name, word }) => (
        <td key={name}>
          <Cell path={[...path, name]} label={`${word} ${at}`} />
        </td>
      ))}
      <td>
        <Button
          kind="plain"
          label={fill(WORDS.night.removeHour, { at })}
          onPress={() => editCamp("", (document) => writeAt(document, path, undefined))}
        >
          ×
        </Button>
      </td>
    </tr>
  );
}

interface CellProps {
  readonly path: DocumentPath;
  readonly label: string;
}

/** A field in a table; what cannot be used stays as typed, with what is needed under it. */
function Cell({ path, label }: CellProps) {
  const draft = useSignal<{ readonly text: string; readonly refusals: readonly Refusal[] } | undefined>(
    undefined,
  );
  const value = fieldValue(path);
  const refusals = draft.value?.refusals ?? [];
  const isText = path.at(-1) === "at";
  return (
    <>
      <input
        class={isText ? "input" : "input input-number"}
        aria-label={label}
        aria-invalid={refusals.length > 0}
        autocomplete="off"
        value={
          draft.value?.text ?? (typeof value === "number" || typeof value === "string" ? String(value) : "")
        }
        onInput={(event) => {
          const text = event.currentTarget.value;
          draft.value = { text, refusals: setField(path, isText ? text : readNumber(text)) };
        }}
        onBlur={() => {
          if (draft.value?.refusals.length === 0) draft.value = undefined;
          settleEdit();
        }}
      />
      {refusals.length === 0 ? null : <FaultNote id="" refusals={refusals} at={writePath(path)} />}
    </>
  );
}

/** The hour after the last, with its air; the first is nine in the evening at the low. */
function addHour(): void {
  const night = opened.peek()?.document.night;
  const last = night?.hours?.at(-1);
  const next =
    last === undefined
      ? { at: "21:00", air_c: night?.low_c ?? 8 }
      : { at: after(last.at), air_c: last.air_c };
  setField(["night", "hours", night?.hours?.length ?? 0], next);
  settleEdit();
}

/** An hour later, in the way it was written. */
function after(at: string): string {
  const clock = /^(.*?)(\d{2})(:\d{2}.*)$/.exec(at.includes("T") ? at.slice(at.indexOf("T")) : at);
  if (clock === null) return at;
  const day = at.includes("T") ? at.slice(0, at.indexOf("T")) : "";
  const hour = Number(clock[2]) + 1;
  const next = hour > 23 && day !== "" ? dayAfter(day) : day;
  return `${next}${clock[1] ?? ""}${String(hour % 24).padStart(2, "0")}${clock[3] ?? ""}`;
}

function dayAfter(day: string): string {
  const date = new Date(`${day}T12:00:00Z`);
  date.setUTCDate(date.getUTCDate() + 1);
  return date.toISOString().slice(0, 10);
}
