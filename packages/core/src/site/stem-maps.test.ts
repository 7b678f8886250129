import { describe, expect, it } from "vitest";
import { berthPlaces } from "./berth-places.ts";
import { placeFaults } from "./place-faults.ts";
import { HAS_STEM_MAPS, stemMap } from "./stem-maps.fixture.ts";
import { stem, wood } from "./wood.fixture.ts";
import type { Tree } from "./tree.ts";

// Counts made independently of this code, published beside the maps.
const COUNTED = [
  {
    name: "longleaf",
    stems: 584,
    coincident: 0,
    close: 455,
    stout: 339,
    dbhSumCm: 15676.7,
    onPaper: ["3.000000000"],
  },
  { name: "waka", stems: 504, coincident: 12, close: 595, stout: 259, dbhSumCm: 13305.55, onPaper: [] },
  {
    name: "spruces",
    stems: 134,
    coincident: 0,
    close: 185,
    stout: 121,
    dbhSumCm: 3355,
    onPaper: ["3.000000000"],
  },
] as const;

const WHERE = HAS_STEM_MAPS ? "" : " (skipped: set NIGHTSPAN_STEMS to the folder of the stem maps)";

describe.skipIf(!HAS_STEM_MAPS)(`measured woods${WHERE}`, () => {
  it.each(COUNTED)("$name: stems, stout stems and pairs within 3 to 5 m are as counted", (counted) => {
    const trees = stemMap(counted.name);
    expect(trees.length).toBe(counted.stems);
    expect(trees.reduce((sum, tree) => sum + 100 * tree.dbhM, 0)).toBeCloseTo(counted.dbhSumCm, 6);
    expect(berthPlaces(wood(trees)).usable).toBe(counted.stout);
    const { places, blocked } = berthPlaces(wood(trees, { trunkMinM: 0 }));
    const spans = [...places, ...blocked].map(({ spanM }) => spanM);
    expect(spans.filter((spanM) => spanM >= 3 && spanM <= 5).length).toBe(counted.close);
    // On paper these are just 3 m apart; the count beside the maps was made without any slack.
    expect(spans.filter((spanM) => spanM < 3 || spanM > 5).map((spanM) => spanM.toFixed(9))).toEqual(
      counted.onPaper,
    );
    const atOneSpot = trees.flatMap((a, i) =>
      trees.slice(i + 1).filter((b) => a.xM === b.xM && a.yM === b.yM),
    );
    expect(atOneSpot.length).toBe(counted.coincident);
  });

  it.each(COUNTED)("$name: every place bears a second look", ({ name }) => {
    const input = wood(stemMap(name), { halfWidthM: 1.2 });
    const { places } = berthPlaces(input);
    expect(places.length).toBeGreaterThan(0);
    for (const place of places) expect(placeFaults(input, [place])).toEqual([]);
  });

  it("waka: stems at one spot carry no berth, for each blocks the other", () => {
    const trees = stemMap("waka");
    const { places } = berthPlaces(wood(trees, { trunkMinM: 0 }));
    const carrying = new Set(places.flatMap(({ first, second }) => [first, second]));
    const spots = trees.map(({ xM, yM }) => `${xM} ${yM}`);
    const shared = trees.flatMap((_, index) =>
      spots.filter((spot) => spot === spots[index]).length > 1 ? [index] : [],
    );
    expect(shared.length).toBeGreaterThanOrEqual(12);
    expect(shared.filter((index) => carrying.has(index))).toEqual([]);
  });
});

describe("planted woods", () => {
  /** Rows of `side` by `side` stems so far apart, every third of them thin. */
  const planted = (side: number, apartM: number): Tree[] =>
    Array.from({ length: side * side }, (_, at) =>
      stem(`t${String(at).padStart(4, "0")}`, apartM * (at % side), apartM * Math.floor(at / side), {
        dbhM: at % 3 === 0 ? 0.15 : 0.3,
      }),
    );

  it.each([3, 10, 24])("%i by %i stems 3 m apart: pairs in range are the sides and the diagonals", (side) => {
    const { places, blocked, usable } = berthPlaces(wood(planted(side, 3), { trunkMinM: 0 }));
    const spans = [...places, ...blocked].map(({ spanM }) => spanM);
    // 2 n (n − 1) sides of 3 m and 2 (n − 1)² diagonals of 4.24 m; two steps are 6 m, a knight's move 6.7 m.
    expect(spans.filter((spanM) => Math.abs(spanM - 3) < 1e-9).length).toBe(2 * side * (side - 1));
    expect(spans.filter((spanM) => Math.abs(spanM - 3 * Math.SQRT2) < 1e-9).length).toBe(2 * (side - 1) ** 2);
    expect(spans.length).toBe(2 * side * (side - 1) + 2 * (side - 1) ** 2);
    expect(usable).toBe(side * side);
  });

  it("counts stout stems alone as usable", () => {
    expect(berthPlaces(wood(planted(10, 3))).usable).toBe(66);
  });

  it("every place bears a second look", () => {
    const input = wood(planted(10, 3), { halfWidthM: 1 });
    const { places } = berthPlaces(input);
    expect(places.length).toBeGreaterThan(50);
    expect(places.flatMap((place) => placeFaults(input, [place]))).toEqual([]);
  });
});
