/** Rows to be given a column each; a column takes as many rows as it has room for. */
export interface TransportInput {
  readonly rows: number;
  /** Room in each column. */
  readonly room: Int32Array;
  /** rows × columns: whole numbers ≥ 0, or Infinity where the two must not meet. */
  readonly cost: Float64Array;
}

/**
 * Gives each row a column for the least total cost, no column more rows than it has room for; undefined where
 * not every row can have one.
 *
 * Shortest augmenting paths with prices, one row after the other, as in `leastCostAssignment`; a column stands for
 * as many as it has room for, so that many who are alike cost no more than one.
 *
 * Shapes   cost: rows × columns, row by row → the column of each row
 * Error    exact for whole costs below 2^53 in total; ties go to the lower column
 * Source   layout-search (handbook/layout.md)
 */
export function leastTransport({ rows, room, cost }: TransportInput): Int32Array | undefined {
  const columns = room.length;
  const state: Prices = {
    columns,
    cost,
    columnOf: new Int32Array(rows).fill(-1),
    members: Array.from(room, () => []),
    rowPrice: new Float64Array(rows),
    columnPrice: new Float64Array(columns),
  };
  const paths = newPaths(columns);
  for (let row = 0; row < rows; row++) {
    const last = shortestPath(state, room, row, paths);
    if (last === -1) return undefined;
    reprice(state, row, paths.length[last] ?? 0, paths);
    handOver(state, row, last, paths);
  }
  return state.columnOf;
}

interface Prices {
  readonly columns: number;
  readonly cost: Float64Array;
  readonly columnOf: Int32Array;
  /** Rows in each column. */
  readonly members: readonly number[][];
  readonly rowPrice: Float64Array;
  readonly columnPrice: Float64Array;
}

interface Paths {
  /** Shortest way found to each column, and the row that it came from. */
  readonly length: Float64Array;
  readonly from: Int32Array;
  readonly settled: Uint8Array;
}

function newPaths(columns: number): Paths {
  return {
    length: new Float64Array(columns),
    from: new Int32Array(columns),
    settled: new Uint8Array(columns),
  };
}

/** The first column with room that is reached; −1 for none. */
function shortestPath(state: Prices, room: Int32Array, start: number, paths: Paths): number {
  paths.length.fill(Infinity);
  paths.settled.fill(0);
  relax(state, start, 0, paths);
  for (;;) {
    const column = nearest(paths);
    if (column === -1) return -1;
    paths.settled[column] = 1;
    const members = state.members[column] ?? [];
    if (members.length < (room[column] ?? 0)) return column;
    const length = paths.length[column] ?? 0;
    for (const row of members) relax(state, row, length, paths);
  }
}

function relax(
  { columns, cost, rowPrice, columnPrice }: Prices,
  row: number,
  soFar: number,
  paths: Paths,
): void {
  const base = soFar - (rowPrice[row] ?? 0);
  for (let column = 0; column < columns; column++) {
    if (paths.settled[column] === 1) continue;
    const length = base + (cost[row * columns + column] ?? Infinity) - (columnPrice[column] ?? 0);
    if (length < (paths.length[column] ?? 0)) {
      paths.length[column] = length;
      paths.from[column] = row;
    }
  }
}

function nearest({ length, settled }: Paths): number {
  let best = -1;
  let least = Infinity;
  for (let column = 0; column < length.length; column++) {
    const way = length[column] ?? Infinity;
    if (settled[column] === 1 || !(way < least)) continue;
    best = column;
    least = way;
  }
  return best;
}

function reprice(
  { members, rowPrice, columnPrice }: Prices,
  start: number,
  total: number,
  paths: Paths,
): void {
  rowPrice[start] = (rowPrice[start] ?? 0) + total;
  for (const [column, settled] of paths.settled.entries()) {
    if (settled === 0) continue;
    const shorter = total - (paths.length[column] ?? 0);
    columnPrice[column] = (columnPrice[column] ?? 0) - shorter;
    for (const row of members[column] ?? []) rowPrice[row] = (rowPrice[row] ?? 0) + shorter;
  }
}

function handOver({ columnOf, members }: Prices, start: number, last: number, { from }: Paths): void {
  let column = last;
  for (;;) {
    const row = from[column] ?? start;
    const before = columnOf[row] ?? -1;
    columnOf[row] = column;
    members[column]?.push(row);
    if (row === start) return;
    const list = members[before] ?? [];
    list.splice(list.indexOf(row), 1);
    column = before;
  }
}
