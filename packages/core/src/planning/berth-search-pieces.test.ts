import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { drawFrom, type Draw } from "../geometry/draw.fixture.ts";
import { simpleBounds } from "./berth-search-bounds.ts";
import { exclusionCliques, exclusions, greedyCover } from "./berth-search-cliques.ts";
import { searchComponents } from "./berth-search-components.ts";
import { bestByBruteForce, randomSearch } from "./berth-search.fixture.ts";
import { columnsByCost, takeInOrder } from "./berth-search-greedy.ts";
import { leastSplit } from "./berth-search-knapsack.ts";
import { listOf, listsOf, type Lists } from "./berth-search-lists.ts";
import { searchModel } from "./berth-search-model.ts";
import { searchNearby } from "./berth-search-nearby.ts";
import { peopleRows, programOf, ruleRows } from "./berth-search-program.ts";
import { recheckLayout } from "./berth-search-recheck.ts";
import type { BerthSearchInput } from "./berth-search-types.ts";
import { lowestOf, onesIn } from "./bits.ts";
import { maximalCliques } from "./maximal-cliques.ts";
import { dualBound } from "./dual-bound.ts";

const DRAWS = fc.noBias(fc.nat({ max: 1_000_000 })).map(drawFrom);

function drawn(draw: Draw, classes = 2): BerthSearchInput {
  return randomSearch(draw, {
    places: draw(1, 16),
    trees: draw(3, 12),
    classes: draw(1, classes),
    capacity: draw(1, 3),
    conflictsInTen: draw(0, 6),
  });
}

