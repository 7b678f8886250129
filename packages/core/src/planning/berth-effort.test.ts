import { describe, expect, it } from "vitest";
import { berthEffortM } from "./berth-effort.ts";
import { campPlaces } from "./camp-places.ts";
import { NO_GROUND } from "./no-ground.ts";
import { at, camp, sleeper } from "./testing/camp.fixture.ts";
import { planned } from "./testing/planned.fixture.ts";

describe("berthEffortM", () => {
  it("adds the span off the ideal, the slope and the way, whatever the weights of the cost", () => {
    const wood = camp()
      .trees(at(0, 0), at(4.4, 0))
      .ground({ slope: { riseRatio: 0.1, downhillRad: 0 }, meetingPoint: { at: [2.2, 50] } })
      .build();
    const { places } = campPlaces(wood.ground ?? NO_GROUND, wood.rules);
    // 0.4 m of span, a tenth of slope across, 50 m of way.
    expect(berthEffortM(places, wood)[0]).toBeCloseTo(0.4 + 0.5 + 1, 9);
  });

  it("gives a beginner the berth by the meeting point", () => {
    const wood = (beginner: boolean) =>
      camp()
        .trees(
          at(0, 0, { dbhM: 0.3 }),
          at(4, 0, { dbhM: 0.3 }),
          at(0, 40, { dbhM: 0.4 }),
          at(4, 40, { dbhM: 0.4 }),
        )
        .ground({ meetingPoint: { at: [0, 0] } })
        .sleepers(sleeper("old", { massKg: 60 }), sleeper("new", { massKg: 90, beginner }))
        .build();
    const treeOf = (beginner: boolean) =>
      planned(wood(beginner)).berths.find((berth) => berth.sleeper === "new")?.headTree;
    expect(treeOf(false)).toBe("T03");
    expect(treeOf(true)).toBe("T01");
  });
});
