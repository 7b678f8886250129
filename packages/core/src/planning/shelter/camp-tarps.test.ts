import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Night } from "../../plan/camp.ts";
import type { Tarp } from "../../plan/kit.ts";
import type { BerthTarp } from "../../plan/tarp-types.ts";
import { at, camp, hammock, webbing } from "../testing/camp.fixture.ts";
import { onlyBerth, planned, troubles } from "../testing/planned.fixture.ts";
import { tarpInFull } from "./tarp-in-full.ts";
import { tarp } from "./tarp.fixture.ts";

const RAIN: Partial<Night> = { rainMmH: 2, windMS: 4, gustMS: 9, windFromRad: 0, stopGustMS: 14 };

/** One berth of 4.2 m, head in the west. */
function camped(night: Partial<Night> = RAIN, but: Partial<Tarp> = {}, ...stems: Parameters<typeof at>[]) {
  return camp()
    .trees(at(0, 0), at(4.2, 0), ...stems.map((stem) => at(...stem)))
    .sleepers(1)
    .kit(hammock("hammock"), webbing("webbing"), tarp("tarp", but))
    .night(night)
    .build();
}

function pitched(...given: Parameters<typeof camped>): BerthTarp {
  const { tarp: found } = onlyBerth(planned(camped(...given)));
  if (found === undefined) throw new Error("no tarp");
  return found;
}

describe("the tarp of a berth", () => {
  it("is pitched, told from every side and stands in what was checked", () => {
    const plan = planned(camped());
    expect(plan.checked).toEqual(expect.arrayContaining(["tarp", "rain", "night"]));
    const { tarp: found } = onlyBerth(plan);
    expect(found).toMatchObject({ item: "tarp", shape: "rectangle" });
    expect(found?.wetVerdicts.map(({ part }) => part)).toEqual(["left", "right", "head", "foot"]);
    expect(found?.guys.length).toBe(4);
    expect(found?.options?.filter(({ chosen }) => chosen).length).toBe(1);
    expect(troubles(onlyBerth(plan).findings)).toEqual([]);
  });

  it("is left out where the store has none, and rain then asks for one", () => {
    const bare = (rainMmH: number) =>
      planned(camp().trees(at(0, 0), at(4.2, 0)).sleepers(1).night({ rainMmH, stopGustMS: 14 }).build());
    expect(bare(2).notChecked).toContain("tarp");
    expect(troubles(onlyBerth(bare(2)).findings)).toEqual(["tarp.none"]);
    expect(troubles(onlyBerth(bare(0)).findings)).toEqual([]);
  });

  it("says look again where its ridge is too short for the hammock, by how much", () => {
    const { findings } = pitched(RAIN, { ridgeM: 2.6 });
    const short = findings.find(({ rule }) => rule === "tarp.ridge-short");
    expect(short).toMatchObject({ verdict: "look-again", demand: 2.6, about: ["tarp"] });
  });

  it("says look again where head or feet on the diagonal come near the cloth's edge, and a narrower one covers no more", () => {
    const rooms = [1, 1.6, 2.4, 3.2].map((widthM) => {
      const { diagonalM, findings } = pitched(
        { ...RAIN, rainMmH: 0, gustMS: 4, windMS: 1 },
        { widthM, ridgeM: 3, shape: "diamond" },
      );
      const told = findings.find(({ rule }) => rule === "tarp.diagonal");
      const roomM = Math.min(diagonalM.head, diagonalM.foot);
      expect(told).toMatchObject({ demand: roomM, verdict: roomM < 0.15 ? "look-again" : "clear" });
      return roomM;
    });
    expect(rooms).toEqual(rooms.toSorted((a, b) => a - b));
    expect(rooms[0]).toBeLessThan(0.15);
  });

  it("tells the end that rain reaches only where rain is forecast", () => {
    const storm = { ...RAIN, windMS: 18, gustMS: 26, windFromRad: Math.PI / 2, stopGustMS: 40 };
    const small = { ridgeM: 2.9, widthM: 2, shape: "hexagon" } as const;
    const wet = pitched(storm, small);
    expect(wet.wetVerdicts.find(({ part }) => part === "foot")?.covered).toBe(false);
    expect(troubles(wet.findings)).toContain("rain.foot-end");
    const dry = pitched({ ...storm, rainMmH: 0 }, small);
    expect(troubles(dry.findings)).not.toContain("rain.foot-end");
    expect(dry.wet).toEqual({ hammockM3S: 0, sleeperM3S: 0, underM3S: 0 });
  });

  it("comes down by itself in rain as far as that alone covers what is not, and room stays", () => {
    const headTies = [12, 16, 20, 24].map((windMS) => {
      const wind = { windMS, gustMS: 1.8 * windMS, windFromRad: Math.PI / 2, stopGustMS: 60, rainMmH: 6 };
      const { wetVerdicts, headroomM, drip, pitch } = pitched({ ...RAIN, ...wind });
      for (const { lowerByM = Infinity } of wetVerdicts) {
        const strapM = Math.min(drip.head.strapClearM, drip.foot.strapClearM);
        expect(lowerByM > headroomM - 0.15 || lowerByM > strapM - 0.05).toBe(true);
      }
      return pitch.headTieM;
    });
    const dry = pitched({ ...RAIN, rainMmH: 0 }).pitch.headTieM;
    // The list goes by steps of 15 cm and more; what was let down stands between them.
    const between = headTies.filter((tieM) => Math.abs(((dry - tieM) / 0.05) % 1) > 0.1);
    expect(between.length).toBeGreaterThan(0);
  });

  it("pulls on both trees along the line between them, and more in the gust", () => {
    const { ridge } = pitched();
    const { head, foot } = ridge.onTrees;
    expect(Math.abs((head.towardsRad ?? 0) - (foot.towardsRad ?? 0))).toBeCloseTo(Math.PI, 9);
    expect(ridge.gustPullN).toBeGreaterThan(ridge.pullN);
    expect(head.sidewaysN).toBeGreaterThanOrEqual(ridge.gustPullN * 0.9);
  });

  it("adds its ridge's pull to the hang's at the trunk, never less bending", () => {
    const bent = (night: Partial<Night>) =>
      onlyBerth(planned(camped(night))).findings.find(({ rule }) => rule === "tree.bending");
    const bare = onlyBerth(planned(camp().trees(at(0, 0), at(4.2, 0)).sleepers(1).build())).findings.find(
      ({ rule }) => rule === "tree.bending",
    );
    expect(bent(RAIN)?.demand).toBeGreaterThan(bare?.demand ?? Infinity);
    expect(bent(RAIN)?.about).toBeUndefined();
  });

  it("holds the guys against what a peg was measured to bear", () => {
    const windy = { ...RAIN, windMS: 15, gustMS: 30, stopGustMS: 60 };
    expect(troubles(pitched(windy).findings)).toContain("peg.not-measured");
    const measured = (holdsN: number) => {
      const pegs = { id: "pegs", kind: "peg", count: 40, state: "in-use", holdsN } as const;
      const wood = camped(windy);
      return onlyBerth(planned({ ...wood, kit: [...wood.kit, pegs] })).tarp?.findings ?? [];
    };
    expect(measured(5000).find(({ rule }) => rule === "peg.holding")?.verdict).toBe("clear");
    expect(measured(20).find(({ rule }) => rule === "peg.holding")?.verdict).toBe("look-again");
  });

  it("tells a stem that a guy runs against, by name", () => {
    const open = pitched();
    const [guy] = open.guys;
    if (guy === undefined) throw new Error("no guy");
    // Head in the west: x of the berth is east, its left is north.
    const [xM, yM] = [(guy.from[0] + guy.peg[0]) / 2, (guy.from[1] + guy.peg[1]) / 2];
    const among = pitched(RAIN, {}, [xM, yM, { dbhM: 0.02, id: "sapling", use: false }]);
    expect(among.guys[0]?.conflicts).toMatchObject([{ with: "stem", id: "sapling", gapM: 0 }]);
    expect(troubles(among.findings)).toEqual(["guy.stem"]);
  });

  it("mirrors with the wind", () => {
    const direction = fc.double({ min: 0, max: 2 * Math.PI, noNaN: true });
    fc.assert(
      fc.property(direction, (from) => {
        // The berth runs east; north and south change places.
        const [one, other] = [from, Math.PI - from].map((windFromRad) => pitched({ ...RAIN, windFromRad }));
        const share = (found: BerthTarp | undefined, part: string) =>
          found?.wetVerdicts.find((verdict) => verdict.part === part)?.shareRatio ?? Number.NaN;
        expect(share(other, "right")).toBeCloseTo(share(one, "left"), 6);
        expect(share(other, "foot")).toBeCloseTo(share(one, "foot"), 6);
      }),
      { seed: 1, numRuns: 6 },
    );
  });

  it("leans its pegs out on a slope: farther below than above", () => {
    const wood = camped();
    const slope = { riseRatio: 0.2, downhillRad: 0 };
    if (wood.ground === undefined) throw new Error("no ground");
    const steep = planned({ ...wood, ground: { ...wood.ground, slope } });
    const guys = onlyBerth(steep).tarp?.guys ?? [];
    const longest = (side: string) =>
      Math.max(...guys.filter(({ name }) => name.startsWith(side)).map(({ lengthM }) => lengthM));
    // Downhill is north, which is left of a head in the west.
    expect(longest("left")).toBeGreaterThan(longest("right"));
  });
});

