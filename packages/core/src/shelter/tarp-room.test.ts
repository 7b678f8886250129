import { describe, expect, it } from "vitest";
import { berthOn, BODY, PITCH, RECTANGLE } from "./berth.fixture.ts";
import { pitchTarp, type Pitch } from "./tarp-geometry.ts";
import { tarpRoom } from "./tarp-room.ts";

function roomOf(more: Partial<Pitch>, sagM = 0) {
  const pitch = { ...PITCH, ...more };
  return tarpRoom(pitchTarp(RECTANGLE, pitch, berthOn()), BODY, berthOn(), pitch.closedEnds, sagM);
}

describe("room under a tarp", () => {
  it("is what lies between cloth and hammock, less the sag", () => {
    // Over the gathers the ridge is 40 cm up; the rims hang lower but wider out.
    expect(roomOf({ leftAngle: 0.1, rightAngle: 0.1 }).headroomM).toBeCloseTo(0.4, 1);
    expect(roomOf({}).headroomM).toBeLessThanOrEqual(0.4);
    expect(roomOf({}, 0.07).headroomM).toBeCloseTo(roomOf({}).headroomM - 0.07, 12);
    expect(roomOf({ leftAngle: 1.3 }).headroomM).toBeLessThan(roomOf({}).headroomM);
  });

  it("shrinks its opening with steeper sides, and more with closed ends", () => {
    const open = roomOf({}).ventM2;
    expect(roomOf({ leftAngle: 0.9, rightAngle: 0.9 }).ventM2).toBeLessThan(open);
    const one = roomOf({ closedEnds: ["head"] }).ventM2;
    const both = roomOf({ closedEnds: ["head", "foot"] }).ventM2;
    expect(one).toBeLessThan(open);
    expect(both).toBeLessThan(one);
    expect(both).toBeGreaterThan(0);
  });

  it("tells the overhang of each end, which a shift moves over", () => {
    const { head, foot } = roomOf({}).overhangM;
    expect(head + foot).toBeCloseTo(3.4 * Math.cos(Math.atan(0.08)) - 2.5, 2);
    const shifted = roomOf({ shiftM: 0.1 }).overhangM;
    expect(shifted.foot - foot).toBeCloseTo(0.1, 9);
    expect(head - shifted.head).toBeCloseTo(0.1, 9);
  });
});
