import type { Finding } from "@nightspan/core";
import { describe, expect, it } from "vitest";
import { exampleCamp } from "../examples.fixture.ts";
import { namesOf } from "./names.ts";
import { sayFinding } from "./say-finding.ts";

const names = namesOf(exampleCamp("demo").camp);

function said(rule: Finding["rule"], change: Partial<Finding>): string {
  return sayFinding(
    {
      rule,
      source: "sleeper-balance",
      subject: "berth/3/under",
      sense: "at-least",
      demand: 1,
      limit: 2,
      unit: "1",
      margin: -0.5,
      verdict: "look-again",
      ...change,
    },
    names,
  );
}

describe("warmth in words", () => {
  it("tells each half by itself, with what it is", () => {
    expect(said("under.enough", { about: ["not-enough", "foam"] })).toBe(
      "What is under the sleeper is not enough: foam.",
    );
    expect(said("over.enough", { about: ["borderline", "bag-warm"] })).toBe(
      "What is over the sleeper is borderline: bag-warm.",
    );
    expect(said("warmth.no-under", { about: ["not-enough"] })).toBe(
      "Nothing is under the sleeper: the back gets cold.",
    );
  });

  it("tells what helps, the spares, and who looks in, without a degree or an age", () => {
    expect(said("warmth.helps", { about: ["close-gap", "under"] })).toBe(
      "What would help most: hanging it snug, so that no air moves between.",
    );
    expect(said("warmth.spare-per-six", { demand: 1, limit: 3 })).toBe(
      "Spare under layers: 1 of the 3 to carry, one for every six sleepers.",
    );
    const rule = said("warmth.youth-rule", { about: ["not-rated", "foam", "maren"] });
    expect(rule).toBe(
      "Under and over are to be rated well below the low; in tonight's wind and sky they are not; spare under layer: foam; Maren Ødegård looks in at night.",
    );
    expect(rule).not.toMatch(/\d/);
  });
});
