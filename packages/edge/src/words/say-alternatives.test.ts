import { byRule, degrees, type HangAlternatives } from "@nightspan/core";
import { describe, expect, it } from "vitest";
import { sayAlternatives, sayFirstThatServes } from "./say-alternatives.ts";

const names = { tree: (id: string) => id, sleeper: (id: string) => id };

const hung = {
  angle: degrees(29),
  headStrapLengthM: 0.6,
  footStrapLengthM: 0.62,
  seatHeightM: 0.46,
  webbingM: 1.9,
};

const steep = byRule(
  {
    rule: "strap.angle-steepest",
    source: "hang-chain",
    subject: "sleeper/s1",
    sense: "at-most",
    demand: 0.7,
    limit: 0.6,
    unit: "rad",
    about: ["K1", "K2", "angle-steepest"],
  },
  "do-not-hang",
);

const TOLD: HangAlternatives = {
  sleeper: "s1",
  trees: ["K1", "K2"],
  spanM: 3.6,
  binds: "sling-shortest",
  tries: [
    { kind: "strap-alone", hung, because: [] },
    { kind: "connector-left-out", hung, because: [] },
    { kind: "other-pair", trees: ["K3", "K4"], spanM: 4.2, hung, because: [] },
    { kind: "other-suspension", item: "band", hung, because: [] },
    { kind: "other-hammock", item: "red", because: [steep] },
  ],
};

describe("sayAlternatives", () => {
  it("tells what is in the way, then each thing to do, how it hangs or why it fails too", () => {
    expect(sayAlternatives(TOLD, names).map((line) => line.replaceAll("\u00a0", " "))).toEqual([
      "K1 to K2, 3.60 m: the strap or sling is too long even at its shortest.",
      "Leave the sling out, hitch the hammock onto the tree strap: straps 29° below level, seat 45 cm, 1.90 m of strap at each tree.",
      "Leave the connector out, hitch the sling onto the tree strap: straps 29° below level, seat 45 cm, 1.90 m of strap at each tree.",
      "Between K3 and K4, 4.20 m apart: straps 29° below level, seat 45 cm, 1.90 m of strap at each tree.",
      "Suspension band instead: straps 29° below level, seat 45 cm, 1.90 m of strap at each tree.",
      "Hammock red instead: no, the straps would come too steep.",
    ]);
  });

  it("says so where nothing tells why", () => {
    const bare = { ...TOLD, tries: [{ kind: "strap-alone", because: [] } as const] };
    expect(sayAlternatives(bare, names)[1]).toMatch(/: it cannot be hung either\.$/);
  });

  it("names the first that would hang, and nothing where none would", () => {
    const fails = { ...TOLD, tries: TOLD.tries.filter(({ kind }) => kind === "other-hammock") };
    expect(sayFirstThatServes([fails, TOLD], names)?.replaceAll("\u00a0", " ")).toBe(
      "What would hang, at K1 and K2: leave the sling out, hitch the hammock onto the tree strap: straps 29° below level, seat 45 cm, 1.90 m of strap at each tree.",
    );
    expect(sayFirstThatServes([fails], names)).toBeUndefined();
  });
});
