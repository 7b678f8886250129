import type { LinearProgram, LinearSolver } from "../linear-solver.ts";
import type { KnotSet } from "./knot-cover.ts";

/**
 * The cover that allows fewest, by a linear solver: for parts too large to search.
 *
 *   least Σ most · z   with Σ z ≥ 1 over the knots that hold each place, z 0 or 1
 *
 * It is the dual of the search for the number; where it comes to `target`, it is a proof.
 *
 * Source   layout-search (handbook/planning.md: what limits it)
 */
export function knotCoverBySolver(
  places: readonly number[],
  target: number,
  knots: readonly KnotSet[],
  solver: LinearSolver,
): number[] | undefined {
  const solved = solver.solve(coverProgram(places, knots), { integral: true, presolve: true });
  if (!solved.ok || solved.value.status === "infeasible") return undefined;
  const chosen = [...knots.keys()].filter((index) => (solved.value.x[index] ?? 0) > 0.5);
  const covered = new Set(chosen.flatMap((index) => [...(knots[index]?.places ?? [])]));
  const most = chosen.reduce((sum, index) => sum + (knots[index]?.most ?? 0), 0);
  return most === target && places.every((place) => covered.has(place)) ? chosen : undefined;
}

function coverProgram(places: readonly number[], knots: readonly KnotSet[]): LinearProgram {
  const holding = new Map<number, number[]>(places.map((place) => [place, []]));
  knots.forEach((knot, index) => knot.places.forEach((place) => holding.get(place)?.push(index)));
  const rows = [...holding.values()];
  const starts = [0];
  for (const row of rows) starts.push((starts.at(-1) ?? 0) + row.length);
  const entries = starts.at(-1) ?? 0;
  return {
    sense: "least",
    columns: knots.length,
    rows: rows.length,
    cost: Float64Array.from(knots, ({ most }) => most),
    upper: new Float64Array(knots.length).fill(1),
    rowLower: new Float64Array(rows.length).fill(1),
    rowUpper: new Float64Array(rows.length).fill(Infinity),
    starts: Int32Array.from(starts),
    indices: Int32Array.from(rows.flat()),
    values: new Float64Array(entries).fill(1),
  };
}
