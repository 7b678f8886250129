import { curvedRange } from "./curved-quantiles.ts";
import { bodyDifferences } from "./hang-band-bodies.ts";
import { bandPath } from "./hang-band-path.ts";
import { BAND_SCALES } from "./hang-band-scales.ts";
import { COME_QUANTITIES, type BandInput, type ComeQuantity } from "./hang-deviation.ts";
import type { BandRange } from "./hang-types.ts";

export { inputSpread } from "./hang-band-path.ts";
export {
  COME_QUANTITIES,
  comeOf,
  ERROR_NAMES,
  errorSizes,
  type BandInput,
  type ComeQuantity,
  type ErrorName,
  type HangDeviation,
} from "./hang-deviation.ts";

export type HangBand = Readonly<Partial<Record<ComeQuantity, BandRange>>>;

/**
 * How unsure we are of what comes of a hang before anybody sits and corrects: the central 90 % of errors in what
 * was set and measured, and on top, at full width, what the lying body might be instead: all its weight in one
 * point (a V), or spread evenly (an arc).
 *
 * The errors that make a hang flatter or steeper bend everything; they are gathered into one direction, along
 * which the true forward map is solved. Across it quantities run straight, by the exact slopes at each place.
 *
 *   low = quantile 5 % + least body difference ≤ 0,   high = quantile 95 % + greatest body difference ≥ 0
 *
 * Error    the part from input errors covers 88 to 92 % of sampled ones, short straps and taut ridgelines among
 *          them; the whole is wider, since both bodies at once are not known to err with the inputs
 * Source   hang-chain; errors common-practice
 */
export function hangBand(input: BandInput): HangBand {
  const path = bandPath(input);
  const differences = bodyDifferences(input, path);
  return eachTold(input, (quantity) => {
    const [low, high] = curvedRange(path.curves[quantity]);
    const { lower, higher, least, greatest } = differences(quantity);
    return [Math.min(low + lower, least), Math.max(high + higher, greatest)];
  });
}

/** The central 90 % of input errors alone, the lying body as modelled. */
export function inputBand(input: BandInput): HangBand {
  const { curves } = bandPath(input);
  return eachTold(input, (quantity) => curvedRange(curves[quantity]));
}

/** A range of each quantity that this hang has, brought back from its scale. */
function eachTold({ rig }: BandInput, scaledRange: (quantity: ComeQuantity) => BandRange): HangBand {
  const band: Partial<Record<ComeQuantity, BandRange>> = {};
  for (const quantity of COME_QUANTITIES) {
    if (quantity === "ridgelinePullN" && rig.ridgelineM === undefined) continue;
    const [low, high] = scaledRange(quantity);
    const { back } = BAND_SCALES[quantity];
    band[quantity] = [back(low, rig.weightN), back(high, rig.weightN)];
  }
  return band;
}
