import {
  searchBerths,
  searchGroups,
  type GroupSearchInput,
  type LinearSolver,
  type SearchKind,
} from "@nightspan/core";
import { beforeAll, describe, expect, it } from "vitest";
import { loadSolver } from "./load-solver.ts";
import { drawFrom, randomSearch, type Draw } from "./random-search.fixture.ts";

let solver: LinearSolver;
beforeAll(async () => {
  solver = await loadSolver();
});

/** Two groups of two or three, leaders first, and now and then somebody of none, among nine places at random spots. */
function groupsOf(draw: Draw): GroupSearchInput {
  const drawn = randomSearch(draw, {
    places: 9,
    trees: 12,
    classes: 1,
    capacity: draw(1, 2),
    conflictsInTen: draw(0, 2),
  });
  const sizes = [draw(1, 3), draw(1, 3), draw(0, 1)];
  const people = sizes.reduce((sum, size) => sum + size, 0);
  const costUnits = Float64Array.from(drawn.places, () => draw(0, 30));
  const search = { ...drawn, classes: [{ people, costUnits }] };
  const base = searchBerths(search, { solver });
  const kinds = sizes.flatMap((size, at): SearchKind[] => {
    const group = at < 2 ? at : -1;
    const leads = { classIndex: 0, group, people: group < 0 ? 0 : 1, leads: group >= 0 };
    return [leads, { classIndex: 0, group, people: group < 0 ? size : size - 1, leads: false }];
  });
  return {
    search,
    base,
    kinds,
    groups: [{ withinM: draw(3, 9) }, { withinM: draw(3, 9) }],
    spots: drawn.places.map(() => [draw(0, 14), draw(0, 14)]),
  };
}

/** The least cost at which everybody lies within reach of a hub of their group, by trying every way; ∞ for none. */
function leastWithin(input: GroupSearchInput): number {
  return leastWorth(input, Infinity);
}

/** The least cost by trying every way, where each one out of reach has a price. */
function leastWorth({ search, kinds, groups, spots }: GroupSearchInput, farUnits: number): number {
  const people = search.classes[0]?.people ?? 0;
  const wanted = [0, 1].map((group) =>
    kinds.reduce((sum, kind) => sum + (kind.group === group ? kind.people : 0), 0),
  );
  const groupAt = new Int32Array(search.places.length).fill(-2);
  let best = Infinity;
  const visit = (place: number, left: readonly number[], free: number, cost: number): void => {
    if (cost >= best) return;
    if (place === search.places.length) {
      if (free > 0 || left.some((count) => count > 0)) return;
      const outside = outsideOf();
      best = Math.min(best, cost + (outside === 0 ? 0 : farUnits * outside));
      return;
    }
    visit(place + 1, left, free, cost);
    if (!goesWith(place)) return;
    const units = search.classes[0]?.costUnits[place] ?? Infinity;
    for (const group of [0, 1, -1]) {
      const room = group < 0 ? free : (left[group] ?? 0);
      if (room === 0) continue;
      groupAt[place] = group;
      const next = left.map((count, index) => (index === group ? count - 1 : count));
      visit(place + 1, next, group < 0 ? free - 1 : free, cost + units);
      groupAt[place] = -2;
    }
  };
  const goesWith = (place: number): boolean => {
    const used = [...groupAt.keys()].filter((other) => (groupAt[other] ?? -2) > -2);
    const { first, second } = search.places[place] ?? { first: -1, second: -1 };
    const load = (tree: number): number =>
      used.filter((other) => search.places[other]?.first === tree || search.places[other]?.second === tree)
        .length;
    return (
      Math.max(load(first), load(second)) < search.capacity &&
      !search.conflicts.some(
        ([a, b]) => (a === place && used.includes(b)) || (b === place && used.includes(a)),
      )
    );
  };
  const outsideOf = (): number =>
    groups.reduce((sum, { withinM }, group) => {
      const own = [...groupAt.keys()].filter((place) => groupAt[place] === group);
      const ways = own.map((hub) => own.filter((place) => apartM(place, hub) > withinM + 1e-9).length);
      return sum + (own.length === 0 ? 0 : Math.min(...ways));
    }, 0);
  const apartM = (a: number, b: number): number => {
    const [one, other] = [spots[a], spots[b]];
    return one === undefined || other === undefined ? 0 : Math.hypot(one[0] - other[0], one[1] - other[1]);
  };
  visit(0, wanted, people - (wanted[0] ?? 0) - (wanted[1] ?? 0), 0);
  return best;
}

describe("groups with the solver", () => {
  it("bounds the best layout from below where lying out of reach has a small price", () => {
    const farUnits = 6;
    let [looked, torn, tight] = [0, 0, 0];
    for (let seed = 201; seed <= 250; seed++) {
      const input = groupsOf(drawFrom(seed));
      if (input.base.placed < (input.search.classes[0]?.people ?? 0)) continue;
      const { search, outside } = searchGroups(input, { solver, farUnits });
      const least = leastWorth(input, farUnits);
      looked++;
      expect(search.lowerBoundUnits, `wood ${seed}`).toBeLessThanOrEqual(least);
      expect(search.costUnits + farUnits * outside, `wood ${seed}`).toBeGreaterThanOrEqual(least);
      if (outside > 0) torn++;
      if (search.costUnits + farUnits * outside === least) tight++;
    }
    expect(torn).toBeGreaterThan(5);
    expect(tight / looked).toBeGreaterThan(0.9);
  });

  it("bounds the best layout from below, and is it wherever it says so", () => {
    let [within, best, proven, raised] = [0, 0, 0, 0];
    for (let seed = 1; seed <= 100; seed++) {
      const input = groupsOf(drawFrom(seed));
      if (input.base.placed < (input.search.classes[0]?.people ?? 0)) continue;
      const { search, outside } = searchGroups(input, { solver });
      const least = leastWithin(input);
      if (least === Infinity) {
        expect(outside, `wood ${seed}`).toBeGreaterThan(0);
        continue;
      }
      within++;
      expect(search.lowerBoundUnits, `wood ${seed}`).toBeLessThanOrEqual(least);
      if (search.lowerBoundUnits > input.base.lowerBoundUnits) raised++;
      if (outside === 0) expect(search.costUnits, `wood ${seed}`).toBeGreaterThanOrEqual(least);
      if (outside === 0 && search.costUnits === least) best++;
      if (search.proven) {
        proven++;
        expect(search.costUnits, `wood ${seed}`).toBe(least);
      }
    }
    expect(within).toBeGreaterThan(40);
    expect(raised).toBeGreaterThan(3);
    expect(proven / within).toBeGreaterThan(0.8);
    expect(best / within).toBeGreaterThan(0.95);
  });
});
