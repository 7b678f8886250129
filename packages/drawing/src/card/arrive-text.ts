import type { Camp, Plan } from "@nightspan/core";
import { word } from "../scene/names.ts";
import type { TextItem } from "../scene/text-item.ts";
import { clockText } from "../words/clock.ts";

/** Latest arrival, with the sunset where there is one; told as not checked where nobody computed it. */
export function arriveText({ nightClock }: Plan, { place }: Camp): TextItem {
  if (nightClock?.arriveBy === undefined) return word("leaders.arrive");
  const at = clockText(nightClock.arriveBy.at, place);
  const sunset = nightClock.sun?.sunset;
  if (sunset === undefined || sunset === null) return word("leaders.arrive-by", { at });
  return word("leaders.arrive-sunset", { at, sunset: clockText(sunset, place) });
}
