import type { Refusal } from "../../outcome/outcome.ts";
import { inDegrees } from "../../quantity/angle.ts";
import type { AsHung, Followed } from "./adjust-types.ts";

/** Every measurement that nobody can have taken, now or before, by field; empty where all can be used. */
export function measuredRefusals(measured: AsHung, followed: readonly Followed[] = []): Refusal[] {
  return [
    ...foundRefusals("measured", measured),
    ...followed.flatMap(({ cm, measured: before = {} }, at) => [
      ...within(`followed.${at}.cm`, cm, 1, 300, "cm"),
      ...foundRefusals(`followed.${at}.measured`, before),
    ]),
  ];
}

function foundRefusals(of: string, { spanM, head, foot, seatHeightM, footRaiseM }: AsHung): Refusal[] {
  return [
    ...within(`${of}.spanM`, spanM, 0.5, 30, "m"),
    ...within(`${of}.head.strapHeightM`, head?.strapHeightM, 0.1, 5, "m"),
    ...within(`${of}.foot.strapHeightM`, foot?.strapHeightM, 0.1, 5, "m"),
    ...angle(`${of}.head.angle`, head?.angle),
    ...angle(`${of}.foot.angle`, foot?.angle),
    ...within(`${of}.seatHeightM`, seatHeightM, -0.2, 3, "m"),
    ...within(`${of}.footRaiseM`, footRaiseM, -1, 1, "m"),
  ];
}

function angle(field: string, got: NonNullable<AsHung["head"]>["angle"]): Refusal[] {
  return within(field, got === undefined ? undefined : inDegrees(got), -20, 85, "degrees");
}

function within(field: string, got: number | undefined, low: number, high: number, unit: string): Refusal[] {
  if (got === undefined || (got >= low && got <= high)) return [];
  return [{ field, got, need: `from ${low} to ${high} ${unit}` }];
}
