import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Finding } from "../../outcome/finding.ts";
import type { Suspension } from "../../plan/kit.ts";
import type { PlannedBerth } from "../../plan/plan.ts";
import { degrees, inDegrees, radians } from "../../quantity/angle.ts";
import { at, camp, hammock, sleeper, webbing } from "../testing/camp.fixture.ts";
import { onlyBerth, planned, troubles } from "../testing/planned.fixture.ts";

interface Asked {
  readonly massKg?: number;
  readonly strap?: Partial<Suspension>;
  /** Instead of the ordinary webbing. */
  readonly suspension?: Suspension;
  readonly maxUserKg?: number;
  readonly designFactor?: number;
  /** House range of strap angles [deg]. */
  readonly angles?: readonly [least: number, most: number];
  readonly dbhM?: number;
}

function hung(asked: Asked): PlannedBerth {
  const { massKg = 80, strap = {}, maxUserKg = 136, designFactor = 5, dbhM = 0.3 } = asked;
  const [least, most] = asked.angles ?? [25, 35];
  const house = (value: number) => ({ value, source: "test" });
  return onlyBerth(
    planned(
      camp()
        .trees(at(0, 0, { dbhM }), at(4.6, 0, { dbhM }))
        .sleepers(sleeper("s1", { massKg }))
        .kit(hammock("red", { maxUserKg }), asked.suspension ?? webbing("band", strap))
        .rules("usual", {
          designFactor: house(designFactor),
          angleMinRad: house(degrees(least)),
          angleMaxRad: house(degrees(most)),
        })
        .build(),
    ),
  );
}

function of(rule: Finding["rule"], { findings }: PlannedBerth): Finding[] {
  return findings.filter((finding) => finding.rule === rule);
}

/** Nobody told what it breaks at. */
const RATED: Suspension = {
  id: "band",
  kind: "suspension",
  type: "tied-webbing",
  count: 1,
  state: "in-use",
  minM: 0,
  strapLengthM: 5,
  strapWidthM: 0.025,
  ratedLoadN: 1340,
};

/** Kit as shops sell it, each with what its plate says. */
const ORDINARY: readonly Suspension[] = [
  webbing("band", { breakingN: 6700 }),
  webbing("band", { breakingN: 6700, ratedLoadN: 1340 }),
  webbing("sling", { type: "whoopie-sling", minM: 0.3, maxM: 2, strapWidthM: 0.04, breakingN: 16_000 }),
  RATED,
];

/** House ranges of strap angles that put the mean of both straps at 25° to 35°. */
const RANGES: readonly (readonly [number, number])[] = [
  [20, 27.1],
  [20, 28.5],
  [25, 35],
  [31, 40],
  [32.5, 40],
  [33.5, 40],
];

describe("ordinary sound kit", () => {
  it.each([70, 80, 90, 100])("comes out without a fault for %d kg at 25° to 35°", (massKg) => {
    const means: number[] = [];
    for (const suspension of ORDINARY) {
      for (const angles of RANGES) {
        const berth = hung({ massKg, suspension, angles, dbhM: 0.2 });
        const { head, foot } = berth.hang;
        means.push(inDegrees(radians((head.angle + foot.angle) / 2)));
        expect(troubles(berth.findings)).toEqual([]);
      }
    }
    const [flattest, steepest] = [Math.min(...means), Math.max(...means)];
    expect(flattest).toBeCloseTo(25, 0);
    expect(steepest).toBeCloseTo(35, 0);
  });
});

