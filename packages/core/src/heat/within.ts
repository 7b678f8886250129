import type { Refusal } from "../outcome/outcome.ts";

/** One refusal where a figure is not between its bounds, both included; NaN is outside. */
export function within(field: string, got: number, low: number, high: number): readonly Refusal[] {
  return got >= low && got <= high ? [] : [{ field, got, need: `from ${low} to ${high}` }];
}
