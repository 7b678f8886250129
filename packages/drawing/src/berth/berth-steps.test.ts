import { describe, expect, it } from "vitest";
import { planByHand } from "../fixture/plan-by-hand.fixture.ts";
import { pacedPairs, withGround } from "../fixture/variants.fixture.ts";
import { THREE } from "../fixture/wanted.fixture.ts";
import { berthSteps } from "./berth-steps.ts";

const camp = pacedPairs();
const [berth] = planByHand(camp, THREE).berths;

describe("berthSteps", () => {
  if (berth === undefined) throw new Error("no berth");
  const sleeper = camp.sleepers.find(({ id }) => id === berth.sleeper);
  if (sleeper === undefined) throw new Error("no sleeper");

  it("tells who stepped a pair the number that was counted", () => {
    const counted = 6.5;
    const found = berthSteps({ ...berth, spanM: counted * sleeper.stepM }, camp);
    expect(found.steps).toBeCloseTo(counted, 12);
    expect(found.stepped).toBe(true);
  });

  it("goes from middle to middle where the distance was measured too, and tells the metres from bark to bark", () => {
    const pairs = (camp.ground?.pairs ?? []).map((pair) => ({
      ...pair,
      stepped: false,
      dbhM: [0.34, 0.28] as const,
    }));
    const found = berthSteps({ ...berth, spanM: 3.81 }, withGround(camp, { pairs }));
    // 3.81 m less half of both trunks is 3.50 m.
    expect(found.barkToBarkM).toBeCloseTo(3.5, 12);
    expect(found.steps).toBeCloseTo(3.81 / sleeper.stepM, 12);
    expect(found.stepped).toBe(false);
  });
});