describe("sitting down hard", () => {
  it("compares 2.13 times the pull with half of what tied webbing breaks at, without the design factor", () => {
    const berth = hung({ designFactor: 8, strap: { breakingN: 9000 } });
    const [head] = of("part.flop-in", berth);
    expect(head).toMatchObject({ subject: "berth/1/head-strap", limit: 4500, source: "ergonomics-2016" });
    expect(head?.demand).toBeCloseTo(2.13 * berth.hang.head.pullN, 9);
    expect(head?.about).toEqual(["band"]);
  });

  it("takes no knot from a spliced sling", () => {
    const sling = { type: "whoopie-sling", maxM: 2, breakingN: 5000 } as const;
    expect(of("part.flop-in", hung({ strap: sling }))).toMatchObject([{ limit: 5000 }, { limit: 5000 }]);
  });

  it("takes the breaking strength from the rated load where nobody knows it, and says so", () => {
    expect(of("part.flop-in", hung({ suspension: { ...RATED, ratedLoadN: 1000 } }))).toMatchObject([
      { limit: 2500, source: "sling-practice" },
      { limit: 2500, source: "sling-practice" },
    ]);
  });

  it("never is the stricter check at 5:1, and is where the house asks for less", () => {
    const strengths = fc.integer({ min: 1500, max: 12_000 });
    fc.assert(
      fc.property(strengths, fc.integer({ min: 40, max: 130 }), (breakingN, massKg) => {
        const berth = hung({ massKg, strap: { breakingN } });
        const margins = (rule: Finding["rule"]) => of(rule, berth).map(({ margin }) => margin ?? NaN);
        const [still, peak] = [margins("part.breaking-load"), margins("part.flop-in")];
        expect(still.length).toBe(2);
        still.forEach((margin, end) => expect(peak[end]).toBeGreaterThan(margin));
      }),
      { seed: 1, numRuns: 30 },
    );
    const weak = hung({ designFactor: 4, strap: { breakingN: 3300 } });
    expect(of("part.breaking-load", weak).map(({ verdict }) => verdict)).toEqual([
      "look-again",
      "look-again",
    ]);
    expect(of("part.flop-in", weak).map(({ verdict }) => verdict)).toEqual(["do-not-hang", "do-not-hang"]);
  });

  it("says nothing of a strap whose strength nobody knows", () => {
    const plan = planned(camp().trees(at(0, 0), at(4.2, 0)).sleepers(1).kit().build());
    expect(of("part.flop-in", onlyBerth(plan))).toEqual([]);
  });

  it("tells how hard a fall would pull, more for stiffer straps, at least twice, and judges nothing by it", () => {
    const factor = (eaN: number) => {
      const [drop] = of("part.drop-in", hung({ strap: { eaN } }));
      expect(drop).toMatchObject({ verdict: "clear", depth: "why", limit: 2.13 });
      return drop?.demand ?? NaN;
    };
    const factors = [2000, 20_000, 200_000].map(factor);
    expect(factors[0]).toBeGreaterThan(2);
    expect(factor(40_000)).toBeGreaterThan(3);
    expect(factor(40_000)).toBeLessThan(4);
    expect(factors).toEqual([...factors].sort((a, b) => a - b));
  });
});

describe("a strap through its own eye", () => {
  it("keeps four fifths of its rated load and all of its breaking strength", () => {
    const berth = hung({ strap: { throughOwnEye: true, ratedLoadN: 2000, breakingN: 10_000 } });
    const [working] = of("part.working-load", berth);
    expect(working).toMatchObject({ limit: 1600, source: "sling-practice" });
    expect(of("part.breaking-load", berth)[0]).toMatchObject({ limit: 10_000, source: "maker-plate" });
    expect(of("part.flop-in", berth)[0]).toMatchObject({ limit: 5000 });
  });
});

describe("two people in one hammock", () => {
  it("are refused in every berth: by the plate where it says so, else as nothing was reckoned for two", () => {
    const one = { demand: 1, limit: 1, unit: "1", verdict: "clear", depth: "why", about: ["red"] };
    expect(of("part.one-person", hung({}))).toMatchObject([{ ...one, source: "maker-plate" }]);
    const wide = hung({ massKg: 60, maxUserKg: 120 });
    expect(of("part.one-person", wide)).toMatchObject([{ ...one, source: "house-convention" }]);
  });
});
