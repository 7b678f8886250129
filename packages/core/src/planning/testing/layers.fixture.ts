import type { Night } from "../../plan/camp.ts";
import type { OverInsulation, Tarp, UnderInsulation } from "../../plan/kit.ts";

/** A cool, calm, dry night. */
export function coolNight(but: Partial<Night> = {}): Night {
  return {
    lowK: 278.15,
    windMS: 2,
    gustMS: 4,
    windHeightM: 10,
    rainMmH: 0,
    humidityRatio: 0.8,
    cloudRatio: 0.5,
    ...but,
  };
}

export function underLayer(id: string, but: Partial<UnderInsulation> = {}): UnderInsulation {
  return { id, kind: "under", count: 1, state: "in-use", form: "underblanket", limitK: 268.15, ...but };
}

export function overLayer(id: string, but: Partial<OverInsulation> = {}): OverInsulation {
  return { id, kind: "over", count: 1, state: "in-use", comfortK: 268.15, ...but };
}

export function plainTarp(id: string, but: Partial<Tarp> = {}): Tarp {
  return {
    id,
    kind: "tarp",
    count: 1,
    state: "in-use",
    shape: "rectangle",
    ridgeM: 3.4,
    widthM: 3,
    ...but,
  };
}
