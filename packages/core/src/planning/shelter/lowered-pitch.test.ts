import { describe, expect, it } from "vitest";
import type { WetVerdict } from "../../plan/tarp-types.ts";
import { berthOn, BODY, PITCH, RECTANGLE, weatherOf } from "../../shelter/berth.fixture.ts";
import { tryPitch, type PitchSite } from "../../shelter/pitch-trial.ts";
import { loweredPitch } from "./lowered-pitch.ts";

const SITE: PitchSite = {
  berth: berthOn(),
  body: BODY,
  weather: weatherOf(5, 4),
  windsFrom: [0],
  gustMS: 6,
  surrounding: "wood",
  cord: { setN: 80, eaN: 20_000 },
  strapRise: { head: 0.3, foot: 0.3 },
};
const TRIAL = tryPitch({ item: "tarp", cut: RECTANGLE, massKg: 0.8 }, PITCH, [], SITE);
const wet = (lowerByM?: number): WetVerdict => ({
  part: "foot",
  covered: false,
  shareRatio: 0.02,
  ...(lowerByM === undefined ? {} : { lowerByM }),
});

describe("a pitch let down", () => {
  it("comes down by the most that is asked for and can be had, both ties alike", () => {
    const room = TRIAL.room.headroomM - 0.06;
    const lowered = loweredPitch(TRIAL, [wet(0.02), wet(0.05), wet(0.3), wet()], SITE, room);
    expect(lowered?.pitch.headTieM).toBeCloseTo(PITCH.headTieM - 0.05, 12);
    expect(lowered?.pitch.footTieM).toBeCloseTo(PITCH.footTieM - 0.05, 12);
    expect(lowered?.room.headroomM).toBeCloseTo(TRIAL.room.headroomM - 0.05, 9);
    expect(lowered?.wetM2).toBeLessThanOrEqual(TRIAL.wetM2);
  });

  it("stays where it is without need, without room, or where straps would rub", () => {
    expect(loweredPitch(TRIAL, [wet()], SITE, 0)).toBeUndefined();
    expect(loweredPitch(TRIAL, [wet(0.05)], SITE, TRIAL.room.headroomM - 0.04)).toBeUndefined();
    const clear = Math.min(TRIAL.strapClearM.head, TRIAL.strapClearM.foot);
    const asked = clear - 0.05 + 0.01;
    expect(asked).toBeGreaterThan(0);
    expect(loweredPitch(TRIAL, [wet(asked)], SITE, -1)).toBeUndefined();
    expect(loweredPitch(TRIAL, [wet(asked - 0.02)], SITE, -1)).toBeDefined();
  });
});
