import type { BerthSearchInput, LinearProgram } from "@nightspan/core";

/**
 * The plainest program of a search with one class: a row for each pair that conflicts, one for each tree,
 * one that counts. `target` fixes how many are placed, for the least cost; without it the most are placed.
 */
export function pairwiseProgram(
  { trees, places, capacity, conflicts, classes }: BerthSearchInput,
  target?: number,
): LinearProgram {
  const [{ people, costUnits } = { people: 0, costUnits: new Float64Array(0) }] = classes;
  const atTree: number[][] = Array.from({ length: trees }, () => []);
  for (const [index, { first, second }] of places.entries()) {
    atTree[first]?.push(index);
    atTree[second]?.push(index);
  }
  const rows = [
    ...conflicts.map((pair) => ({ columns: pair, lower: -Infinity, upper: 1 })),
    ...atTree
      .filter(({ length }) => length > capacity)
      .map((columns) => ({ columns, lower: -Infinity, upper: capacity })),
    { columns: places.map((_, index) => index), lower: target ?? -Infinity, upper: target ?? people },
  ];
  const starts = [0];
  const indices: number[] = [];
  for (const { columns } of rows) {
    for (const column of columns) indices.push(column);
    starts.push(indices.length);
  }
  return {
    sense: target === undefined ? "most" : "least",
    columns: places.length,
    rows: rows.length,
    cost: target === undefined ? new Float64Array(places.length).fill(1) : costUnits,
    upper: new Float64Array(places.length).fill(1),
    rowLower: Float64Array.from(rows, ({ lower }) => lower),
    rowUpper: Float64Array.from(rows, ({ upper }) => upper),
    starts: Int32Array.from(starts),
    indices: Int32Array.from(indices),
    values: new Float64Array(indices.length).fill(1),
  };
}
