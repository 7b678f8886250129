import type { Camp, Plan, TimelineEntry } from "@nightspan/core";
import { quantity, word } from "../scene/names.ts";
import type { TextItem } from "../scene/text-item.ts";
import { clockText, instantMs } from "../words/clock.ts";
import { factsText } from "./sheet-facts.ts";
import type { SheetRow, SheetTable } from "./table-sheet.ts";

/** The evening counted back from sunset, and the night after it. */
export function timelineTable(plan: Plan, camp: Camp): SheetTable | undefined {
  const { timeline = [], nightClock } = plan;
  if (nightClock === undefined) return undefined;
  const sunset = timeline.find(({ what }) => what === "sunset")?.at ?? nightClock.sun?.sunset ?? undefined;
  const made = nightClock.arriveBy;
  const minutes = (seconds: number): TextItem => quantity("count", seconds / 60, 0);
  return {
    name: "timeline",
    title: word("timeline.title"),
    facts: factsText(camp),
    columns: [
      { title: word("timeline.time"), share: 20, strong: true },
      { title: word("timeline.before"), share: 44 },
      { title: word("timeline.what"), share: 50, strong: true },
      { title: word("timeline.done"), share: 16, anchor: "middle" },
      { title: word("sheet.who"), share: 50 },
    ],
    rows: timeline.map((entry): SheetRow => [
      clockText(entry.at, camp.place),
      fromSunset(entry, sunset),
      word(`night.${entry.what}`),
      ...(TO_DO.includes(entry.what) ? (["tick", "blank"] as const) : ([NOTHING, NOTHING] as const)),
    ]),
    rowMm: 8.5,
    after: [
      ...(timeline.length === 0 ? [word("timeline.no-times")] : []),
      ...(made === undefined
        ? []
        : [
            word("timeline.made-of", {
              berth: minutes(made.perBerthS),
              berths: quantity("count", made.berths, 0),
              helpers: quantity("count", made.helpers, 0),
              trees: minutes(made.treeCheckS),
              margin: minutes(made.marginS),
            }),
          ]),
      word("sheet.look"),
    ],
  };
}

/** What people do; the rest happens. */
const TO_DO: readonly string[] = ["arrive-by", "trees-looked-at", "berths-set-up", "dusk-check"];
const NOTHING: TextItem = { said: "" };

/** How long before or after sunset, to the minute. */
export function fromSunset({ at }: Pick<TimelineEntry, "at">, sunset: string | undefined): TextItem {
  const [moment, set] = [instantMs(at), sunset === undefined ? undefined : instantMs(sunset)];
  if (moment === undefined || set === undefined) return { said: "" };
  const before = Math.round(set / 60_000) - Math.round(moment / 60_000);
  if (before === 0) return word("timeline.at");
  const whole = Math.abs(before);
  const [hours, minutes] = [Math.floor(whole / 60), whole % 60];
  const side = before > 0 ? "" : "after-";
  if (hours === 0) return word(`timeline.${side}minutes`, { minutes: quantity("count", minutes, 0) });
  return word(`timeline.${side}hours`, {
    hours: quantity("count", hours, 0),
    minutes: quantity("count", minutes, 0),
  });
}
