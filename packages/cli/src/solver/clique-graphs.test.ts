import { checks } from "@nightspan/checks";
import { searchBerths, type BerthSearchInput } from "@nightspan/core";
import { describe, expect, it } from "vitest";
import rows from "./clique-graphs.checks.json" with { type: "json" };
import { edgesOf, graphOf, type Graph, type GraphRule } from "./clique-graphs.fixture.ts";
import { loadSolver } from "./load-solver.ts";

const solver = await loadSolver();

/** As many berths as a clique has nodes: places conflict where the graph does not join them, each at trees of its own. */
function searchOf({ nodes, joined }: Graph): BerthSearchInput {
  const conflicts: [number, number][] = [];
  for (let a = 0; a < nodes; a++)
    for (let b = a + 1; b < nodes; b++) if (!joined(a, b)) conflicts.push([a, b]);
  return {
    trees: 2 * nodes,
    places: Array.from({ length: nodes }, (_, at) => ({ first: 2 * at, second: 2 * at + 1 })),
    capacity: 1,
    conflicts,
    classes: [{ people: nodes, costUnits: new Float64Array(nodes) }],
  };
}

checks(rows, (given: GraphRule) => {
  const graph = graphOf(given);
  const { placed, bound } = searchBerths(searchOf(graph), { solver });
  return { clique: placed, bound, edges: edgesOf(graph) };
});

describe("clique graphs without a solver", () => {
  it.each(rows.rows)("bounds $id truly, whatever it finds", ({ given, expected }) => {
    const { placed, bound } = searchBerths(searchOf(graphOf(given)));
    expect(placed).toBeLessThanOrEqual(expected.clique);
    expect(bound).toBeGreaterThanOrEqual(expected.clique);
  });
});
