import type { Camp, Plan, TimelineEntry, TimelineKey } from "@nightspan/core";
import { clockText, ENGLISH } from "@nightspan/drawing";
import { speed } from "./quantities.ts";

/** By when to be there, at which wind to get up, and where to go then. */
export function arriveAndStopLines(plan: Plan, camp: Camp): readonly string[] {
  const { night, ground } = camp;
  const stop = night?.stopGustMS;
  const muster = ground?.muster?.note;
  const fallback = ground?.fallback?.note;
  return [
    ...arriveLines(plan, camp),
    stop === undefined
      ? "Stop at gusts of: not set. Agree it before dark."
      : `Stop at gusts of ${speed(stop)}: everybody gets up and goes to the ground fallback.`,
    ...thunderLines(camp),
    ...(muster === undefined ? [] : [`Muster: ${muster}.`]),
    fallback === undefined
      ? "Ground fallback: none named. Agree one first."
      : `Ground fallback: ${fallback}.`,
  ];
}

function arriveLines({ nightClock }: Plan, { place, night }: Camp): readonly string[] {
  const by = nightClock?.arriveBy;
  if (nightClock === undefined || by === undefined || by.berths === 0)
    return [NOT_CHECKED, ...orderLines(nightClock, night)];
  const at = clockText(by.at, place).said;
  const dark = clockText(by.darkAt, place).said;
  const what = nightClock.sun?.kind === "no-dusk" ? "sunset" : "dark";
  const hands = by.helpers === 1 ? "one helper" : `${by.helpers} helpers`;
  const berths = by.berths === 1 ? "one berth" : `${by.berths} berths`;
  const parts = [
    `${minutes(by.perBerthS)} for each of ${berths} by ${hands}`,
    `${minutes(by.treeCheckS)} for the trees`,
    `${minutes(by.marginS)} to spare`,
  ];
  return [`Arrive by ${at}: ${what} at ${dark}, less ${parts.join(", ")}.`, ...orderLines(nightClock, night)];
}

const NOT_CHECKED = "Arrive by: not checked. Choose trees in daylight.";

/** Rain puts the roof first. Thunder alone does too, but never hurries anybody under the crowns. */
function orderLines(clock: Plan["nightClock"], night: Camp["night"]): readonly string[] {
  if (clock?.order !== "foul") return [];
  const hours = [...clock.hours, ...(night?.hours ?? [])];
  const isRainy = (night?.rainMmH ?? 0) > 0 || hours.some(({ rainMmH = 0 }) => rainMmH > 0);
  return [isRainy ? FOUL : THUNDER_ALONE];
}

const FOUL = "Foul weather is forecast: tarps first, then straps and hammocks.";
const THUNDER_ALONE =
  "Thunder is forecast: tarps first, but only while none is heard. At the first thunder leave the trees, work undone.";

function minutes(seconds: number): string {
  return `${Math.round(seconds / 60)}\u00a0min`;
}

function thunderLines({ night }: Camp): readonly string[] {
  const rule = night?.thunderRule;
  if (rule === undefined) return [];
  return [
    `Thunder within ${rule.flashToBangS}\u00a0s of its flash: leave the trees, and wait ${minutes(rule.waitS)} after the last.`,
  ];
}

/** What happens when, by the clocks of the camp, one line an event. */
export function timelineLines(plan: Plan, { place }: Camp): readonly string[] {
  return momentsTold(plan).map(({ at, what }) => `${clockText(at, place).said}  ${ENGLISH[`night.${what}`]}`);
}

/** The moments of the night; without berths none of setting up. */
export function momentsTold({
  timeline = [],
  fit,
}: Pick<Plan, "timeline" | "fit">): readonly TimelineEntry[] {
  return fit === undefined ? timeline : timeline.filter(({ what }) => !OF_BERTHS.has(what));
}

const OF_BERTHS: ReadonlySet<TimelineKey> = new Set([
  "arrive-by",
  "trees-looked-at",
  "berths-set-up",
  "dusk-check",
]);
