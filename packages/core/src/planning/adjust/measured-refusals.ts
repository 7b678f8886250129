import type { Refusal } from "../../outcome/outcome.ts";
import { inDegrees } from "../../quantity/angle.ts";
import type { AsHung } from "./adjust-types.ts";

/** Every measurement that nobody can have taken, by field; empty where all can be used. */
export function measuredRefusals({ spanM, head, foot, seatHeightM, footRaiseM }: AsHung): Refusal[] {
  return [
    ...within("measured.spanM", spanM, 0.5, 30, "m"),
    ...within("measured.head.strapHeightM", head?.strapHeightM, 0.1, 5, "m"),
    ...within("measured.foot.strapHeightM", foot?.strapHeightM, 0.1, 5, "m"),
    ...angle("measured.head.angle", head?.angle),
    ...angle("measured.foot.angle", foot?.angle),
    ...within("measured.seatHeightM", seatHeightM, -0.2, 3, "m"),
    ...within("measured.footRaiseM", footRaiseM, -1, 1, "m"),
  ];
}

function angle(field: string, got: NonNullable<AsHung["head"]>["angle"]): Refusal[] {
  return within(field, got === undefined ? undefined : inDegrees(got), 2, 85, "degrees");
}

function within(field: string, got: number | undefined, low: number, high: number, unit: string): Refusal[] {
  if (got === undefined || (got >= low && got <= high)) return [];
  return [{ field, got, need: `from ${low} to ${high} ${unit}` }];
}
