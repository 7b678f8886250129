import {
  explainPlan,
  type Bottleneck,
  type Camp,
  type ChangeKey,
  type Counterfactual,
} from "@nightspan/core";
import { describe, expect, it } from "vitest";
import { exampleCamp, planOf } from "../examples.fixture.ts";
import { namesOf } from "./names.ts";
import { repairLines } from "./repair-lines.ts";
import { sayBottleneck } from "./say-bottleneck.ts";
import { sayCounterfactual, sayCounterfactuals } from "./say-counterfactual.ts";
import { sayFailedPairs, sayRefusedPin } from "./say-failed-pairs.ts";
import { sayProof } from "./say-proof.ts";
import { summaryLines } from "./summary-lines.ts";
import { supplySteps } from "./supply-steps.ts";

const { camp } = exampleCamp("demo");

/** The western half of the demo wood: not everybody has a berth. */
const HALF: Camp =
  camp.ground === undefined
    ? camp
    : { ...camp, ground: { ...camp.ground, trees: camp.ground.trees.filter(({ xM }) => xM < 30) } };

const CHANGES: Readonly<Record<ChangeKey, Partial<Counterfactual>>> = {
  "hammocks-per-tree": { from: [1], to: [2] },
  "strip-width": { from: [3], to: [2], unit: "m" },
  "span-window": { from: [3, 5], to: [2.5, 5.5], unit: "m" },
  "kit-more": { about: ["hammock", "suspension"] },
  "line-more": { about: ["short slings"], from: [3], to: [5] },
  "kind-more": { about: ["suspension"], from: [], to: [2] },
  reach: { from: [2.2], to: [2.4], unit: "m" },
  setback: { about: ["path"], from: [2], to: [1], unit: "m" },
  spokes: {},
  species: { about: ["beech"] },
  "trunk-least": { from: [0.2], to: [0.15], unit: "m", advice: false },
  "doubtful-sound": { about: ["B5"], advice: false },
  "dead-gone": { about: ["A3"], advice: false },
  "limb-down": { about: ["hung limb"], advice: false },
};

function told(change: ChangeKey, gained = 1): string {
  return sayCounterfactual(counterfactual(change, gained), camp);
}

function counterfactual(change: ChangeKey, gained: number): Counterfactual {
  const base = {
    about: [],
    from: [],
    to: [],
    unit: "1",
    placed: 9 + gained,
    gained,
    proven: true,
    advice: true,
  } as const;
  return { ...base, ...CHANGES[change], change };
}

describe("what would change it, in words", () => {
  it.each(Object.keys(CHANGES) as ChangeKey[])("%s is whole sentences without a promise", (change) => {
    for (const gained of [0, 1, 3]) {
      expect(told(change, gained)).toMatch(/^[\p{Lu}\d].*\.$/u);
      expect(told(change, gained)).not.toMatch(/undefined|NaN|\b(?:safe|passes|holds|OK)\b/i);
    }
  });

  it("tells information as such, with whom it takes to say so", () => {
    expect(told("doubtful-sound")).toBe(
      "For information: one more would have a berth if these doubtful trees were sound: B5. Only an arborist may say so.",
    );
    for (const change of ["trunk-least", "doubtful-sound", "dead-gone", "limb-down"] as const)
      expect(told(change)).toMatch(/^For information: .* Only /);
    expect(told("hammocks-per-tree", 3)).toBe(
      "3 more would have a berth if a tree might carry 2 hammocks instead of 1. Ask Withyscar estate, camping terms.",
    );
  });

  it("tells all changes that gain nobody in one line", () => {
    const vain = (["spokes", "reach"] as const).map((change) => counterfactual(change, 0));
    const lines = sayCounterfactuals(vain, camp);
    expect(lines).toHaveLength(2);
    expect(lines[1]).toMatch(/^Nobody more would have a berth if hammocks .* tree; if somebody .*\.$/);
  });

  it("says so where no change looked at gains anybody", () => {
    expect(sayCounterfactuals([], camp)).toEqual([
      "None of the changes looked at here gives anybody else a berth.",
    ]);
  });
});

describe("what decides it, in words", () => {
  const knot = {
    trees: ["A7"],
    pairs: [
      ["A5", "A7"],
      ["A6", "A7"],
    ],
    most: 1,
    why: "tree",
  } as const;
  const strips = {
    trees: ["B1", "B2", "B3", "B4"],
    pairs: [
      ["B1", "B2"],
      ["B3", "B4"],
    ],
    most: 1,
    why: "strips",
  } as const;
  const taken = { trees: ["C1", "C2"], pairs: [["C1", "C2"]], most: 1, why: "strips" } as const;

  it("names the trees, why they do, and each with its pairs", () => {
    const one: Bottleneck = { knots: [knot], trees: ["A7"], most: 1 };
    expect(sayBottleneck(one, camp)).toEqual([
      "One tree decides it: A7. Every pair that would serve somebody without a berth is at one of them; 1 person has a berth there, and no more can have.",
      "A7: 2 pairs, 1 hammock.",
    ]);
    const three: Bottleneck = {
      knots: [knot, strips, taken],
      trees: ["A7", "B1", "B2", "B3", "B4"],
      most: 3,
    };
    const [head, ...rest] = sayBottleneck(three, camp);
    expect(head).toMatch(
      /^These 5 trees decide it: A7, B1, B2, B3, B4\. .* or is taken; 3 people have a berth/,
    );
    expect(rest).toEqual([
      "A7: 2 pairs, 1 hammock.",
      "Each in the way of the others, one at a time: B1 to B2; B3 to B4.",
    ]);
  });
});

