import type { Tarp } from "../../plan/kit.ts";

/** An ordinary tarp: 3.6 by 3 m, straight edges. */
export function tarp(id: string, but: Partial<Tarp> = {}): Tarp {
  return {
    id,
    kind: "tarp",
    count: 1,
    state: "in-use",
    shape: "rectangle",
    ridgeM: 3.6,
    widthM: 3,
    massKg: 0.7,
    ...but,
  };
}
