import type { NightClock } from "../../plan/night-types.ts";
import type { Plan, PlanPart } from "../../plan/plan.ts";
import type { EndedBerth } from "../plan-berth.ts";
import type { ClockedNight } from "./night-clock.ts";
import { findTimeline } from "./timeline.ts";

/** The night's clock and what happens when, where the camp says enough for them. */
export function nightParts(nightClock: NightClock | undefined): Pick<Plan, "nightClock" | "timeline"> {
  if (nightClock === undefined) return {};
  const timeline = findTimeline(nightClock);
  return { nightClock, ...(timeline === undefined ? {} : { timeline }) };
}

/** Tarps where every berth has one pitched; rain where the night is known too; the night where it has hours. */
export function shelterChecked(
  ended: readonly EndedBerth[],
  clock: NightClock | undefined,
): Pick<Record<PlanPart, boolean>, "tarp" | "rain" | "night"> {
  const tarp = ended.length > 0 && ended.every(({ berth }) => berth.tarp !== undefined);
  return { tarp, rain: tarp && clock !== undefined, night: clock !== undefined };
}

/** The clock for whoever else reckons by it. */
export function clockOf(night: ClockedNight | undefined): { readonly clock?: NightClock } {
  return night === undefined ? {} : { clock: night.clock };
}
