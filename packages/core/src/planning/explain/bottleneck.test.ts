import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Camp } from "../../plan/camp.ts";
import type { Knot } from "../../plan/explanation.ts";
import { prepareCamp } from "../prepare-camp.ts";
import { at, camp, hammock, webbing } from "../testing/camp.fixture.ts";
import { planned } from "../testing/planned.fixture.ts";
import { WOOD } from "../testing/wood.fixture.ts";
import { findBottleneck } from "./bottleneck.ts";
import { knotCover } from "./knot-cover.ts";

describe("what limits it", () => {
  it("finds the one tree that every pair needs", () => {
    const star = camp()
      .trees(at(0, 0, { id: "middle" }), at(4, 0), at(-4, 0), at(0, 4))
      .sleepers(2)
      .build();
    expect(found(star)).toMatchObject({
      trees: ["middle"],
      most: 1,
      knots: [{ trees: ["middle"], most: 1, why: "tree", pairs: { length: 3 } }],
    });
  });

  it("finds strips that lie across each other, where no tree is shared", () => {
    const crossing = camp()
      .trees(at(0, 0), at(4, 0), at(2, -2), at(2, 2))
      .rules("usual", { spanMaxM: { value: 4.4, source: "test" }, spanMinM: { value: 3.9, source: "test" } })
      .sleepers(2)
      .build();
    expect(found(crossing)).toMatchObject({
      knots: [
        {
          why: "strips",
          most: 1,
          pairs: [
            ["T01", "T02"],
            ["T03", "T04"],
          ],
        },
      ],
      trees: ["T01", "T02", "T03", "T04"],
    });
  });

  it("tells three trees in a ring as a whole, as no tree alone decides it", () => {
    const ring = camp()
      .trees(at(0, 0), at(4, 0), at(2, 3.46))
      .rules("usual", { footprintHalfWidthM: { value: 0.1, source: "test" } })
      .sleepers(2)
      .build();
    expect(found(ring)).toMatchObject({ most: 1, knots: [{ most: 1, pairs: { length: 3 } }] });
  });

  it("says nothing where it is the kit that is short, or no pair serves", () => {
    const kitShort = camp()
      .trees(at(0, 0), at(4, 0), at(0, 9), at(4, 9))
      .sleepers(2)
      .kit(hammock("h"), webbing("w", { count: 2 }))
      .build();
    expect(planned(kitShort).placed).toBe(1);
    expect(found(kitShort)).toBeUndefined();
    expect(found(camp().trees(at(0, 0), at(9, 0)).sleepers(1).build())).toBeUndefined();
  });
});

describe("a cover by knots", () => {
  it("is none where the knots allow more than lie there", () => {
    const knots = [{ places: Int32Array.of(0, 1), most: 2 }];
    expect(knotCover([0, 1], [0], knots)).toBeUndefined();
  });

  it("chooses knots that hold each taken place once", () => {
    const knots = [
      { places: Int32Array.of(0, 1), most: 1 },
      { places: Int32Array.of(1, 2), most: 1 },
      { places: Int32Array.of(2, 3), most: 1 },
    ];
    expect(knotCover([0, 1, 2, 3], [1, 3], knots)).toEqual([0, 2]);
  });
});

describe("laws of what limits it", () => {
  it("covers every pair that would serve somebody without a berth, and allows no more than lie there", () => {
    let shown = 0;
    fc.assert(
      fc.property(WOOD, (wood) => {
        const prepared = prepareCamp(wood);
        const plan = planned(wood);
        const bottleneck = findBottleneck(prepared, plan);
        if (bottleneck === undefined) return;
        shown++;
        const { knots, most } = bottleneck;
        const held = new Set(knots.flatMap(({ pairs }) => pairs.map(String)));
        const short = new Set(plan.unplaced.map((one) => one.sleeper));
        prepared.classes.forEach(({ members }, classIndex) => {
          if (!members.some((member) => short.has(member.sleeper.id))) return;
          prepared.ground.places.forEach(({ first, second }, place) => {
            if (!prepared.desk.serves(classIndex, place)) return;
            const ids = [first, second].map((anchor) => prepared.ground.anchors[anchor]?.id ?? "");
            expect(held).toContain(String(ids));
          });
        });
        const lying = plan.berths.filter(({ headTree, footTree }) =>
          held.has(String([headTree, footTree].sort())),
        );
        expect(lying).toHaveLength(most);
        expect(knots.reduce((sum, knot) => sum + knot.most, 0)).toBe(most);
        for (const knot of knots) expect(mostOf(knot, wood)).toBeLessThanOrEqual(knot.most);
      }),
      { seed: 1, numRuns: 60 },
    );
    expect(shown).toBeGreaterThan(10);
  });
});

function found(wood: Camp) {
  return findBottleneck(prepareCamp(wood), planned(wood));
}

/** How many of a knot's pairs go together at most, by trying every choice. */
function mostOf({ pairs }: Knot, wood: Camp): number {
  const { places, anchors, conflicts } = prepareCamp(wood).ground;
  const keys = places.map(({ first, second }) => String([anchors[first]?.id, anchors[second]?.id]));
  const own = pairs.map((one) => keys.indexOf(String(one))).slice(0, MOST_TRIED);
  const apart = new Set(conflicts.map(String));
  let most = 0;
  for (let choice = 0; choice < 1 << own.length; choice++) {
    const chosen = own.filter((_, at) => (choice & (1 << at)) !== 0);
    const trees = chosen.flatMap((place) => [places[place]?.first, places[place]?.second]);
    const clash = chosen.some((a) => chosen.some((b) => a < b && apart.has(String([a, b]))));
    if (!clash && new Set(trees).size === trees.length) most = Math.max(most, chosen.length);
  }
  return most;
}

const MOST_TRIED = 12;
