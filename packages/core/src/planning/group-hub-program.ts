import type { SearchRow } from "./berth-search-program.ts";
import type { LinearProgram } from "./linear-solver.ts";

/** Groups seen without their names: so many hubs of each sort, each with so many people round it. */
export interface HubTask {
  /** For each place its cost to whoever it suits best, in units; ∞ where nobody may be. */
  readonly cost: Float64Array;
  /** Groups of one radius each. */
  readonly sorts: readonly HubSort[];
  /** Rows that every layout keeps, over the places. */
  readonly rules: readonly SearchRow[];
  /** People of no group. */
  readonly free: number;
}

/** Groups that differ in size alone. */
export interface HubSort {
  /** Whether a hub may be at a place. */
  readonly mayBeHub: Uint8Array;
  /** Places that are not ruled out within reach of each place, itself among them. */
  readonly reached: readonly Int32Array[];
  /** People in each group. */
  readonly sizes: readonly number[];
}

/** The program and which of its columns are what. */
export interface HubProgram {
  readonly program: LinearProgram;
  readonly hubs: readonly HubColumns[];
}

/** One place as a hub of one sort. */
export interface HubColumns {
  readonly sort: number;
  readonly place: number;
  readonly column: number;
  /** Columns of those who lie round it, the hub itself among them. */
  readonly round: readonly number[];
}

/**
 * Who lies round which hub, for groups that are not told apart: z = 1 where a hub is, y = 1 where somebody at place b
 * belongs to the hub at place h, e people more than the smallest group.
 *
 *   least Σ cost · y
 *   Σ y over b = smallest · z + e,  e ≤ (largest − smallest) · z,  Σ z = groups,  Σ e = people − groups · smallest
 *   y ≤ z, y of the hub's own place = z,  and the rules of the search over Σ y + the people of no group
 *
 * for each sort of groups. Nobody's name is in it, so that no layout is there twice under other names; its relaxation is
 * close to the best layout, and bounds it from below: sizes between the smallest and the largest may mix as they like.
 *
 * Source   layout-search (handbook/layout.md: groups)
 */
export function hubProgram(task: HubTask): HubProgram {
  const { cost, free } = task;
  const builder = newBuilder();
  const atPlace: number[][] = Array.from(cost, () => []);
  const someone = (place: number): number => {
    const column = builder.column(cost[place] ?? 0);
    atPlace[place]?.push(column);
    return column;
  };
  const hubs = task.sorts.flatMap((sort, index) => addSort(builder, task, sort, index, someone));
  if (free > 0) builder.row(ones(placesOf(task).map(someone)), free, free);
  for (const { columns, upper } of task.rules) {
    builder.row(ones([...columns].flatMap((place) => atPlace[place] ?? [])), -Infinity, upper);
  }
  for (const columns of atPlace) builder.row(ones(columns), -Infinity, 1);
  return { program: builder.program(), hubs };
}

function addSort(
  builder: Builder,
  task: HubTask,
  { mayBeHub, reached, sizes }: HubSort,
  sort: number,
  someone: (place: number) => number,
): HubColumns[] {
  const smallest = Math.min(...sizes);
  const range = Math.max(...sizes) - smallest;
  const places = placesOf(task).filter((place) => mayBeHub[place] === 1);
  const more: number[] = [];
  const hubs = places.map((place) => {
    const column = builder.column(0);
    const above = builder.column(0, range);
    more.push(above);
    const near = reached[place] ?? new Int32Array(0);
    const round = Array.from(near, someone);
    builder.row([...ones(round), [column, -smallest], [above, -1]], 0, 0);
    builder.row(
      [
        [above, 1],
        [column, -range],
      ],
      -Infinity,
      0,
    );
    for (const [at, one] of round.entries()) {
      builder.row(
        [
          [one, 1],
          [column, -1],
        ],
        near[at] === place ? 0 : -Infinity,
        0,
      );
    }
    return { sort, place, column, round };
  });
  builder.row(ones(hubs.map(({ column }) => column)), sizes.length, sizes.length);
  const above = sizes.reduce((sum, size) => sum + size - smallest, 0);
  builder.row(ones(more), above, above);
  return hubs;
}

function placesOf({ cost }: HubTask): number[] {
  return [...cost.keys()].filter((place) => (cost[place] ?? Infinity) < Infinity);
}

type Entry = readonly [column: number, value: number];

function ones(columns: Iterable<number>): Entry[] {
  return Array.from(columns, (column) => [column, 1] as const);
}

function newBuilder() {
  const cost: number[] = [];
  const most: number[] = [];
  const lower: number[] = [];
  const upper: number[] = [];
  const starts = [0];
  const indices: number[] = [];
  const values: number[] = [];
  return {
    column: (units: number, upTo = 1): number => {
      cost.push(units);
      most.push(upTo);
      return cost.length - 1;
    },
    row: (entries: readonly Entry[], least: number, upTo: number): void => {
      if (entries.length === 0) return;
      for (const [column, value] of entries) {
        indices.push(column);
        values.push(value);
      }
      lower.push(least);
      upper.push(upTo);
      starts.push(indices.length);
    },
    program: (): LinearProgram => ({
      sense: "least",
      columns: cost.length,
      rows: lower.length,
      cost: Float64Array.from(cost),
      upper: Float64Array.from(most),
      rowLower: Float64Array.from(lower),
      rowUpper: Float64Array.from(upper),
      starts: Int32Array.from(starts),
      indices: Int32Array.from(indices),
      values: Float64Array.from(values),
    }),
  };
}

type Builder = ReturnType<typeof newBuilder>;

/** How many columns the program would have. */
export function hubColumns(task: HubTask): number {
  const places = placesOf(task);
  const ofSorts = task.sorts.flatMap(({ mayBeHub, reached }) =>
    places.map((place) => (mayBeHub[place] === 1 ? 2 + (reached[place]?.length ?? 0) : 0)),
  );
  return ofSorts.reduce((sum, columns) => sum + columns, task.free > 0 ? places.length : 0);
}
