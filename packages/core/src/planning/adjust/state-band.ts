import { ERROR_NAMES } from "../../statics/hang-band.ts";
import { CENTRAL_90 } from "../../statics/hang-errors.ts";
import type { BandRange } from "../../statics/hang-types.ts";
import type { UnsureQuantity } from "./adjust-types.ts";
import type { Evidence } from "./evidence.ts";
import type { HungModel } from "./hung-model.ts";
import { slopesAt, slopesOfAll, type LikelyState, type Round } from "./likely-state.ts";
import { leastSquaresStep } from "./normal-equations.ts";

/**
 * How unsure we are of the likely state: the central 90 % of what may be off, narrowed by what was found.
 *
 *   σ² = gᵀ (JᵀJ + I)⁻¹ g,   low, high = q ∓ 1.645 σ
 *
 * Shapes   J: evidence × what may be off, g: the quantity's slopes, both per standard deviation
 * Error    straight lines through the likely state; where a ridgeline goes slack it bends
 * Source   house-convention (handbook/planning.md)
 */
export function stateBand(
  model: HungModel,
  rounds: readonly Round[],
  { off, z }: LikelyState,
): Readonly<Record<UnsureQuantity, BandRange>> {
  const rows = slopesOfAll(model, rounds, z);
  const nothing = new Float64Array(rows.length);
  const come = model.come(off);
  const range = (said: Evidence["said"]): BandRange => {
    const [slopes = new Float64Array(ERROR_NAMES.length)] = slopesAt(model, off, [
      { found: 0, error: 1, said },
    ]);
    const through = leastSquaresStep(rows, nothing, slopes);
    const variance = slopes.reduce((sum, slope, at) => sum + slope * (through[at] ?? NaN), 0);
    const half = CENTRAL_90 * Math.sqrt(variance);
    return [said(come) - half, said(come) + half];
  };
  return {
    "head.angle": range(({ state }) => state.head.angle),
    "foot.angle": range(({ state }) => state.foot.angle),
    seatHeightM: range(({ state }) => state.seatHeightM),
    footRaiseM: range(({ state }) => state.footRaiseM),
  };
}
