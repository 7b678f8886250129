import type { Enough, WarmthHalf } from "../../plan/warmth-types.ts";
import type { HalfMargin, HalfMargins } from "./warmth-margin.ts";

/** Enough with all that is asked; not enough where the sleeper would wake; between the two, borderline. */
export function enoughOf({ marginK, floorK }: HalfMargin): Enough {
  if (marginK >= 0) return "enough";
  return floorK >= 0 ? "borderline" : "not-enough";
}

/** The half that rules; the lower one where they are alike, as cold backs are commoner. */
export function weakerOf({ under, over }: HalfMargins): WarmthHalf {
  return over.marginK < under.marginK ? "over" : "under";
}
