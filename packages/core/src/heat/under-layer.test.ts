import { describe, expect, it } from "vitest";
import { loftedM2KPerW, pressedM2KPerW } from "./pressed-insulation.ts";
import { underLayer, type UnderLayerInput } from "./under-layer.ts";

const HUNG: UnderLayerInput = {
  insulationM2KPerW: 1,
  coveredRatio: 0.9,
  place: "hung-below",
  gapRatio: 0,
  permeabilityMS: 0.008,
  pressedM2KPerW: 0.05,
};

describe("what lies or hangs below", () => {
  it("covers less by its gap, less where it slides, and lets no wind through a mat", () => {
    expect(underLayer(HUNG)).toEqual({ insulationM2KPerW: 1.05, coveredRatio: 0.9, permeabilityMS: 0.008 });
    expect(underLayer({ ...HUNG, gapRatio: 0.5 }).coveredRatio).toBeCloseTo(0.45, 12);
    const mat = underLayer({ ...HUNG, place: "on-cloth" });
    expect(mat.coveredRatio).toBeCloseTo(0.63, 12);
    expect(mat.permeabilityMS).toBe(0);
    expect(underLayer({ ...HUNG, place: "between-layers" }).coveredRatio).toBe(0.9);
  });

  it("never counts the loft of a bag under the back", () => {
    expect(underLayer({ ...HUNG, pressedM2KPerW: 3 }).insulationM2KPerW).toBe(1.1);
    expect(pressedM2KPerW(loftedM2KPerW(0.08, "down"), "down")).toBeCloseTo(0.2, 12);
    expect(pressedM2KPerW(1, "foam")).toBeGreaterThan(pressedM2KPerW(1, "polyester"));
  });
});
