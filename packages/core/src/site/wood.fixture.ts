import fc from "fast-check";
import type { PlacesInput } from "./places-types.ts";
import type { Tree } from "./tree.ts";

/** A healthy stem of 30 cm; everything else by name. */
export function stem(id: string, xM: number, yM: number, more: Partial<Tree> = {}): Tree {
  return { id, tag: id, xM, yM, dbhM: 0.3, condition: "healthy", use: true, ...more };
}

/** A question about some stems under the rules of the layout model, hexagons of 1.5 m half width. */
export function wood(trees: readonly Tree[], more: Partial<PlacesInput> = {}): PlacesInput {
  return {
    trees,
    obstacles: [],
    spanMinM: 3,
    spanMaxM: 5,
    trunkMinM: 0.2,
    halfWidthM: 1.5,
    deadTreeHeights: 0,
    doubtfulTreeHeights: 0,
    ...more,
  };
}

/** Woods of up to `most` stems on a plot of 14 m, some thin, doubtful, dead or kept out, some at one spot. */
export function woods(most = 30): fc.Arbitrary<PlacesInput> {
  const spot = fc.integer({ min: 0, max: 1400 }).map((at) => at / 100);
  const tree = fc.record({
    xM: spot,
    yM: spot,
    dbhM: fc.integer({ min: 10, max: 50 }).map((cm) => cm / 100),
    condition: fc.constantFrom("healthy", "healthy", "healthy", "not-looked-at", "doubtful", "dead"),
    use: fc.constantFrom(true, true, true, true, false),
  });
  return fc
    .record({
      drawn: fc.array(tree, { maxLength: most }),
      halfWidthM: fc.constantFrom(0.4, 0.8, 1.2),
      deadTreeHeights: fc.constantFrom(0, 0.1),
      doubtfulTreeHeights: fc.constantFrom(0, 0.05),
    })
    .map(({ drawn, ...rules }) => {
      const trees = drawn.map((one, index) =>
        stem(`T${String(index).padStart(2, "0")}`, one.xM, one.yM, one),
      );
      return wood(trees, rules);
    });
}
