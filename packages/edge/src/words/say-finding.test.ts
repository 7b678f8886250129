import { byRule, compare, kept, type Finding, type RuleKey, type Verdict } from "@nightspan/core";
import { describe, expect, it } from "vitest";
import { exampleCamp, planOf } from "../examples.fixture.ts";
import { namesOf } from "./names.ts";
import { sayFinding } from "./say-finding.ts";

const { camp } = exampleCamp("demo");
const names = namesOf(camp);

/** Every rule once; a new one is missed by the compiler here as in the table of words. */
const RULES: Readonly<Record<RuleKey, Pick<Finding, "subject" | "unit">>> = {
  "part.user-weight": { subject: "berth/3/hammock", unit: "kg" },
  "part.working-load": { subject: "berth/3/head-strap", unit: "N" },
  "part.breaking-load": { subject: "berth/3/foot-strap", unit: "N" },
  "part.strength-unknown": { subject: "berth/3/hammock", unit: "1" },
  "sleeper.weight-assumed": { subject: "berth/3", unit: "1" },
  "sleeper.small-child": { subject: "berth/3", unit: "1" },
  "hammock.length": { subject: "berth/3/hammock", unit: "m" },
  "strap.slip": { subject: "berth/3/head-strap", unit: "1" },
  "low-point.morning": { subject: "berth/3", unit: "m" },
  "low-point.wet": { subject: "berth/3", unit: "m" },
  "tree.lean": { subject: "tree/B5", unit: "rad" },
  "span.window": { subject: "berth/3", unit: "m" },
  "part.flop-in": { subject: "berth/3/head-strap", unit: "N" },
  "part.drop-in": { subject: "berth/3", unit: "1" },
  "part.one-person": { subject: "berth/3/hammock", unit: "kg" },
  "strap.width": { subject: "berth/3/straps", unit: "m" },
  "fit.spans": { subject: "sleeper/Ada", unit: "m" },
  "fit.girth": { subject: "sleeper/Ada", unit: "m" },
  "fit.tarp-ridge": { subject: "sleeper/Ada", unit: "m" },
  "fit.mat-layers": { subject: "sleeper/Ada", unit: "1" },
  "fit.under-length": { subject: "sleeper/Ada", unit: "m" },
  "fit.net": { subject: "sleeper/Ada", unit: "1" },
  "strap.reach": { subject: "berth/3/head-strap", unit: "m" },
  "strap.height-cap": { subject: "berth/3/head-strap", unit: "m" },
  "cap.angle": { subject: "berth/3", unit: "rad" },
  "cap.pull": { subject: "berth/3", unit: "N" },
  "cap.seat": { subject: "berth/3", unit: "m" },
  "strap.angle-flattest": { subject: "berth/3/head-strap", unit: "rad" },
  "strap.angle-steepest": { subject: "berth/3/head-strap", unit: "rad" },
  "sling.shortest": { subject: "berth/3/head-strap", unit: "m" },
  "sling.longest": { subject: "berth/3/head-strap", unit: "m" },
  "webbing.length": { subject: "berth/3/head-strap", unit: "m" },
  "seat.height": { subject: "berth/3", unit: "m" },
  "low-point.ground": { subject: "berth/3", unit: "m" },
  "low-point.cap": { subject: "berth/3", unit: "m" },
  "foot.raise": { subject: "berth/3", unit: "m" },
  "hang.refused": { subject: "berth/3", unit: "m" },
  "tree.trunk-least": { subject: "tree/B5", unit: "m" },
  "tree.trunk-unknown": { subject: "tree/B5", unit: "1" },
  "tree.looked-at": { subject: "tree/B5", unit: "1" },
  "tree.above-looked-at": { subject: "tree/B5", unit: "1" },
  "tree.doubtful": { subject: "tree/B5", unit: "1" },
  "tree.dead": { subject: "tree/B5", unit: "1" },
  "tree.not-allowed": { subject: "tree/B5", unit: "1" },
  "pair.not-allowed": { subject: "sleeper/a", unit: "1" },
  "tree.bending": { subject: "tree/B5", unit: "Pa" },
  "tree.pull": { subject: "tree/B5", unit: "N" },
  "tree.bark-pressure": { subject: "tree/B5", unit: "Pa" },
  "tree.height-estimated": { subject: "berth/3", unit: "m" },
  "tree.species-unknown": { subject: "tree/B5", unit: "1" },
  "span.least": { subject: "berth/3", unit: "m" },
  "span.most": { subject: "berth/3", unit: "m" },
  "span.stepped": { subject: "berth/3", unit: "m" },
  "site.dead-tree-reach": { subject: "berth/3", unit: "m" },
  "site.overhead-reach": { subject: "berth/3", unit: "m" },
  "site.setback": { subject: "berth/3", unit: "m" },
  "site.capacity": { subject: "tree/B5", unit: "1" },
  "site.stem": { subject: "sleeper/meimei", unit: "1" },
  "site.stems-touch": { subject: "tree/B5", unit: "m" },
  "site.stems-touch-more": { subject: "camp", unit: "1" },
  "site.in-the-way": { subject: "sleeper/meimei", unit: "1" },
  "site.taken": { subject: "sleeper/meimei", unit: "1" },
  "pin.refused": { subject: "sleeper/meimei", unit: "1" },
  "layout.spare": { subject: "camp", unit: "1" },
  "people.adult-youth": { subject: "sleeper/a", unit: "m" },
  "layout.no-berth": { subject: "camp", unit: "1" },
  "layout.kit-short": { subject: "camp", unit: "1" },
  "people.group-radius": { subject: "sleeper/meimei", unit: "m" },
  "people.near": { subject: "sleeper/meimei", unit: "m" },
  "people.apart": { subject: "sleeper/meimei", unit: "m" },
  "people.zone": { subject: "sleeper/meimei", unit: "m" },
  "under.enough": { subject: "berth/3/under", unit: "1" },
  "over.enough": { subject: "berth/3/over", unit: "1" },
  "warmth.no-under": { subject: "berth/3/under", unit: "1" },
  "warmth.no-over": { subject: "berth/3/over", unit: "1" },
  "warmth.weaker-half": { subject: "berth/3", unit: "1" },
  "warmth.helps": { subject: "berth/3", unit: "1" },
  "warmth.far-short": { subject: "berth/3", unit: "1" },
  "warmth.youth-rule": { subject: "berth/3", unit: "1" },
  "warmth.spare-per-six": { subject: "camp", unit: "1" },
  "night.stop-line-blank": { subject: "camp", unit: "1" },
  "night.gust": { subject: "camp", unit: "m/s" },
  "tarp.none": { subject: "berth/3/tarp", unit: "1" },
  "tarp.no-pitch": { subject: "berth/3/tarp", unit: "1" },
  "tarp.ridge-short": { subject: "berth/3/tarp", unit: "m" },
  "tarp.overhang-head": { subject: "berth/3/tarp", unit: "m" },
  "tarp.overhang-foot": { subject: "berth/3/tarp", unit: "m" },
  "tarp.headroom": { subject: "berth/3/tarp", unit: "m" },
  "rain.left-side": { subject: "berth/3/tarp", unit: "1" },
  "rain.right-side": { subject: "berth/3/tarp", unit: "1" },
  "rain.head-end": { subject: "berth/3/tarp", unit: "1" },
  "rain.foot-end": { subject: "berth/3/tarp", unit: "1" },
  "tarp.diagonal": { subject: "berth/3/tarp", unit: "m" },
  "strap.rubs-tarp": { subject: "berth/3/head-strap", unit: "m" },
  "strap.crosses-cord": { subject: "berth/3/head-strap", unit: "m" },
  "drip-line.outside": { subject: "berth/3/head-strap", unit: "m" },
  "peg.holding": { subject: "berth/3/pegs", unit: "N" },
  "peg.not-measured": { subject: "berth/3/pegs", unit: "N" },
  "guy.stem": { subject: "berth/3/guys", unit: "m" },
  "guy.path": { subject: "berth/3/guys", unit: "m" },
  "guy.neighbour": { subject: "berth/3/guys", unit: "m" },
  "guy.obstacle": { subject: "berth/3/guys", unit: "m" },
  "night.hours-elsewhere": { subject: "camp", unit: "1" },
  "night.cold-pool": { subject: "camp", unit: "K" },
  "night.condensation": { subject: "camp", unit: "1" },
  "night.thunder": { subject: "camp", unit: "1" },
  "night.no-dark": { subject: "camp", unit: "1" },
  "defaults.assumed": { subject: "camp", unit: "1" },
};