describe("the pieces of the berth search", () => {
  it("cover every pair that excludes each other with cliques, and nothing else", () => {
    fc.assert(
      fc.property(DRAWS, (draw) => {
        const model = searchModel(drawn(draw));
        const graph = exclusions(model);
        const wanted = new Set<string>();
        for (let a = 0; a < model.places; a++)
          for (const b of listOf(graph, a)) if (a < b) wanted.add(`${a} ${b}`);
        for (const cliques of [exclusionCliques(model), greedyCover(graph, model.places)]) {
          expect([...pairsOf(cliques)].sort()).toEqual([...wanted].sort());
        }
      }),
      { seed: 1, numRuns: 200 },
    );
  });

  it("find all cliques that cannot grow, each once, as trying every group does", () => {
    fc.assert(
      fc.property(DRAWS, (draw) => {
        const model = searchModel(drawn(draw));
        const graph = exclusions(model);
        const found = maximalCliques(graph, model.places, Infinity) ?? [];
        expect(found.map(String).sort()).toEqual(cliquesByTrying(graph, model.places).map(String).sort());
      }),
      { seed: 6, numRuns: 100 },
    );
  });

  it("give up on all cliques where there are too many", () => {
    // Three nodes apart from one another, eight times over: every choice of one from each is a clique, 3⁸ in all.
    const nodes = 24;
    const graph = listsOf(nodes, (tell) => {
      for (let a = 0; a < nodes; a++) for (let b = 0; b < nodes; b++) if (a % 8 !== b % 8) tell(a, b);
    });
    expect(maximalCliques(graph, nodes, 100)).toBeUndefined();
    expect(maximalCliques(graph, nodes, 6561)?.length).toBe(6561);
  });

  it("find the cliques of a hub with more neighbours than bits: one triangle for each part of its rim", () => {
    const rim = 40;
    const graph = listsOf(rim + 1, (tell) => {
      for (let at = 0; at < rim; at++) {
        for (const other of [(at + 1) % rim, (at + rim - 1) % rim, rim]) tell(at, other);
        tell(rim, at);
      }
    });
    for (let at = 0; at <= rim; at++) listOf(graph, at).sort();
    const expected = Array.from({ length: rim }, (_, at) =>
      [at, (at + 1) % rim, rim].sort((a, b) => a - b).join(),
    );
    expect((maximalCliques(graph, rim + 1, Infinity) ?? []).map(String).sort()).toEqual(expected.sort());
    const hubFirst = listsOf(rim + 1, (tell) => {
      for (let at = 1; at <= rim; at++) {
        tell(0, at);
        for (const other of [0, at === rim ? 1 : at + 1, at === 1 ? rim : at - 1]) tell(at, other);
      }
    });
    for (let at = 0; at <= rim; at++) listOf(hubFirst, at).sort();
    expect(maximalCliques(hubFirst, rim + 1, Infinity)?.length).toBe(rim);
  });

  it("count bits and find the lowest", () => {
    fc.assert(
      fc.property(fc.integer(), (bits) => {
        const text = (bits >>> 0).toString(2);
        expect(onesIn(bits)).toBe(text.replaceAll("0", "").length);
        expect(lowestOf(bits)).toBe(bits === 0 ? 32 : text.length - 1 - text.lastIndexOf("1"));
      }),
      { seed: 7, numRuns: 200 },
    );
  });

  it("split the wood so that no rule reaches from one part to another", () => {
    fc.assert(
      fc.property(DRAWS, (draw) => {
        const input = drawn(draw);
        const model = searchModel(input);
        const members = searchComponents(model, Infinity)?.members ?? [];
        const partOf = new Map(
          members.flatMap((places, part) => Array.from(places, (place) => [place, part] as const)),
        );
        expect(members.map(({ length }) => length)).toEqual(
          [...members.map(({ length }) => length)].sort((a, b) => b - a),
        );
        for (const [a, b] of input.conflicts) {
          if (partOf.has(a) && partOf.has(b)) expect(partOf.get(a)).toBe(partOf.get(b));
        }
        for (let tree = 0; tree < input.trees; tree++) {
          const parts = [...listOf(model.atTree, tree)].flatMap((place) => partOf.get(place) ?? []);
          if (parts.length > input.capacity) expect(new Set(parts).size).toBe(1);
        }
      }),
      { seed: 2, numRuns: 200 },
    );
  });

  it("share people out at the least total, convex parts or not", () => {
    fc.assert(
      fc.property(DRAWS, (draw) => {
        const costs = Array.from({ length: draw(1, 5) }, () => {
          const list = [0];
          for (let n = draw(0, 4); n > 0; n--) list.push((list.at(-1) ?? 0) + draw(0, 9));
          return list;
        });
        const most = costs.reduce((sum, list) => sum + list.length - 1, 0);
        for (let target = 0; target <= most; target++) {
          const { counts, cost } = leastSplit(costs, target);
          expect(counts.reduce((sum, count) => sum + count, 0)).toBe(target);
          expect(costs.reduce((sum, list, part) => sum + (list[counts[part] ?? 0] ?? NaN), 0)).toBe(cost);
          expect(cost).toBe(leastByTrying(costs, target));
        }
      }),
      { seed: 3, numRuns: 200 },
    );
  });

  it("never better a layout by breaking a rule, nor leave it worse", () => {
    const gained = { count: 0 };
    fc.assert(
      fc.property(DRAWS, (draw) => {
        const model = searchModel(drawn(draw, 3));
        const byCost = columnsByCost(model);
        const start = takeInOrder(model, byCost);
        const before = recheckLayout(model, start);
        const after = recheckLayout(
          model,
          searchNearby({ model, start, byCost, iterations: 300, seed: draw(1, 99) }),
        );
        if (before === undefined || after === undefined) throw new Error("a layout breaks a rule");
        expect(after.placed).toBeGreaterThanOrEqual(before.placed);
        if (after.placed === before.placed) expect(after.cost).toBeLessThanOrEqual(before.cost);
        if (after.placed > before.placed || after.cost < before.cost) gained.count++;
      }),
      { seed: 4, numRuns: 200 },
    );
    expect(gained.count).toBeGreaterThan(20);
  });

  it("bound what trying every layout finds, for any prices", () => {
    fc.assert(
      fc.property(DRAWS, (draw) => {
        const input = drawn(draw);
        const best = bestByBruteForce(input);
        const model = searchModel(input);
        const { program } = programOf(model.columnCost, [
          ...ruleRows(model),
          ...peopleRows(model, best.placed),
        ]);
        const prices = Float64Array.from({ length: program.rows }, () => draw(-20, 20));
        expect(dualBound(program, prices).bound).toBeLessThanOrEqual(best.cost);
        const simple = simpleBounds(model);
        expect(simple.most).toBeGreaterThanOrEqual(best.placed);
        expect(simple.leastCost(best.placed)).toBeLessThanOrEqual(best.cost);
      }),
      { seed: 5, numRuns: 200 },
    );
  });

  it("notice every broken rule when a layout is counted again", () => {
    const model = searchModel({
      trees: 4,
      places: [
        { first: 0, second: 1 },
        { first: 0, second: 2 },
        { first: 2, second: 3 },
      ],
      capacity: 1,
      conflicts: [[0, 2]],
      classes: [{ people: 2, costUnits: Float64Array.of(1, 2, 4) }],
    });
    expect(recheckLayout(model, [0])).toEqual({ placed: 1, cost: 1 });
    expect(recheckLayout(model, [0, 0])).toBeUndefined();
    expect(recheckLayout(model, [0, 1])).toBeUndefined();
    expect(recheckLayout(model, [0, 2])).toBeUndefined();
    expect(recheckLayout(model, [7])).toBeUndefined();
    const one = searchModel({
      trees: 4,
      places: [
        { first: 0, second: 1 },
        { first: 2, second: 3 },
      ],
      capacity: 1,
      conflicts: [],
      classes: [{ people: 1, costUnits: Float64Array.of(1, 2) }],
    });
    expect(recheckLayout(one, [0, 1])).toBeUndefined();
  });
});

function leastByTrying(costs: readonly (readonly number[])[], target: number): number {
  const [first, ...rest] = costs;
  if (first === undefined) return target === 0 ? 0 : Infinity;
  return first.reduce(
    (least, cost, n) => Math.min(least, n > target ? Infinity : cost + leastByTrying(rest, target - n)),
    Infinity,
  );
}

function pairsOf(cliques: readonly Int32Array[]): Set<string> {
  const pairs = new Set<string>();
  for (const clique of cliques)
    for (const a of clique) for (const b of clique) if (a < b) pairs.add(`${a} ${b}`);
  return pairs;
}

function cliquesByTrying(graph: Lists, nodes: number): number[][] {
  const goesWith = (a: number, b: number): boolean => listOf(graph, a).includes(b);
  let groups: number[][] = Array.from({ length: nodes }, (_, node) => [node]);
  const found: number[][] = [];
  while (groups.length > 0) {
    const grown = groups.flatMap((group) =>
      Array.from({ length: nodes }, (_, node) => node)
        .filter((node) => node > Math.max(...group) && group.every((member) => goesWith(member, node)))
        .map((node) => [...group, node]),
    );
    const all = Array.from({ length: nodes }, (_, node) => node);
    found.push(
      ...groups.filter(
        (group) =>
          group.length > 1 &&
          !all.some((node) => !group.includes(node) && group.every((member) => goesWith(member, node))),
      ),
    );
    groups = grown;
  }
  return found;
}
