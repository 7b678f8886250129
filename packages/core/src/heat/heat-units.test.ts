import { describe, expect, it } from "vitest";
import { CLO_M2K_PER_W, KCAL_PER_DAY_W, R_VALUE_M2K_PER_W, TOG_M2K_PER_W } from "./heat-units.ts";

describe("units of insulation", () => {
  it("are 1.55 tog and 1.1362 R values to the clo, and 0.17611 m²K/W to the R value", () => {
    expect(CLO_M2K_PER_W / TOG_M2K_PER_W).toBeCloseTo(1.55, 12);
    expect(R_VALUE_M2K_PER_W).toBeCloseTo(0.17611, 5);
    expect(R_VALUE_M2K_PER_W / CLO_M2K_PER_W).toBeCloseTo(1.1362, 4);
    expect(KCAL_PER_DAY_W).toBeCloseTo(0.048426, 6);
  });
});
