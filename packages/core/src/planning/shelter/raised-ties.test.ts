import { describe, expect, it } from "vitest";
import { berthOn, BODY, PITCH, RECTANGLE, weatherOf } from "../../shelter/berth.fixture.ts";
import { cordClearM, cordCrosses } from "../../shelter/cord-clear.ts";
import { tryPitch, type PitchSite } from "../../shelter/pitch-trial.ts";
import { raisedTies } from "./raised-ties.ts";

const SITE: PitchSite = {
  berth: berthOn(),
  body: BODY,
  weather: weatherOf(5, 4),
  windsFrom: [0],
  gustMS: 6,
  surrounding: "wood",
  cord: { setN: 80, eaN: 20_000 },
  strapRise: { head: 0, foot: 0 },
};
const TARP = { item: "tarp", cut: RECTANGLE, massKg: 0.8 };
const { headGather } = SITE.berth;
/** A strap that comes to the head tree so far above the tie. */
const strapAbove = (aboveM: number): PitchSite => ({
  ...SITE,
  strapRise: { head: (PITCH.headTieM + aboveM - headGather[2]) / headGather[0], foot: 0 },
});

describe("the tarp line against the strap", () => {
  it("is told at the tree by the heights of both", () => {
    const trial = tryPitch(TARP, PITCH, [], strapAbove(0.08));
    const { head, foot } = cordClearM(trial, strapAbove(0.08));
    expect(head).toBeCloseTo(-0.08, 12);
    expect(foot).toBeGreaterThan(0.05);
    // By points along the whole stretch: the line and the strap do meet, between the cloth's end and the tree.
    const { strapRise } = strapAbove(0.08);
    const { ridgeHead } = trial.tarp;
    const gaps = [...Array(51).keys()].map((step) => {
      const x = (ridgeHead[0] * step) / 50;
      const cord = PITCH.headTieM + ((ridgeHead[2] - PITCH.headTieM) * x) / ridgeHead[0];
      return cord - (headGather[2] + (headGather[0] - x) * strapRise.head);
    });
    expect([gaps[0], gaps[50]].map((gap) => Math.sign(gap ?? 0))).toEqual([-1, 1]);
    expect(Math.min(...gaps)).toBeCloseTo(head, 12);
    expect(Math.max(...gaps)).toBeCloseTo(trial.strapClearM.head, 12);
  });

  it("crosses only where the cloth itself clears the strap", () => {
    expect(cordCrosses(0.2, 0.04)).toBe(true);
    expect(cordCrosses(0.2, 0.06)).toBe(false);
    expect(cordCrosses(-0.2, -0.3)).toBe(false);
  });

  it("is tied higher at that tree alone, within reach and a hand's length", () => {
    const site = strapAbove(0.08);
    const trial = tryPitch(TARP, PITCH, [], site);
    const raised = raisedTies(trial, site, 3);
    expect(raised?.pitch.headTieM).toBeCloseTo(PITCH.headTieM + 0.14, 12);
    expect(raised?.pitch.footTieM).toBe(PITCH.footTieM);
    expect(raised && cordClearM(raised, site).head).toBeCloseTo(0.06, 12);
    expect(raisedTies(trial, site, PITCH.headTieM + 0.1)).toBeUndefined();
    expect(raisedTies(trial, strapAbove(0.28), 3)).toBeUndefined();
    expect(raisedTies(trial, strapAbove(-0.1), 3)).toBeUndefined();
    expect(raisedTies({ ...trial, pegged: ["left"] }, site, 3)).toBeUndefined();
  });
});