describe("how sure it is, in words", () => {
  it("claims that no layout places more only where that is proven", () => {
    expect(sayProof({ placed: 13, asked: 16, bound: 13 })).toEqual([
      "No layout of these trees as surveyed places more, and no other dealing of the kit that could be hung.",
    ]);
    expect(sayProof({ placed: 13, asked: 16, bound: 15 })).toEqual([
      "At most 15 could be placed; the search did not settle it.",
    ]);
    expect(sayProof({ placed: 16, asked: 16, bound: 16 })).toEqual([]);
  });

  it("tells what positions that are off could do to that", () => {
    const robust = { errorM: 3, placed: 5, most: 20 };
    expect(sayProof({ placed: 13, asked: 16, bound: 13, robust })[1]).toBe(
      "Were the positions known better, up to 16 might have one.",
    );
  });
});

describe("the funnel", () => {
  it("counts down from trees to people, and its losses add up", () => {
    const steps = supplySteps(planOf(HALF));
    expect(steps.map(({ key }) => key)).toEqual(["trees", "usable", "pairs", "berths", "placed"]);
    const [trees, usable, pairs, berths] = steps;
    const lost = (step: typeof trees): number =>
      (step?.lost ?? []).reduce((sum, { count }) => sum + count, 0);
    expect((trees?.count ?? 0) - lost(usable)).toBe(usable?.count);
    expect((pairs?.count ?? 0) - lost(berths)).toBe(berths?.count);
  });
});

describe("a plan that is explained", () => {
  const plan = explainPlan(planOf(HALF), HALF);
  const text = summaryLines(plan, HALF, { why: true }).map((line) => line.text);

  it("tells what would change it, what decides it, and the pairs that nearly serve", () => {
    expect(text).toContain("What would change it");
    expect(text).toContain("What decides it");
    expect(text.join("\n")).toMatch(
      /No layout of these trees as surveyed places more, and no other dealing of the kit that could be hung/,
    );
    expect(text.some((line) => line.startsWith("Pairs that nearly serve "))).toBe(true);
    expect(text.join("\n")).not.toMatch(/undefined|NaN|\d\s?(?:kg|N)\b/);
  });

  it("tells each pair that nearly serves with whom it is taken by or what is in the way", () => {
    const [lost] = plan.unplaced;
    const said = lost === undefined ? [] : sayFailedPairs(lost, namesOf(HALF));
    const pairs = said.slice(0, lost?.pairs?.length);
    expect(said.slice(pairs.length)).toEqual([`${lost?.pairsLeft ?? 0} more pairs do not serve either.`]);
    expect(pairs.length).toBeGreaterThan(3);
    expect(pairs.every((line) => /^[A-G]\d+ to [A-G]\d+: \p{Lu}.*\.$/u.test(line))).toBe(true);
  });

  it("tells a pin that was not kept with every reason", () => {
    const pinned = planOf({ ...HALF, pins: [{ sleeper: "rhodri", trees: ["A1", "A2"] }] });
    expect(pinned.pinsRefused?.map((pin) => sayRefusedPin(pin, namesOf(HALF)))).toEqual([
      expect.stringMatching(/^Rhodri Llywelyn, A1 to A2: From what may fall at A3 the berth is /),
    ]);
    const tooLong = {
      rule: "sling.shortest",
      source: "hang-chain",
      subject: "sleeper/rhodri",
      sense: "at-least",
      demand: 0.44,
      limit: 0.45,
      unit: "m",
      about: ["A1", "A2", "sling-shortest"],
      margin: -0.02,
      verdict: "do-not-hang",
    } as const;
    expect(sayRefusedPin({ sleeper: "rhodri", trees: ["A1", "A2"], because: [tooLong] }, namesOf(HALF))).toBe(
      "Rhodri Llywelyn, A1 to A2, in the kit dealt: The strap or sling is too long even at its shortest.",
    );
    const nowhere = { sleeper: "rhodri", trees: ["X", "Y"], because: [] } as const;
    expect(sayRefusedPin(nowhere, namesOf(HALF))).toBe(
      "Rhodri Llywelyn, X to Y: Nobody says how far apart these trees stand.",
    );
  });

  it("tells who moves in a repair, beside planning anew", () => {
    const repair = {
      repaired: plan,
      moved: ["rhodri"],
      fewest: true,
      fresh: plan,
      freshMoved: ["rhodri", "maren"],
    };
    expect(repairLines(repair, namesOf(HALF))).toEqual([
      "This plan moves one: Rhodri Llywelyn. Moving fewer would leave somebody without a berth.",
      `Planning anew moves 2: the same cost, ${plan.cost.toFixed(2)}.`,
    ]);
    const cheaper = { ...repair, fresh: { ...plan, cost: plan.cost - 1 } };
    expect(repairLines(cheaper, namesOf(HALF))[1]).toBe(
      `Planning anew moves 2: cost ${(plan.cost - 1).toFixed(2)} instead of ${plan.cost.toFixed(2)}.`,
    );
    expect(repairLines({ ...repair, moved: [] }, namesOf(HALF))[0]).toBe("This plan moves nobody.");
  });
});
