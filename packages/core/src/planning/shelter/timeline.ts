import type { ClockHour, NightClock, TimelineEntry, TimelineKey } from "../../plan/night-types.ts";
import { isoInstant, parseInstant } from "../../shelter/civil-time.ts";

/** What happens when, from the latest arrival to sunrise; nothing where the clock knows no times. */
export function findTimeline({ sun, hours, arriveBy }: NightClock): TimelineEntry[] | undefined {
  if (hours.length === 0) return undefined;
  const entries: TimelineEntry[] = [];
  const add = (what: TimelineKey, at: string | null | undefined) => {
    if (at !== null && at !== undefined) entries.push({ at, what });
  };
  add("arrive-by", arriveBy?.at);
  add("trees-looked-at", later(arriveBy?.at, arriveBy?.treeCheckS ?? 0));
  add("berths-set-up", later(arriveBy?.darkAt, -(arriveBy?.marginS ?? 0)));
  add("dusk-check", later(arriveBy?.darkAt, -DUSK_CHECK_S));
  add("sunset", sun?.sunset);
  add("dusk", sun?.dusk);
  addWeather(hours, add);
  add("dawn", sun?.dawn);
  add("sunrise", sun?.sunrise);
  return entries.sort((a, b) => (parseInstant(a.at) ?? 0) - (parseInstant(b.at) ?? 0));
}

/** Knots, heights, drip lines, lamps, shoes, the way out: a quarter of an hour before it is dark. */
const DUSK_CHECK_S = 900;

function later(at: string | undefined, seconds: number): string | undefined {
  const instant = at === undefined ? undefined : parseInstant(at);
  return instant === undefined ? undefined : isoInstant(instant + seconds / 86_400);
}

/** Each where it first comes about; what is the same all night is told no time for. */
function addWeather(
  hours: readonly ClockHour[],
  add: (what: TimelineKey, at: string | undefined) => void,
): void {
  const rains = hours.map(({ rainMmH }) => rainMmH > 0);
  const begins = rains.findIndex((rain, index) => rain && index > 0 && rains[index - 1] === false);
  const ends = rains.findIndex((rain, index) => !rain && rains[index - 1] === true);
  add("rain-begins", hours[begins]?.at);
  add("rain-ends", hours[ends]?.at);
  const dew = hours.findIndex(({ condensation }) => condensation !== "unlikely");
  if (dew > 0) add("condensation", hours[dew]?.at);
  add("coldest", extreme(hours, ({ airK }) => -airK)?.at);
  add("gust-most", extreme(hours, ({ gustMS }) => gustMS)?.at);
}

function extreme(hours: readonly ClockHour[], of: (hour: ClockHour) => number): ClockHour | undefined {
  const values = hours.map((hour) => of(hour));
  const [most, least] = [Math.max(...values), Math.min(...values)];
  return most === least ? undefined : hours[values.indexOf(most)];
}
