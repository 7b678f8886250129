/** One column of the program: entries by row, and its cost. `tag` says whose it is to whoever added it. */
export interface SimplexColumn {
  readonly rows: readonly number[];
  readonly values: readonly number[];
  readonly cost: number;
  readonly tag: number;
}

/**
 * Least-cost basis of A x = b, x ≥ 0, to which columns are added while it runs: the revised simplex method with the
 * inverse of the basis kept whole.
 *
 * It starts from one dear column a row. The right-hand sides are moved by less than `NUDGE`, each by its own amount, so that no
 * step stands still; `values` gives the basis at the right-hand sides as they were given.
 *
 * Shapes   rows × rows inverse
 * Holds    b ≥ 0; a few hundred rows
 * Error    the inverse is made anew every `REFRESH` steps
 */
export class CutSimplex {
  readonly rows: number;
  private readonly wanted: Float64Array;
  private readonly nudged: Float64Array;
  private readonly basis: SimplexColumn[];
  private readonly inverse: Float64Array;
  private readonly level: Float64Array;
  private steps = 0;

  constructor(wanted: Float64Array, start: readonly SimplexColumn[]) {
    this.rows = wanted.length;
    this.wanted = wanted;
    this.nudged = wanted.map((value, row) => value + (NUDGE * (1 + ((row * 7919) % 1009) / 1009)) / 2);
    this.basis = [...start];
    this.inverse = identity(this.rows);
    this.level = this.nudged.slice();
  }

  /** Prices of the rows: cost of the basis times its inverse. */
  prices(): Float64Array {
    const price = new Float64Array(this.rows);
    for (let row = 0; row < this.rows; row++) {
      const cost = this.basis[row]?.cost ?? 0;
      if (cost === 0) continue;
      const at = row * this.rows;
      for (let column = 0; column < this.rows; column++) {
        price[column] = (price[column] ?? 0) + cost * (this.inverse[at + column] ?? 0);
      }
    }
    return price;
  }

  /** Brings a column into the basis; false where nothing would leave it. */
  enter(column: SimplexColumn): boolean {
    const along = this.direction(column);
    const leaving = this.leavingRow(along);
    if (leaving === -1) return false;
    this.pivot(leaving, along);
    this.basis[leaving] = column;
    this.steps++;
    if (this.steps % REFRESH === 0) this.refresh();
    return true;
  }

  /** Columns of the basis and their values for the right-hand sides as given. */
  values(): { readonly column: SimplexColumn; readonly value: number }[] {
    return this.basis.map((column, row) => {
      let value = 0;
      for (let other = 0; other < this.rows; other++) {
        value += (this.inverse[row * this.rows + other] ?? 0) * (this.wanted[other] ?? 0);
      }
      return { column, value: Math.max(0, value) };
    });
  }

  private direction({ rows, values }: SimplexColumn): Float64Array {
    const along = new Float64Array(this.rows);
    for (const [entry, row] of rows.entries()) {
      const value = values[entry] ?? 0;
      for (let other = 0; other < this.rows; other++) {
        along[other] = (along[other] ?? 0) + value * (this.inverse[other * this.rows + row] ?? 0);
      }
    }
    return along;
  }

  private leavingRow(along: Float64Array): number {
    let leaving = -1;
    let least = Infinity;
    for (let row = 0; row < this.rows; row++) {
      const step = along[row] ?? 0;
      if (!(step > LEAST_STEP)) continue;
      const ratio = Math.max(0, this.level[row] ?? 0) / step;
      if (ratio < least) {
        least = ratio;
        leaving = row;
      }
    }
    return leaving;
  }

  private pivot(leaving: number, along: Float64Array): void {
    const size = this.rows;
    const lead = along[leaving] ?? 1;
    const start = leaving * size;
    for (let column = 0; column < size; column++) {
      this.inverse[start + column] = (this.inverse[start + column] ?? 0) / lead;
    }
    const step = Math.max(0, this.level[leaving] ?? 0) / lead;
    for (let row = 0; row < size; row++) {
      const factor = along[row] ?? 0;
      if (row === leaving || factor === 0) continue;
      const at = row * size;
      for (let column = 0; column < size; column++) {
        const entry = this.inverse[start + column] ?? 0;
        if (entry !== 0) this.inverse[at + column] = (this.inverse[at + column] ?? 0) - factor * entry;
      }
      this.level[row] = (this.level[row] ?? 0) - factor * step;
    }
    this.level[leaving] = step;
  }

  /** The inverse made anew from the columns of the basis, row by row as if each entered an empty one. */
  private refresh(): void {
    const fresh = invertBasis(this.basis, this.rows);
    if (fresh === undefined) return;
    this.inverse.set(fresh);
    for (let row = 0; row < this.rows; row++) {
      let value = 0;
      for (let other = 0; other < this.rows; other++) {
        value += (this.inverse[row * this.rows + other] ?? 0) * (this.nudged[other] ?? 0);
      }
      this.level[row] = value;
    }
  }
}

/** Gauss–Jordan with the largest entry of each column as lead; undefined where the columns do not span. */
function invertBasis(basis: readonly SimplexColumn[], size: number): Float64Array | undefined {
  const width = 2 * size;
  const work = new Float64Array(size * width);
  basis.forEach(({ rows, values }, column) => {
    rows.forEach((row, entry) => (work[row * width + column] = values[entry] ?? 0));
    work[column * width + size + column] = 1;
  });
  for (let column = 0; column < size; column++) {
    const lead = leadingRow(work, column, size);
    if (!(Math.abs(work[lead * width + column] ?? 0) > LEAST_STEP)) return undefined;
    swapRows(work, lead, column, width);
    clearColumn(work, column, size);
  }
  const inverse = new Float64Array(size * size);
  for (let row = 0; row < size; row++) {
    inverse.set(work.subarray(row * width + size, (row + 1) * width), row * size);
  }
  return inverse;
}

function leadingRow(work: Float64Array, column: number, size: number): number {
  let lead = column;
  for (let row = column + 1; row < size; row++) {
    if (Math.abs(work[row * 2 * size + column] ?? 0) > Math.abs(work[lead * 2 * size + column] ?? 0))
      lead = row;
  }
  return lead;
}

function swapRows(work: Float64Array, a: number, b: number, width: number): void {
  if (a === b) return;
  const kept = work.slice(a * width, (a + 1) * width);
  work.copyWithin(a * width, b * width, (b + 1) * width);
  work.set(kept, b * width);
}

function clearColumn(work: Float64Array, column: number, size: number): void {
  const width = 2 * size;
  const lead = work[column * width + column] ?? 1;
  for (let at = column; at < width; at++) work[column * width + at] = (work[column * width + at] ?? 0) / lead;
  for (let row = 0; row < size; row++) {
    const factor = work[row * width + column] ?? 0;
    if (row === column || factor === 0) continue;
    for (let at = column; at < width; at++) {
      work[row * width + at] = (work[row * width + at] ?? 0) - factor * (work[column * width + at] ?? 0);
    }
  }
}

function identity(size: number): Float64Array {
  const matrix = new Float64Array(size * size);
  for (let row = 0; row < size; row++) matrix[row * size + row] = 1;
  return matrix;
}

const NUDGE = 1e-5;
const LEAST_STEP = 1e-9;
const REFRESH = 60;
