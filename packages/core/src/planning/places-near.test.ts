import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { drawFrom } from "../geometry/draw.fixture.ts";
import { listOf } from "./berth-search-lists.ts";
import { placesNear } from "./places-near.ts";

describe("placesNear", () => {
  it("lists whom plain distances list, none twice, none where a middle is not known", () => {
    fc.assert(
      fc.property(fc.noBias(fc.nat({ max: 1_000_000 })), (seed) => {
        const draw = drawFrom(seed);
        const spots = Array.from({ length: draw(0, 25) }, () =>
          draw(0, 9) === 0 ? undefined : ([draw(0, 30), draw(0, 30)] as const),
        );
        const near = placesNear(spots, 12);
        for (const [place, at] of spots.entries()) {
          const expected = [...spots.keys()].filter((other) => {
            const there = spots[other];
            if (other === place || at === undefined || there === undefined) return false;
            return Math.hypot(at[0] - there[0], at[1] - there[1]) <= 12 + 1e-9;
          });
          expect([...listOf(near, place)].sort((a, b) => a - b)).toEqual(expected);
        }
      }),
      { seed: 1, numRuns: 100 },
    );
  });
});