describe("the tarp in full", () => {
  const wood = camped({ ...RAIN, windMS: 8, gustMS: 16, stopGustMS: 30 });
  const berth = onlyBerth(planned(wood));

  it("has a wet map, a rose all round and a trade-off", () => {
    const outcome = tarpInFull(wood, berth);
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.refusals));
    const { wetMap, rose, options } = outcome.value;
    expect(wetMap?.shares.length).toBe((wetMap?.columns ?? 0) * (wetMap?.rows ?? 0));
    for (const share of wetMap?.shares ?? []) {
      expect(share).toBeGreaterThanOrEqual(0);
      expect(share).toBeLessThanOrEqual(1 + 1e-9);
    }
    // Under the ridge it is drier than at the grid's corner.
    expect(Math.min(...(wetMap?.shares ?? []))).toBeLessThan(0.02);
    expect(wetMap?.shares[0]).toBeGreaterThan(0.9);
    expect(rose?.length).toBe(36);
    expect(new Set(rose?.map(({ windFromRad }) => windFromRad.toFixed(6))).size).toBe(36);
    expect(options?.length).toBeGreaterThan(2);
  });

  it("is refused where the store has no tarp", () => {
    const bare = { ...wood, kit: wood.kit.filter(({ kind }) => kind !== "tarp") };
    const outcome = tarpInFull(bare, berth);
    expect(outcome.ok ? [] : outcome.refusals.map(({ field }) => field)).toEqual(["kit"]);
  });
});
