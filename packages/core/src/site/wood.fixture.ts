import fc from "fast-check";
import type { PlacesInput } from "./places-types.ts";
import type { Tree, TreeCondition } from "./tree.ts";
import { drawFrom, type Draw } from "../geometry/draw.fixture.ts";

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

/** Woods of 0 to 60 stems on a plot of 14 m, some thin, doubtful, dead or kept out, a few at one spot. */
export function woods(): fc.Arbitrary<PlacesInput> {
  return fc.noBias(fc.nat({ max: 1_000_000 })).map((seed) => woodOf(drawFrom(seed)));
}

function woodOf(draw: Draw): PlacesInput {
  const trees: Tree[] = [];
  for (let index = draw(0, 60); index > 0; index--) {
    const at = draw(0, 20) === 0 ? trees[0] : undefined;
    trees.push(
      stem(
        `T${String(index).padStart(2, "0")}`,
        at?.xM ?? draw(0, 1400) / 100,
        at?.yM ?? draw(0, 1400) / 100,
        {
          dbhM: draw(10, 50) / 100,
          condition: CONDITIONS[draw(0, 9)] ?? "healthy",
          use: draw(0, 9) > 0,
        },
      ),
    );
  }
  return wood(trees, {
    halfWidthM: [0.4, 0.8, 1.2][draw(0, 2)] ?? 1.2,
    deadTreeHeights: draw(0, 1) / 10,
    doubtfulTreeHeights: draw(0, 1) / 20,
  });
}

const CONDITIONS: readonly TreeCondition[] = ["not-looked-at", "not-looked-at", "doubtful", "dead"];
