import type { BandRange, HangLimits } from "../../statics/hang-types.ts";
import type { Adjustment, Doubt, HangState } from "./adjust-types.ts";
import type { Evidence } from "./evidence.ts";

/**
 * What most likely keeps its limits and may well not, angles first: what to measure next. Seat and foot end are no
 * longer in doubt once they were measured as it hangs now; an angle is, while what is read may lie past its limit.
 */
export function doubtsOf(
  state: HangState,
  band: Adjustment["band"],
  limits: HangLimits,
  found: readonly Evidence[],
): readonly Doubt[] {
  const { angleMin, angleMax, seatHeightMinM, seatHeightMaxM, footRaiseMinM, footRaiseMaxM } = limits;
  const mayBePast = (is: number, [low, high]: BandRange, [least, most]: BandRange): boolean =>
    is >= least && is <= most && (low < least || high > most);
  const isFound = (quantity: Doubt): boolean => found.some(({ of }) => of === quantity);
  const { head, foot, seatHeightM, footRaiseM } = state;
  const lie: readonly (readonly [Doubt, number, BandRange])[] = [
    ["seatHeightM", seatHeightM, [seatHeightMinM, seatHeightMaxM]],
    ["footRaiseM", footRaiseM, [footRaiseMinM, footRaiseMaxM]],
  ];
  const asked: readonly (readonly [Doubt, number, BandRange])[] = [
    ["head.angle", head.angle, [angleMin, angleMax]],
    ["foot.angle", foot.angle, [angleMin, angleMax]],
    ...lie.filter(([quantity]) => !isFound(quantity)),
  ];
  return asked.flatMap(([quantity, is, within]) => (mayBePast(is, band[quantity], within) ? [quantity] : []));
}
