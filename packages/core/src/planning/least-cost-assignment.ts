/** Rows to be given one column each. `cost` is finite, or Infinity where the two must not meet. */
export interface AssignmentInput {
  readonly rows: number;
  readonly columns: number;
  readonly cost: (row: number, column: number) => number;
}

/**
 * Gives each row a column of its own for the least total cost; undefined where no full assignment is allowed.
 *
 * Shortest augmenting paths with potentials, one row after the other.
 *
 * Shapes   rows ≤ columns → the column of each row
 * Holds    whole or real costs of either sign; ties go to the lower column
 * Error    exact for whole costs below 2^53 in total
 * Source   layout-search (handbook/planning.md)
 */
export function leastCostAssignment({ rows, columns, cost }: AssignmentInput): Int32Array | undefined {
  const rowOf = new Int32Array(columns).fill(-1);
  const rowPrice = new Float64Array(rows);
  const columnPrice = new Float64Array(columns);
  for (let row = 0; row < rows; row++) {
    const paths = newPaths(columns);
    let last = -1;
    let reached = row;
    let lengthSoFar = 0;
    while (reached !== -1) {
      const from = reached;
      const fromPrice = rowPrice[from] ?? 0;
      for (let column = 0; column < columns; column++) {
        if (paths.settled[column] === 1) continue;
        const length = lengthSoFar + cost(from, column) - fromPrice - (columnPrice[column] ?? 0);
        if (length < (paths.length[column] ?? 0)) {
          paths.length[column] = length;
          paths.before[column] = last;
        }
      }
      last = nearest(paths);
      if (last === -1) return undefined;
      paths.settled[last] = 1;
      lengthSoFar = paths.length[last] ?? 0;
      reached = rowOf[last] ?? -1;
    }
    reprice(row, lengthSoFar, paths, { rowOf, rowPrice, columnPrice });
    handOver(row, last, paths.before, rowOf);
  }
  return byRow(rowOf, rows);
}

interface Paths {
  /** Shortest way found to each column; the column before it on that way, −1 for the row in hand. */
  readonly length: Float64Array;
  readonly before: Int32Array;
  readonly settled: Uint8Array;
}

interface Prices {
  readonly rowOf: Int32Array;
  readonly rowPrice: Float64Array;
  readonly columnPrice: Float64Array;
}

function newPaths(columns: number): Paths {
  return {
    length: new Float64Array(columns).fill(Infinity),
    before: new Int32Array(columns).fill(-1),
    settled: new Uint8Array(columns),
  };
}

function nearest({ length, settled }: Paths): number {
  let best = -1;
  let least = Infinity;
  for (const [column, way] of length.entries()) {
    if (settled[column] === 1 || !(way < least)) continue;
    best = column;
    least = way;
  }
  return best;
}

function reprice(row: number, total: number, paths: Paths, { rowOf, rowPrice, columnPrice }: Prices): void {
  rowPrice[row] = (rowPrice[row] ?? 0) + total;
  for (const [column, settled] of paths.settled.entries()) {
    if (settled === 0) continue;
    const shorter = total - (paths.length[column] ?? 0);
    const holder = rowOf[column] ?? -1;
    columnPrice[column] = (columnPrice[column] ?? 0) - shorter;
    if (holder !== -1) rowPrice[holder] = (rowPrice[holder] ?? 0) + shorter;
  }
}

function handOver(row: number, last: number, before: Int32Array, rowOf: Int32Array): void {
  let column = last;
  while (column !== -1) {
    const previous = before[column] ?? -1;
    rowOf[column] = previous === -1 ? row : (rowOf[previous] ?? -1);
    column = previous;
  }
}

function byRow(rowOf: Int32Array, rows: number): Int32Array {
  const columnOf = new Int32Array(rows).fill(-1);
  for (const [column, row] of rowOf.entries()) {
    if (row !== -1) columnOf[row] = column;
  }
  return columnOf;
}
