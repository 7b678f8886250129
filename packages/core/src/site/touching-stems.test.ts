import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { HAS_STEM_MAPS, stemMap } from "./stem-maps.fixture.ts";
import { touchingStems } from "./touching-stems.ts";
import { stem, woods } from "./wood.fixture.ts";
import type { Tree } from "./tree.ts";

function told(trees: readonly Tree[]): readonly string[] {
  return touchingStems(trees).map(({ first, second }) => `${first.id} ${second.id}`);
}

describe("stems that touch", () => {
  it("are those at one spot, or nearer than half of both trunks", () => {
    const at = (xM: number, dbhM = 0.3) => [stem("a", 0, 0), stem("b", xM, 0, { dbhM })];
    expect(told(at(0))).toEqual(["a b"]);
    expect(told(at(0.29))).toEqual(["a b"]);
    expect(told(at(0.3))).toEqual([]);
    expect(told(at(0.39, 0.5))).toEqual(["a b"]);
    expect(told(at(0.41, 0.5))).toEqual([]);
    expect(told([])).toEqual([]);
  });

  it("are told at one spot whatever their trunks", () => {
    expect(told([stem("a", 1, 1, { dbhM: 0 }), stem("b", 1, 1, { dbhM: 0 })])).toEqual(["a b"]);
  });

  it("are those that a look at every pair finds", () => {
    fc.assert(
      fc.property(woods(), ({ trees }) => {
        const all = trees.flatMap((a, i) =>
          trees.slice(i + 1).flatMap((b) => {
            const apart = Math.hypot(a.xM - b.xM, a.yM - b.yM);
            return apart <= 1e-9 || apart < (a.dbhM + b.dbhM) / 2 - 1e-9 ? [`${a.id} ${b.id}`] : [];
          }),
        );
        expect(told(trees)).toEqual(all);
      }),
      { seed: 1, numRuns: 60 },
    );
  });

  it.skipIf(!HAS_STEM_MAPS)("of the measured woods: 12 pairs of waka at one spot, none of the others", () => {
    const atOneSpot = touchingStems(stemMap("waka")).filter(({ apartM }) => apartM === 0);
    expect(atOneSpot.length).toBe(12);
    expect(told(stemMap("longleaf"))).toEqual([]);
    expect(told(stemMap("spruces"))).toEqual([]);
  });
});
