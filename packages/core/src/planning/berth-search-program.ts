import { exclusionCliques } from "./berth-search-cliques.ts";
import { listOf, sizeOf } from "./berth-search-lists.ts";
import type { SearchModel } from "./berth-search-model.ts";
import type { LinearProgram } from "./linear-solver.ts";

/** One row: these columns, each once, add up to between `lower` and `upper`. */
export interface SearchRow {
  readonly columns: Int32Array;
  readonly lower: number;
  readonly upper: number;
}

/**
 * Rows that every layout keeps: one berth at most for each clique of places that exclude each other,
 * and no tree with more hammocks than it may carry.
 */
export function ruleRows(model: SearchModel): readonly SearchRow[] {
  const covered = new Uint8Array(model.places);
  const rows: SearchRow[] = exclusionCliques(model).map((clique) => {
    for (const place of clique) covered[place] = 1;
    return { columns: columnsOf(model, clique), lower: -Infinity, upper: 1 };
  });
  for (let place = 0; place < model.places; place++) {
    if (covered[place] === 1 || sizeOf(model.ofPlace, place) < 2) continue;
    rows.push({ columns: listOf(model.ofPlace, place), lower: -Infinity, upper: 1 });
  }
  for (let tree = 0; tree < model.trees; tree++) {
    const hammocks = model.capacity[tree] ?? 0;
    const columns = columnsOf(model, listOf(model.atTree, tree));
    if (hammocks > 1 && columns.length > hammocks) rows.push({ columns, lower: -Infinity, upper: hammocks });
  }
  return rows;
}

/** Rows that count people: at most so many of each class; with a target also so many in all. */
export function peopleRows(model: SearchModel, target: number | undefined): readonly SearchRow[] {
  const ofClass: number[][] = Array.from(model.people, () => []);
  model.columnClass.forEach((group, column) => ofClass[group]?.push(column));
  const everyone = target === model.asked;
  const rows = ofClass.map((columns, group) => {
    const people = model.people[group] ?? 0;
    return { columns: Int32Array.from(columns), lower: everyone ? people : -Infinity, upper: people };
  });
  if (target === undefined || everyone) return rows;
  if (rows.length === 1) return rows.map(({ columns }) => ({ columns, lower: target, upper: target }));
  const all = Int32Array.from({ length: model.columns }, (_, column) => column);
  return [...rows, { columns: all, lower: target, upper: target }];
}

/**
 * A program over the columns that are still free (all where nothing is fixed); those taken count in every
 * row, those left out count nowhere. Rows that can no longer be broken are dropped.
 */
export function programOf(
  cost: Float64Array,
  rows: readonly SearchRow[],
  fixed?: Int8Array,
): { readonly program: LinearProgram; readonly columns: Int32Array } {
  const columns = Int32Array.from({ length: cost.length }, (_, column) => column).filter(
    (column) => fixed === undefined || fixed[column] === FREE,
  );
  const position = new Int32Array(cost.length).fill(-1);
  columns.forEach((column, at) => (position[column] = at));
  const starts = [0];
  const indices: number[] = [];
  const lowers: number[] = [];
  const uppers: number[] = [];
  for (const { columns: members, lower, upper } of rows) {
    let taken = 0;
    const start = indices.length;
    for (const column of members) {
      const at = position[column] ?? -1;
      if (at >= 0) indices.push(at);
      else if (fixed?.[column] === TAKEN) taken++;
    }
    if (lower - taken <= 0 && indices.length - start <= upper - taken) {
      indices.length = start;
      continue;
    }
    lowers.push(lower - taken);
    uppers.push(upper - taken);
    starts.push(indices.length);
  }
  const program: LinearProgram = {
    sense: "least",
    columns: columns.length,
    rows: lowers.length,
    cost: Float64Array.from(columns, (column) => cost[column] ?? 0),
    upper: new Float64Array(columns.length).fill(1),
    rowLower: Float64Array.from(lowers),
    rowUpper: Float64Array.from(uppers),
    starts: Int32Array.from(starts),
    indices: Int32Array.from(indices),
    values: new Float64Array(indices.length).fill(1),
  };
  return { program, columns };
}

/** What is known of a column before a solve. */
export const FREE = 0;
export const TAKEN = 1;
export const LEFT_OUT = -1;

function columnsOf({ ofPlace }: SearchModel, places: Int32Array): Int32Array {
  let count = 0;
  for (const place of places) count += sizeOf(ofPlace, place);
  const columns = new Int32Array(count);
  let at = 0;
  for (const place of places) {
    const own = listOf(ofPlace, place);
    columns.set(own, at);
    at += own.length;
  }
  return columns;
}
