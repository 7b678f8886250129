import { describe, expect, it } from "vitest";
import { berthOn, PITCH, RECTANGLE } from "./berth.fixture.ts";
import { dripPlace } from "./drip-line.ts";
import { pitchTarp } from "./tarp-geometry.ts";

const site = { berth: berthOn(), strapRise: { head: 0.5, foot: 0.6 } };

describe("where the drip line goes", () => {
  it("is on the suspension, a hand inside the cloth's edge", () => {
    const tarp = pitchTarp(RECTANGLE, PITCH, berthOn());
    const { fromGatherM, insideM } = dripPlace(tarp, site, "head");
    expect(insideM).toBeCloseTo(0.1, 9);
    const levelM = berthOn().headGather[0] - tarp.ridgeHead[0] - 0.1;
    expect(fromGatherM).toBeCloseTo(levelM * Math.hypot(1, 0.5), 9);
  });

  it("lies outside where the cloth does not reach the gather", () => {
    const tarp = pitchTarp({ ...RECTANGLE, ridgeM: 2.4 }, PITCH, berthOn());
    expect(dripPlace(tarp, site, "foot").insideM).toBeLessThan(0);
  });
});
