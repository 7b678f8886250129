import { describe, expect, it } from "vitest";
import type { FitPart, StoreFit } from "../../plan/fit-types.ts";
import type { KitItem, OverInsulation, Tarp, UnderInsulation } from "../../plan/kit.ts";
import type { Camp } from "../../plan/camp.ts";
import { planCamp } from "../plan-camp.ts";
import { at, camp, hammock, sleeper, webbing } from "../testing/camp.fixture.ts";
import { coolNight, overLayer, plainTarp, underLayer } from "../testing/layers.fixture.ts";
import { nextDay } from "./next-day.ts";

const NIGHT = coolNight();

function under(id: string, but: Partial<UnderInsulation> = {}): UnderInsulation {
  return underLayer(id, { limitK: 266, massKg: 0.6, ...but });
}

function over(id: string, comfortK: number): OverInsulation {
  return overLayer(id, { form: "bag", comfortK, massKg: 1 });
}

function tarp(id: string, ridgeM: number): Tarp {
  return plainTarp(id, { ridgeM, massKg: 0.6 });
}

/** A camp without ground: `people` and a store. */
function indoors(people: Camp["sleepers"], kit: readonly KitItem[]): Camp {
  const { name, date, rules, groups, defaultsUsed } = camp().build();
  const day = date === undefined ? {} : { date };
  return { name, ...day, rules, groups, defaultsUsed, sleepers: people, kit, night: NIGHT };
}

function fitOf(people: Camp["sleepers"], kit: readonly KitItem[]): StoreFit {
  const plan = planCamp(indoors(people, kit), { engine: "test" });
  if (!plan.ok || plan.value.fit === undefined) throw new Error("nobody was fitted");
  return plan.value.fit;
}

function part({ people }: StoreFit, kind: FitPart["kind"], person = 0): FitPart {
  const found = people[person]?.parts.find((one) => one.kind === kind);
  if (found === undefined) throw new Error(`no ${kind}`);
  return found;
}

function items({ choices }: FitPart): string[] {
  return choices.map(({ item }) => item);
}

