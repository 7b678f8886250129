import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { worstVerdict, type Finding } from "../../outcome/finding.ts";
import type { HouseRules } from "../../plan/house-rules.ts";
import type { Suspension } from "../../plan/kit.ts";
import type { Plan } from "../../plan/plan.ts";
import type { Tree } from "../../site/tree.ts";
import { trunk } from "../../statics/trunk.ts";
import { at, camp, hammock, pair, sleeper, webbing } from "../testing/camp.fixture.ts";
import { onlyBerth, planned, troubles } from "../testing/planned.fixture.ts";
import { WOOD } from "../testing/wood.fixture.ts";
import type { TrunkPull } from "../trunk-pulls.ts";
import { greatestMomentNm } from "./trunk.ts";

const house = (value: number) => ({ value, source: "land manager" });
/** A house that allows saplings, so that the mechanics have something to say. */
const THIN: Partial<HouseRules> = { trunkMinM: house(0.05) };

function between(
  tree: Partial<Tree>,
  rules: Partial<HouseRules> = THIN,
  strap: Partial<Suspension> = {},
): Plan {
  return planned(
    camp()
      .trees(at(0, 0, tree), at(4.2, 0))
      .sleepers(sleeper("s1"))
      .kit(hammock("h"), webbing("w", strap))
      .rules("usual", rules)
      .build(),
  );
}

function about(tree: string, rule: Finding["rule"], plan: Plan): Finding[] {
  return plan.berths.flatMap(({ findings }) =>
    findings.filter((finding) => finding.rule === rule && finding.subject === `tree/${tree}`),
  );
}

describe("bending of a trunk", () => {
  it("is that of the sideways pull at the strap's height, against what is left of green strength", () => {
    const plan = between({ species: "Fagus sylvatica", dbhM: 0.2 });
    const { hang, headTree } = onlyBerth(plan);
    expect(headTree).toBe("T01");
    const { sidewaysN, strapHeightM } = hang.head;
    const alone = trunk({
      species: "european beech",
      dbhM: 0.2,
      pullN: sidewaysN,
      heightM: strapHeightM,
      strapWidthM: 0.025,
    });
    if (!alone.ok) throw new Error("refused");
    const [bending] = about("T01", "tree.bending", plan);
    expect(bending).toMatchObject({ unit: "Pa", verdict: "clear", depth: "why", source: "wood-handbook" });
    expect((bending?.demand ?? 0) / alone.value.bendingPa).toBeCloseTo(1, 6);
    expect((bending?.limit ?? 0) / 65e6).toBeCloseTo((1 - 1.645 * 0.16) / 2.13, 9);
    expect(bending?.about).toBeUndefined();
  });

  it("is far from the weakest wood's limit on a trunk of 20 cm: 1.4 of 11.2 MPa", () => {
    const plan = planned(
      camp()
        .trees(at(0, 0, { dbhM: 0.2 }), at(4.2, 0, { dbhM: 0.2 }))
        .sleepers(1)
        .build(),
    );
    const [foot] = about("T02", "tree.bending", plan);
    expect((foot?.demand ?? 0) / 1e6).toBeCloseTo(1.4, 1);
    expect((foot?.limit ?? 0) / 1e6).toBeCloseTo(11.2, 1);
  });

  it("gives nobody a berth at a sapling that a house rule would let through, and says what is in the way", () => {
    const plan = between({ species: "Fagus sylvatica", dbhM: 0.07 });
    expect(plan.placed).toBe(0);
    const [, bent] = plan.unplaced[0]?.because ?? [];
    expect(bent).toMatchObject({ verdict: "do-not-hang", about: ["T01", "T02", "trunk-bend"] });
  });

  it("takes a tree of no or of an unlisted species for the weakest, and tells which it is", () => {
    const unnamed = between({ dbhM: 0.1 });
    const unlisted = between({ dbhM: 0.1, species: "Ginkgo biloba" });
    expect(about("T01", "tree.species-unknown", unnamed)).toMatchObject([{ verdict: "clear", depth: "why" }]);
    expect(about("T01", "tree.species-unknown", unlisted)).toMatchObject([{ about: ["Ginkgo biloba"] }]);
    const [limit] = about("T01", "tree.bending", unnamed).map((finding) => finding.limit);
    for (const species of ["honey locust", "oak", "Quercus sp."]) {
      const standIn = between({ dbhM: 0.1, species });
      expect(about("T01", "tree.species-unknown", standIn)).toMatchObject([{ about: [species] }]);
    }
    for (const species of ["western white pine", "black locust", "Larix decidua", "Tilia americana"]) {
      const named = between({ dbhM: 0.1, species });
      expect(about("T01", "tree.species-unknown", named)).toEqual([]);
      expect(about("T01", "tree.bending", named)[0]?.limit).toBeGreaterThanOrEqual(limit ?? Infinity);
    }
  });

  it("leaves a tree nobody looked at at look again, however stout it is", () => {
    const plan = between({ species: "white oak", dbhM: 0.6, condition: "not-looked-at" }, {});
    expect(about("T01", "tree.bending", plan)[0]?.verdict).toBe("clear");
    expect(plan.verdict).toBe("look-again");
  });

  it("can make a verdict worse and never better", () => {
    let told = 0;
    fc.assert(
      fc.property(WOOD, (wood) => {
        for (const { verdict, findings } of planned(wood).berths) {
          const others = findings.filter(({ depth }) => depth !== "why");
          told += findings.length - others.length;
          expect(worstVerdict([worstVerdict(others.map((finding) => finding.verdict)), verdict])).toBe(
            verdict,
          );
        }
      }),
      { seed: 1, numRuns: 20 },
    );
    expect(told).toBeGreaterThan(0);
  });

  it("stands in what was checked only where every trunk was measured", () => {
    const stated = (dbhAssumed: boolean) =>
      planned(
        camp()
          .pairs(pair("p", ["A", "B"], { dbhAssumed }))
          .sleepers(1)
          .build(),
      );
    expect(stated(false).checked).toContain("trunk");
    expect(stated(true).notChecked).toContain("trunk");
    expect(about("A", "tree.bending", stated(true))).toEqual([]);
  });

  it("ends the window of spans where a trunk would be bent too far", () => {
    const plan = between({ species: "Fagus sylvatica", dbhM: 0.076 }, { ...THIN, spanMaxM: house(8) });
    const { spanWindow, spanM } = onlyBerth(plan);
    expect(about("T01", "tree.bending", plan)[0]?.verdict).toBe("look-again");
    expect(spanWindow?.bindsHigh).toBe("trunk-bend");
    expect(spanWindow?.high).toBeGreaterThan(spanM);
  });
});