const VERDICTS: readonly Verdict[] = ["clear", "look-again", "do-not-hang"];

function isRule(key: string): key is RuleKey {
  return Object.hasOwn(RULES, key);
}

describe("findings in words", () => {
  const keys = Object.keys(RULES).filter(isRule);

  it.each(keys)("%s is a whole sentence for every verdict, without a weight, a pull or a promise", (rule) => {
    for (const verdict of VERDICTS) {
      for (const about of [undefined, ["A3", "B4", "sling-shortest"]]) {
        const finding: Finding = {
          rule,
          source: "house-rules",
          sense: "at-least",
          demand: 1,
          limit: 2,
          margin: -0.5,
          verdict,
          ...RULES[rule],
          ...(about === undefined ? {} : { about }),
        };
        const sentence = sayFinding(finding, names);
        expect(sentence).toMatch(/^[\p{Lu}\d].*[.]$/u);
        expect(sentence).not.toMatch(/undefined|NaN|null|\d\s?(?:kg|N)\b|\b(?:safe|passes|holds)\b/i);
      }
    }
  });

  it("can say every finding of the examples' plans", () => {
    for (const name of ["demo", "pairs"]) {
      const plan = planOf(exampleCamp(name).camp);
      const findings = [...plan.findings, ...plan.berths.flatMap((berth) => berth.findings)];
      expect(findings.length).toBeGreaterThan(50);
      for (const finding of findings) expect(sayFinding(finding, names)).toMatch(/^\S.*\.$/);
    }
  });

  const strap = { subject: "berth/3/head-strap", source: "house-rules", unit: "m" } as const;

  it("tells on which side of a limit a figure lies", () => {
    const cap = { ...strap, rule: "strap.height-cap", sense: "at-most", limit: 1.83 } as const;
    expect(sayFinding(kept({ ...cap, demand: 1.6 }, "do-not-hang"), names)).toBe(
      "The head strap is tied at 1.60\u00a0m, at most 1.83\u00a0m.",
    );
    expect(sayFinding(kept({ ...cap, demand: 1.9 }, "do-not-hang"), names)).toBe(
      "The head strap is tied at 1.90\u00a0m: more than the 1.83\u00a0m allowed.",
    );
  });

  it("never says of a figure that is not clear that it is at least, or at most, what it is not", () => {
    const raise = { ...strap, rule: "foot.raise", sense: "at-least", limit: 0.15 } as const;
    const said = (demand: number) => sayFinding(byRule({ ...raise, demand }, "look-again"), names);
    expect(said(0.148)).toBe(
      "The foot end hangs 0.15\u00a0m higher than the head end: just under the least, 0.15\u00a0m.",
    );
    expect(said(0.16)).toBe(
      "The foot end hangs 0.16\u00a0m higher than the head end: close to the least, 0.15\u00a0m.",
    );
    expect(said(-0.27)).toBe(
      "The foot end hangs 0.27\u00a0m lower than the head end: at least 0.15\u00a0m higher is needed.",
    );
    const seat = { ...strap, rule: "seat.height", sense: "at-least", limit: 0.35, demand: -0.15 } as const;
    expect(sayFinding(byRule(seat, "look-again"), names)).toBe(
      "The seat would lie on the ground: at least 0.35\u00a0m above it is needed.",
    );
    const falls = { ...raise, rule: "site.dead-tree-reach", demand: 7.42, limit: 6, about: ["A3"] } as const;
    expect(sayFinding(byRule(falls, "look-again"), names)).toBe(
      "From what may fall at A3 the berth is 7.42\u00a0m away: beyond the 6.00\u00a0m refused, but near.",
    );
  });

  it("says of a wish across zones in which ring alone it can be met", () => {
    const near = {
      rule: "people.near",
      source: "common-practice",
      subject: "sleeper/a",
      unit: "m",
      sense: "at-most",
      limit: 12,
    } as const;
    const said = (demand: number) =>
      sayFinding(kept({ ...near, demand, about: ["b", "zones-apart", "8"] }, "look-again"), names);
    expect(said(14)).toMatch(
      /: more than the 12\.0\u00a0m allowed\. Their zones keep them apart: only from 8\.0\u00a0m to 12\.0\u00a0m meets both\.$/,
    );
    expect(said(10)).not.toContain("zones");
  });

  it("tells how near a strength is, never the weight", () => {
    const plate = {
      ...strap,
      rule: "part.user-weight",
      unit: "kg",
      sense: "at-most",
      limit: 100,
      about: ["red"],
    } as const;
    const said = (demand: number) => sayFinding(compare({ ...plate, demand }), names);
    expect(said(60)).toBe("The sleeper is within the greatest user weight of red.");
    expect(said(95)).toBe("The sleeper is close to the greatest user weight of red.");
    expect(said(101)).toBe("The sleeper is over the greatest user weight of red.");
  });

  it("names who sets a strap that is out of reach", () => {
    const reach = { ...strap, rule: "strap.reach", sense: "at-most", limit: 1.8, about: ["rhodri"] } as const;
    expect(sayFinding(kept({ ...reach, demand: 1.95 }, "look-again"), names)).toBe(
      "The head strap is tied at 1.95\u00a0m, out of the sleeper's reach: Rhodri Llywelyn sets it.",
    );
  });

  it("says of sitting down hard what is compared, and from where a strength was taken", () => {
    const flop = {
      ...strap,
      rule: "part.flop-in",
      unit: "N",
      sense: "at-most",
      limit: 3350,
      about: ["red"],
    } as const;
    expect(sayFinding(compare({ ...flop, demand: 1671 }), names)).toBe(
      "Sitting down hard pulls the head strap within what red bears with its knots.",
    );
    expect(sayFinding(compare({ ...flop, source: "sling-practice", demand: 4000 }), names)).toBe(
      "Sitting down hard pulls the head strap over what red bears with its knots, its breaking strength taken from its rated load.",
    );
  });

  it("says of a strap through its own eye that it keeps four fifths of its rated load", () => {
    const load = { ...strap, rule: "part.working-load", unit: "N", sense: "at-most", limit: 1600 } as const;
    expect(sayFinding(compare({ ...load, source: "sling-practice", demand: 800 }), names)).toBe(
      "The pull at the head strap is within the rated load of the strap, four fifths of it as the strap goes through its own eye.",
    );
  });

  it("says that a hammock is for one", () => {
    const two = { subject: "berth/3/hammock", source: "maker-plate", unit: "kg", sense: "at-most" } as const;
    const finding = byRule(
      { ...two, rule: "part.one-person", demand: 160, limit: 136, about: ["red"] },
      "clear",
    );
    expect(sayFinding(finding, names)).toBe(
      "One person only in red: two are more than it carries, even for a moment.",
    );
  });

  it("tells what a cap costs as angle and as a ratio of pulls", () => {
    const of = { subject: "berth/3", source: "hang-chain", about: ["strap-height-cap"] } as const;
    const angle = {
      ...of,
      rule: "cap.angle",
      unit: "rad",
      sense: "at-least",
      demand: 0.384,
      limit: 0.5236,
    } as const;
    const pull = { ...of, rule: "cap.pull", unit: "N", sense: "at-most", demand: 1072, limit: 800 } as const;
    const seat = {
      ...of,
      rule: "cap.seat",
      unit: "m",
      sense: "at-least",
      demand: 0.37,
      limit: 0.45,
    } as const;
    expect(sayFinding(byRule(angle, "clear"), names)).toBe(
      "The cap on strap height makes the straps hang 22° below level; without it they would hang 30°.",
    );
    expect(sayFinding(byRule(pull, "clear"), names)).toBe(
      "The cap on strap height makes the straps pull 1.34 times as hard.",
    );
    expect(sayFinding(byRule({ ...seat, about: ["low-point-cap"] }, "clear"), names)).toBe(
      "The cap on the low point brings the seat to 0.37\u00a0m; without it it would come to 0.45\u00a0m.",
    );
  });

  it("never calls a tree sound for being little bent, and names who else hangs on it", () => {
    const tree = { subject: "tree/B5", source: "wood-handbook", unit: "Pa", sense: "at-most" } as const;
    const bent = { ...tree, rule: "tree.bending", demand: 2e6, limit: 11e6 } as const;
    expect(sayFinding(compare(bent), names)).toBe(
      "The trunk of B5 is bent within what sound green wood bears. Roots, rot and lean are not in this.",
    );
    expect(sayFinding(compare({ ...bent, demand: 2e7, about: ["4"] }), names)).toBe(
      "The trunk of B5 is bent over what sound green wood bears, with berth 4 on it too. Roots, rot and lean are not in this.",
    );
    const bark = { ...tree, rule: "tree.bark-pressure", demand: 2e5, limit: 1e5 } as const;
    expect(sayFinding(kept(bark, "look-again"), names)).toBe(
      "The strap presses the bark of B5 more than the least strap and trunk of the house rules would (common practice, no source).",
    );
  });

  it("tells a species nobody named from one that is not listed", () => {
    const of = {
      subject: "tree/B5",
      source: "wood-handbook",
      unit: "1",
      sense: "at-least",
      demand: 0,
      limit: 1,
    } as const;
    const unknown = { ...of, rule: "tree.species-unknown" } as const;
    expect(sayFinding(byRule(unknown, "clear"), names)).toBe(
      "Nobody has named the species of B5: it is taken as the weakest wood listed.",
    );
    expect(sayFinding(byRule({ ...unknown, about: ["Sorbus aucuparia"] }, "clear"), names)).toBe(
      "The wood of B5, Sorbus aucuparia, is not listed: it is taken as the weakest of its kind, or of all.",
    );
  });
});
