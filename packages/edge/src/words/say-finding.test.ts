import { compare, kept, type Finding, type RuleKey, type Verdict } from "@nightspan/core";
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
  "part.flop-in": { subject: "berth/3/head-strap", unit: "N" },
  "part.drop-in": { subject: "berth/3", unit: "1" },
  "part.one-person": { subject: "berth/3/hammock", unit: "kg" },
  "strap.width": { subject: "berth/3/straps", unit: "m" },
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
  "tree.bending": { subject: "tree/B5", unit: "Pa" },
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
  "layout.no-berth": { subject: "camp", unit: "1" },
  "layout.kit-short": { subject: "camp", unit: "1" },
  "night.stop-line-blank": { subject: "camp", unit: "1" },
  "night.gust": { subject: "camp", unit: "m/s" },
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
});