describe("two hammocks on one trunk", () => {
  const two = (third: Partial<Tree>): Plan =>
    planned(
      camp()
        .trees(at(0, 0), at(4.2, 0), at(0, 4.2, third))
        .sleepers(2)
        .rules("usual", { hammocksPerTree: house(2), footprintHalfWidthM: house(0.1) })
        .build(),
    );

  function sideways(plan: Plan, tree: string): number[] {
    return plan.berths.flatMap(({ headTree, hang }) =>
      headTree === tree ? [hang.head.sidewaysN * hang.head.strapHeightM] : [],
    );
  }

  it("add as vectors by their bearings, and each tells of the other", () => {
    const plan = two({});
    const moments = sideways(plan, "T01");
    expect(moments.length).toBe(2);
    const together = (32 * Math.hypot(...moments)) / (Math.PI * 0.3 ** 3);
    const bending = about("T01", "tree.bending", plan);
    expect(bending.map((finding) => finding.about)).toEqual([["2"], ["1"]]);
    for (const { demand } of bending) expect(demand / together).toBeCloseTo(1, 6);
  });

  const PULL: TrunkPull = { berth: "1", sidewaysN: 700, heightM: 1.5, towardsRad: 0 };
  const towards = (towardsRad: number): TrunkPull => ({ ...PULL, berth: "2", towardsRad });

  it("do not balance once somebody gets out of one of them", () => {
    expect(greatestMomentNm([PULL, towards(Math.PI)])).toBeCloseTo(1050, 3);
    expect(greatestMomentNm([PULL, towards(0)])).toBeCloseTo(2100, 3);
    expect(greatestMomentNm([PULL, towards(Math.PI / 2)])).toBeCloseTo(1050 * Math.SQRT2, 3);
  });

  it("are taken to pull one way where nobody knows the bearing: never less than for any bearing", () => {
    const unknown: TrunkPull = { berth: "2", sidewaysN: 700, heightM: 1.5 };
    fc.assert(
      fc.property(fc.double({ min: 0, max: 2 * Math.PI, noNaN: true }), (angle) => {
        const known = greatestMomentNm([PULL, towards(angle)]);
        expect(greatestMomentNm([PULL, unknown])).toBeGreaterThanOrEqual(known - 1e-3);
      }),
      { seed: 1, numRuns: 100 },
    );
  });
});

describe("pressure on the bark", () => {
  it("is the pull over trunk times strap, against the least of both that the house allows", () => {
    const plan = between({ dbhM: 0.25 }, {}, { strapWidthM: 0.05 });
    const [pressure] = about("T01", "tree.bark-pressure", plan);
    const { sidewaysN } = onlyBerth(plan).hang.head;
    expect(pressure?.demand).toBeCloseTo(sidewaysN / (0.25 * 0.05), 6);
    expect(pressure?.limit).toBeCloseTo(sidewaysN / (0.2 * 0.025), 6);
    expect(pressure).toMatchObject({ source: "common-practice", verdict: "clear", depth: "why" });
  });

  it("allows the least strap on the least trunk, which the house means", () => {
    const plan = between({ dbhM: 0.2 }, {}, { strapWidthM: 0.025 });
    expect(about("T01", "tree.bark-pressure", plan)[0]?.verdict).toBe("clear");
  });

  it("asks for a wider strap where one through its own eye presses twice as hard", () => {
    const narrow = between({ dbhM: 0.3 }, {}, { strapWidthM: 0.025, throughOwnEye: true });
    expect(troubles(onlyBerth(narrow).findings)).toEqual(["tree.bark-pressure"]);
    expect(narrow.verdict).toBe("look-again");
    const wide = between({ dbhM: 0.3 }, {}, { strapWidthM: 0.05, throughOwnEye: true });
    expect(troubles(onlyBerth(wide).findings)).toEqual([]);
  });
});
