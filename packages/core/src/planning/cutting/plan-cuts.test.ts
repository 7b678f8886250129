import { describe, expect, it } from "vitest";
import type { Cord, KitItem, Suspension } from "../../plan/kit.ts";
import type { PlannedBerth } from "../../plan/plan.ts";
import { planCamp } from "../plan-camp.ts";
import { at, camp, hammock, webbing } from "../testing/camp.fixture.ts";
import { planCuts } from "./plan-cuts.ts";

function spool(id: string, but: Partial<Cord> = {}): Cord {
  return { id, kind: "cord", count: 1, state: "in-use", ...but };
}

const WEBBING = { material: "webbing", widthM: 0.025 } as const;

function berthsOf(...kit: readonly KitItem[]): readonly PlannedBerth[] {
  const plan = planCamp(
    camp()
      .trees(at(0, 0), at(4.2, 0))
      .sleepers(1)
      .kit(...kit)
      .build(),
    { engine: "test" },
  );
  if (!plan.ok) throw new Error("no plan");
  return plan.value.berths;
}

const MADE_UP = berthsOf(hammock("h"), webbing("w"));
const [BERTH] = MADE_UP;

describe("planCuts", () => {
  it("cuts only drip lines where straps are made up and there is no tarp", () => {
    const { materials } = planCuts(MADE_UP, [hammock("h"), webbing("w")]);
    expect(materials).toMatchObject([
      {
        material: "thin-cord",
        pieces: [{ purpose: "drip-line", count: 2, lengthM: 0.3, berths: ["1", "1"] }],
        toBuy: [{ lengthM: 10, count: 1 }],
        proven: true,
      },
    ]);
  });

  it("cuts both straps of assumed webbing at least as long as the hang needs, to whole 5 cm", () => {
    const berths = berthsOf(hammock("h"));
    const [first] = berths;
    const straps = planCuts(berths, [hammock("h")]).materials.find(({ material }) => material === "webbing");
    const lengths =
      straps?.pieces.flatMap(({ lengthM, count }) => Array.from({ length: count }, () => lengthM)) ?? [];
    const wanted = [first?.hang.head.webbingM ?? NaN, first?.hang.foot.webbingM ?? NaN].sort((a, b) => b - a);
    expect(lengths).toHaveLength(2);
    lengths.forEach((lengthM, index) => {
      expect(lengthM).toBeGreaterThanOrEqual((wanted[index] ?? NaN) - 1e-9);
      expect(lengthM).toBeLessThan((wanted[index] ?? NaN) + 0.05);
      expect(lengthM * 20).toBeCloseTo(Math.round(lengthM * 20), 9);
    });
  });

  it("takes spools on hand of the right material and width, and never quarantined ones", () => {
    const berths = berthsOf(hammock("h"));
    const kit = [
      hammock("h"),
      spool("narrow", { ...WEBBING, widthM: 0.02, lengthM: 50 }),
      spool("bad", { ...WEBBING, lengthM: 8, state: "quarantined" }),
      spool("good", { ...WEBBING, lengthM: 12, count: 2 }),
    ];
    const straps = planCuts(berths, kit).materials.find(({ material }) => material === "webbing");
    expect(straps).toMatchObject({
      patterns: [{ item: "good", stockM: 12, times: 1 }],
      toBuy: [],
      usedM: 12,
    });
  });

  it("cuts what lies in the store before it buys what is short", () => {
    const [one] = berthsOf(hammock("h"));
    if (one === undefined) throw new Error("no berth");
    const six = Array.from({ length: 6 }, (_, index) => ({ ...one, id: `${index}` }));
    const kit = [hammock("h"), spool("rest", { ...WEBBING, lengthM: 15 })];
    const straps = planCuts(six, kit).materials.find(({ material }) => material === "webbing");
    expect(straps?.pieces.reduce((sum, { count }) => sum + count, 0)).toBe(12);
    expect(straps?.piecesM).toBeGreaterThan(15);
    expect(straps?.piecesM).toBeLessThan(25);
    expect(straps?.patterns.map(({ item, stockM }) => [item, stockM])).toEqual([
      ["rest", 15],
      [undefined, 10],
    ]);
    expect(straps).toMatchObject({ boughtM: 10, leastBoughtM: 10, leastSpools: 2, proven: true });
  });

  it("cuts no spool twice where webbing of two widths is wanted from it", () => {
    const [first] = berthsOf(hammock("h"));
    const tied: Suspension = {
      id: "w50",
      kind: "suspension",
      count: 1,
      state: "in-use",
      type: "tied-webbing",
      minM: 0.2,
      strapWidthM: 0.05,
    };
    const [wide] = berthsOf(hammock("h"), tied);
    if (first === undefined || wide === undefined) throw new Error("no berth");
    const kit = [hammock("h"), tied, spool("only", { ...WEBBING, widthM: 0.05, lengthM: 25 })];
    const told = planCuts([first, { ...wide, id: "2" }], kit).materials.filter(
      ({ material }) => material === "webbing",
    );
    expect(told.map(({ widthM }) => widthM)).toEqual([0.05, 0.025]);
    expect(told.map(({ patterns }) => patterns.map(({ item }) => item))).toEqual([["only"], [undefined]]);
  });

  it("cuts ridge line, hitch loops and guys for a tarp, each with its knots", () => {
    if (BERTH === undefined) throw new Error("no berth");
    const guy = {
      from: [0, 0, 0],
      peg: [0, 0, 0],
      angle: 0,
      asideM: 1,
      alongM: 1,
      pullN: 0,
      conflicts: [],
    } as const;
    const tarp = {
      // Trees 4.2 m apart and 0.3 m thick: 3.9 m from bark to bark, and 0.942 m round each.
      ridge: { spanM: 4.05 },
      guys: [
        { ...guy, name: "left/head", lengthM: 1.5 },
        { ...guy, name: "left/foot", lengthM: 0 },
      ],
    };
    const pieces = planCuts([withTarp(BERTH, tarp)], [hammock("h"), webbing("w")]).materials.flatMap(
      (cuts) => cuts.pieces,
    );
    expect(pieces.map(({ purpose, lengthM, count }) => [purpose, lengthM, count])).toEqual([
      ["tarp-ridge", 6.8, 1],
      ["guy", 2.1, 1],
      ["hitch-loop", 0.75, 2],
      ["drip-line", 0.3, 4],
    ]);
  });
});

type Tarp = NonNullable<PlannedBerth["tarp"]>;

/** A berth with so much of a tarp as the cuts look at. */
function withTarp(berth: PlannedBerth, tarp: object): PlannedBerth {
  const isTarp = (value: object): value is Tarp => "ridge" in value && "guys" in value;
  return isTarp(tarp) ? { ...berth, tarp } : berth;
}
