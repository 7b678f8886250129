import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { berthPlaces } from "./berth-places.ts";
import type { Obstacle } from "./obstacle.ts";
import { placeFaults } from "./place-faults.ts";
import type { Place, Places, PlacesInput } from "./places-types.ts";
import type { Tree } from "./tree.ts";
import { stem, wood, woods } from "./wood.fixture.ts";

const PAIR = [stem("a", 0, 0), stem("b", 4, 0)];

function names({ trees }: PlacesInput, places: readonly Pick<Place, "first" | "second">[]): string[] {
  return places.map(({ first, second }) => `${trees[first]?.id ?? "?"} ${trees[second]?.id ?? "?"}`);
}

function placed(input: PlacesInput): string[] {
  return names(input, berthPlaces(input).places);
}

function blocks(input: PlacesInput): string[] {
  return berthPlaces(input).blocked.map(({ by, cause }) => `${by} ${cause}`);
}

function obstacle(more: Partial<Obstacle>): Obstacle {
  return { id: "o", kind: "other", shape: { type: "point", at: [2, 3] }, setbackM: 0, ...more };
}

describe("places for berths", () => {
  it("are pairs whose span lies within the bounds, bounds included", () => {
    const trees = [stem("a", 0, 0), stem("b", 3, 0), stem("c", 0, 5), stem("d", -0.1, -0.2 - 0.1 - 4.7)];
    expect(placed(wood(trees, { halfWidthM: 0.5 }))).toEqual(["a b", "a c"]);
    expect(placed(wood([stem("a", 0.1, 0), stem("b", 0.3 + 2.8, 0)]))).toEqual(["a b"]);
    expect(placed(wood([stem("a", 0, 0), stem("b", 2.9999, 0)]))).toEqual([]);
  });

  it("need stout, allowed trees that are neither doubtful nor dead", () => {
    const only = (more: Partial<Tree>): number =>
      berthPlaces(wood([stem("a", 0, 0), stem("b", 4, 0, more)])).usable;
    expect(only({ dbhM: 0.2 })).toBe(2);
    expect(only({ dbhM: 0.199 })).toBe(1);
    expect(only({ condition: "not-looked-at" })).toBe(2);
    expect(only({ condition: "doubtful" })).toBe(1);
    expect(only({ condition: "dead" })).toBe(1);
    expect(only({ use: false })).toBe(1);
  });

  it("are sorted by id as text, whatever the order of the list", () => {
    const trees = [stem("b", 8, 0), stem("2", 4, 0), stem("10", 0, 0), stem("B", 4, 4)];
    const expected = ["10 2", "2 B", "2 b"];
    expect(placed(wood(trees, { halfWidthM: 0.5 }))).toEqual(expected);
    expect(placed(wood([...trees].reverse(), { halfWidthM: 0.5 }))).toEqual(expected);
  });

  it("bear an empty wood, one tree, and stems all at one spot", () => {
    const none = { places: [], conflicts: [], pairs: 0, blocked: [] };
    expect(berthPlaces(wood([]))).toEqual({ ...none, usable: 0 });
    expect(berthPlaces(wood([stem("a", 1, 1)]))).toEqual({ ...none, usable: 1 });
    const heap = [stem("a", 1, 1), stem("b", 1, 1), stem("c", 1, 1)];
    expect(berthPlaces(wood(heap, { spanMinM: 0 }))).toEqual({ ...none, usable: 3 });
  });

  it("keep a pointed strip clear of other stems, and say which stem is in the way", () => {
    // The strip is 1.5 m wide to each side over its middle half; a stem of 30 cm reaches 15 cm further.
    expect(blocks(wood([...PAIR, stem("c", 2, 1.649)]))).toEqual(["stem c"]);
    expect(blocks(wood([...PAIR, stem("c", 2, 1.65)]))).toEqual([]);
    // Near its ends it is narrow: a quarter of a metre along, the side is 37.5 cm away.
    expect(blocks(wood([...PAIR, stem("c", 0.25, 0.7)]))).toEqual([]);
    expect(blocks(wood([...PAIR, stem("c", 0.25, 0.5)]))).toEqual(["stem c"]);
    expect(blocks(wood([...PAIR, stem("c", 2, 1.6, { dbhM: 0.05 })]))).toEqual([]);
  });

  it("are blocked by a stem at the very spot of an end tree", () => {
    const input = wood([...PAIR, stem("c", 4, 0, { dbhM: 0.1 })]);
    expect(placed(input)).toEqual([]);
    expect(blocks(input)).toEqual(["stem c"]);
  });

  it("stay out of the reach of dead trees, and of doubtful ones by their own factor", () => {
    // 30 cm: estimated 19 m high. The dead tree stands 19 m from the strip's edge at 1.5 m.
    const dead = stem("x", 2, 20.5, { condition: "dead" });
    const near = { deadTreeHeights: 1 };
    expect(blocks(wood([...PAIR, dead], near))).toEqual(["dead-tree x"]);
    expect(blocks(wood([...PAIR, { ...dead, yM: 20.501 }], near))).toEqual([]);
    expect(blocks(wood([...PAIR, { ...dead, heightM: 12 }], near))).toEqual([]);
    expect(blocks(wood([...PAIR, { ...dead, condition: "doubtful" }], near))).toEqual([]);
    expect(blocks(wood([...PAIR, { ...dead, condition: "doubtful" }], { doubtfulTreeHeights: 1.5 }))).toEqual(
      ["dead-tree x"],
    );
    expect(blocks(wood([...PAIR, dead]))).toEqual([]);
  });

  it("stay out of reach of what hangs overhead, its edge included", () => {
    const limb = obstacle({ kind: "overhead", setbackM: 1.5 });
    expect(blocks(wood(PAIR, { obstacles: [limb] }))).toEqual(["overhead o"]);
    expect(blocks(wood(PAIR, { obstacles: [{ ...limb, setbackM: 1.49 }] }))).toEqual([]);
  });

  it("keep the set-back of obstacles, measured to the strip", () => {
    const kept = (shape: Obstacle["shape"], setbackM: number): string[] =>
      blocks(wood(PAIR, { obstacles: [obstacle({ shape, setbackM })] }));
    const path: Obstacle["shape"] = {
      type: "line",
      points: [
        [-5, 3.5],
        [9, 3.5],
      ],
    };
    expect(kept(path, 2)).toEqual([]);
    expect(kept(path, 2.01)).toEqual(["obstacle o"]);
    const pond: Obstacle["shape"] = {
      type: "polygon",
      ring: [
        [-9, -9],
        [9, -9],
        [9, 9],
        [-9, 9],
      ],
    };
    expect(kept(pond, 0)).toEqual(["obstacle o"]);
    expect(kept({ type: "point", at: [2, 1] }, 0)).toEqual(["obstacle o"]);
    expect(kept({ type: "point", at: [2, 1.6] }, 0)).toEqual([]);
    expect(kept({ type: "line", points: [] }, 5)).toEqual([]);
  });

  it("name the stem first where several things block, then the lowest id", () => {
    const trees = [...PAIR, stem("d", 2, 1), stem("c", 2, -1), stem("x", 2, 5, { condition: "dead" })];
    const obstacles = [obstacle({ kind: "overhead", setbackM: 9 }), obstacle({ id: "a", setbackM: 9 })];
    expect(blocks(wood(trees, { obstacles, deadTreeHeights: 1 }))).toEqual(["stem c"]);
    expect(
      blocks(wood([...PAIR, stem("x", 2, 5, { condition: "dead" })], { obstacles, deadTreeHeights: 1 })),
    ).toEqual(["dead-tree x"]);
    expect(blocks(wood(PAIR, { obstacles }))).toEqual(["overhead o"]);
  });

  it("conflict where their strips overlap, not where they touch", () => {
    const angle = (degrees: number): readonly (readonly [number, number])[] => {
      const at = (degrees * Math.PI) / 180;
      return berthPlaces(
        wood([...PAIR, stem("c", -4 * Math.cos(at), -4 * Math.sin(at))], { halfWidthM: 0.5 }),
      ).conflicts;
    };
    // Half width 0.5 over a quarter of 4 m: each tip opens 26.57° to either side, so two need 53.13°.
    expect(angle(0)).toEqual([]);
    expect(angle(126)).toEqual([]);
    expect(angle(128)).toEqual([[0, 1]]);
    const row = [stem("a", 0, 0), stem("b", 4, 0), stem("c", 0, 3), stem("d", 4, 3)];
    const beside = berthPlaces(wood(row, { spanMinM: 3.5 }));
    expect(names(wood(row), beside.places)).toEqual(["a b", "a d", "b c", "c d"]);
    expect(beside.conflicts).not.toContainEqual([0, 3]);
  });

  it("agree with a second look by other arithmetic, pair by pair", () => {
    const seen = { places: 0, blocked: 0, conflicts: 0 };
    fc.assert(
      fc.property(woods(), (input) => {
        const { places, blocked, conflicts } = berthPlaces(input);
        seen.places += places.length;
        seen.blocked += blocked.length;
        seen.conflicts += conflicts.length;
        for (const place of places) expect(placeFaults(input, [place])).toEqual([]);
        for (const pair of blocked) {
          const footprint =
            berthPlaces(wood(endsOf(input, pair), { ...input, trees: endsOf(input, pair) })).places[0]
              ?.footprint ?? [];
          expect(placeFaults(input, [{ ...pair, footprint }])).not.toEqual([]);
        }
        const clash = new Set(conflicts.map(([a, b]) => `${a} ${b}`));
        for (const [a, one] of places.entries()) {
          for (const [offset, other] of places.slice(a + 1).entries()) {
            expect(placeFaults(input, [one, other]).length > 0).toBe(clash.has(`${a} ${a + 1 + offset}`));
          }
        }
      }),
      { seed: 1, numRuns: 100 },
    );
    expect(Math.min(seen.places, seen.blocked, seen.conflicts)).toBeGreaterThan(100);
  });

  it("count every pair once: free or blocked", () => {
    fc.assert(
      fc.property(woods(), (input) => {
        const { places, blocked, pairs } = berthPlaces(input);
        expect(places.length + blocked.length).toBe(pairs);
      }),
      { seed: 2, numRuns: 60 },
    );
  });

  it("do not change when the wood is shifted, mirrored, turned by a quarter, or listed anew", () => {
    const told = ({ places, blocked, ...counts }: Places, input: PlacesInput): unknown => ({
      ...counts,
      places: names(input, places),
      blocked: blocked.map(({ by, cause }) => `${by} ${cause}`),
    });
    const moves: readonly ((tree: Tree) => Tree)[] = [
      (tree) => ({ ...tree, xM: tree.xM + 512, yM: tree.yM - 64 }),
      (tree) => ({ ...tree, xM: -tree.xM }),
      (tree) => ({ ...tree, xM: tree.yM, yM: -tree.xM }),
    ];
    fc.assert(
      fc.property(woods(), (input) => {
        const before = told(berthPlaces(input), input);
        for (const move of moves) {
          const there = { ...input, trees: input.trees.map(move) };
          expect(told(berthPlaces(there), there)).toEqual(before);
        }
        const anew = { ...input, trees: [...input.trees].reverse() };
        expect(told(berthPlaces(anew), anew)).toEqual(before);
      }),
      { seed: 3, numRuns: 60 },
    );
  });

  it("are never lost by a laxer rule, nor by taking away a stem that carries no berth", () => {
    fc.assert(
      fc.property(woods(), fc.nat({ max: 59 }), (input, gone) => {
        const before = placed(input);
        const laxer = {
          spanMinM: 2.5,
          spanMaxM: 5.5,
          trunkMinM: 0.15,
          deadTreeHeights: 0,
          doubtfulTreeHeights: 0,
        };
        expect(placed({ ...input, ...laxer })).toEqual(expect.arrayContaining(before));
        expect(placed({ ...input, halfWidthM: input.halfWidthM / 2 })).toEqual(
          expect.arrayContaining(before),
        );
        const id = input.trees[gone]?.id ?? "";
        const kept = before.filter((pair) => !pair.split(" ").includes(id));
        expect(placed({ ...input, trees: input.trees.filter((tree) => tree.id !== id) })).toEqual(
          expect.arrayContaining(kept),
        );
      }),
      { seed: 4, numRuns: 60 },
    );
  });
});

function endsOf({ trees }: PlacesInput, { first, second }: Pick<Place, "first" | "second">): Tree[] {
  return [trees[first], trees[second]].flatMap((tree) => tree ?? []);
}