describe("fitPeople", () => {
  it("offers two at most, the better first, and each once", () => {
    const kit = [
      hammock("short", { lengthM: 2.6 }),
      hammock("right", { lengthM: 3, massKg: 0.5 }),
      hammock("long", { lengthM: 3.6, massKg: 0.9 }),
      webbing("w"),
    ];
    const fit = fitOf([sleeper("a", { statureM: 1.8 })], kit);
    expect(items(part(fit, "hammock"))).toEqual(["right", "long"]);
    expect(part(fit, "hammock").choices[0]?.reasons.map(({ rule, verdict }) => [rule, verdict])).toEqual([
      ["part.user-weight", "clear"],
      ["hammock.length", "clear"],
    ]);
    expect(part(fit, "hammock").overkill).toMatchObject([{ item: "long", in: "cloth", has: 3.6 }]);
  });

  it("never offers a hammock above its maker's greatest user weight, and says why there is none", () => {
    const fit = fitOf([sleeper("a", { massKg: 140 })], [hammock("h"), webbing("w")]);
    expect(part(fit, "hammock")).toMatchObject({
      choices: [],
      lacking: [{ rule: "layout.kit-short" }, { rule: "part.user-weight", about: ["h"] }],
    });
  });

  it("tells that a short tree strap is eaten by a stout trunk", () => {
    const sling = { type: "whoopie-sling", minM: 0.3, maxM: 2.5 } as const;
    const fit = fitOf(
      [sleeper("a")],
      [
        hammock("h"),
        webbing("w-long", { ...sling, strapLengthM: 2.5, breakingN: 9000 }),
        webbing("x-short", { ...sling, strapLengthM: 1.1 }),
      ],
    );
    const [long, short] = part(fit, "suspension").choices.map(({ reasons }) =>
      reasons.find(({ rule }) => rule === "fit.girth"),
    );
    expect(long?.verdict).toBe("clear");
    expect(short?.verdict).toBe("look-again");
    expect(short?.demand).toBeLessThan(1.2);
  });

  it("takes the tarp from the hammock, and wants two layers for a mat", () => {
    const fit = fitOf(
      [sleeper("a")],
      [
        hammock("h", { ridgelineM: 2.7 }),
        webbing("w"),
        tarp("t-short", 2.8),
        tarp("t-right", 3.1),
        under("mat", { form: "mat", insulationM2KPerW: 0.5 }),
      ],
    );
    expect(items(part(fit, "tarp"))).toEqual(["t-right", "t-short"]);
    expect(part(fit, "tarp").choices.map(({ reasons }) => reasons[0]?.verdict)).toEqual([
      "clear",
      "look-again",
    ]);
    expect(part(fit, "under").choices[0]?.reasons).toMatchObject([
      { rule: "fit.mat-layers", demand: 1, limit: 2, verdict: "look-again" },
      { rule: "under.enough", subject: "sleeper/a/under", verdict: "look-again" },
    ]);
  });

  it("tells a margin to grown people and none to children, and what is warmer than needed", () => {
    const kit = [
      hammock("h", { count: 2 }),
      webbing("w", { count: 2 }),
      under("u", { count: 3 }),
      over("o1", 270),
      over("o2", 240),
    ];
    const fit = fitOf([sleeper("a", { ageYears: 30 }), sleeper("b", { ageYears: 12 })], kit);
    expect(part(fit, "over", 0).choices[0]?.marginK).toEqual(expect.any(Number));
    expect(part(fit, "over", 1).choices.every(({ marginK }) => marginK === undefined)).toBe(true);
  });

  it("hands over a slip with numbers, last inspections and the day after", () => {
    const look = { by: "Ada", on: "2027-04-01", finding: "sound", action: "pass", number: "H1" } as const;
    const fit = fitOf(
      [sleeper("a")],
      [hammock("h", { numbers: ["H1"], inspections: [look] }), webbing("w"), tarp("t", 3.4)],
    );
    const { slip } = fit.people[0] ?? {};
    expect(slip).toMatchObject({ sleeper: "a", outOn: "2027-05-14", backOn: "2027-05-15" });
    expect(slip?.items[0]).toEqual({
      kind: "hammock",
      count: 1,
      item: "h",
      number: "H1",
      lastInspected: { by: "Ada", on: "2027-04-01" },
    });
    expect(slip?.items.map(({ kind }) => kind)).toEqual(
      expect.arrayContaining(["drip-line", "guy-line", "peg", "light"]),
    );
  });

  it("names the light and the pegs of the store only for as many as they go round", () => {
    const things: KitItem[] = [
      { id: "torch", kind: "light", count: 1, state: "in-use" },
      { id: "peg", kind: "peg", count: 6, state: "in-use" },
    ];
    const kit = [hammock("h", { count: 2 }), webbing("w", { count: 2 }), { ...tarp("t", 3.4), count: 2 }];
    const fit = fitOf([sleeper("a"), sleeper("b")], [...kit, ...things]);
    const named = fit.people.map(({ small }) =>
      small.filter(({ what }) => what === "light" || what === "peg").map(({ count, item }) => [count, item]),
    );
    expect(named).toEqual([
      [
        [4, "peg"],
        [1, "torch"],
      ],
      [
        [4, undefined],
        [1, undefined],
      ],
    ]);
  });

  it("fits nobody where there is ground", () => {
    const plan = planCamp(camp().trees(at(0, 0), at(4.2, 0)).sleepers(1).build(), { engine: "test" });
    expect(plan.ok && plan.value.fit === undefined).toBe(true);
  });
});

describe("nextDay", () => {
  it("goes over months, years and leap days", () => {
    expect(nextDay("2027-05-31")).toBe("2027-06-01");
    expect(nextDay("2027-12-31")).toBe("2028-01-01");
    expect(nextDay("2028-02-28")).toBe("2028-02-29");
    expect(nextDay("2100-02-28")).toBe("2100-03-01");
    expect(nextDay("soon")).toBeUndefined();
  });
});
