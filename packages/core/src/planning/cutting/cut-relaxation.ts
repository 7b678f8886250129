import { bestFillings, type Fillings } from "./cut-knapsack.ts";
import { CutSimplex, type SimplexColumn } from "./cut-simplex.ts";
import type { CutColumn, CutProblem } from "./cutting-types.ts";

export interface CutRelaxation {
  /** Proven least cost of any way of cutting, whole or not; Infinity where not all can be cut. */
  readonly bound: number;
  /** Patterns in use, each more than 0 times. */
  readonly uses: readonly { readonly column: CutColumn; readonly times: number }[];
}

/**
 * Cutting where a pattern may be used any number of times, whole or not.
 *
 *   min Σ cost·x,  Σ cuts·x ≥ demand,  least ≤ Σ x of each stock ≤ most
 *
 * Patterns are made when they are wanted: the prices of the pieces are put into a knapsack of each stock's length, and the
 * pattern that saves most enters, until none saves anything, or until all that could be saved is less than a step of the
 * cost, which goes by whole grains. The bound is the dual one, with what any pattern might still save taken off.
 *
 * Shapes   problem + patterns to begin with → bound, patterns in use; new patterns are added to `pool`
 * Error    bound within 1e-7 of the cost of one stock
 * Source   pattern-cutting (handbook/kit.md)
 */
export function relaxCutting(problem: CutProblem, pool: CutColumn[], grain: number): CutRelaxation {
  const master = new Master(problem, pool);
  for (let round = 0; round < MOST_ROUNDS; round++) {
    if (!master.enterKnown() && !master.enterNew(grain)) return master.result();
  }
  return { ...master.result(), bound: 0 };
}

/** Where a program has this many steps something is wrong: nothing is claimed then. */
const MOST_ROUNDS = 20_000;
/** What a pattern must save, in the cost of the dearest stock. */
const LEAST_SAVING = 1e-9;
/** Cost of a piece that nobody cuts, in the same unit. */
const UNCUT = 1e5;
/** Patterns made of one table. */
const MOST_AT_ONCE = 20;
const UNCUT_TAG = -1;
const SLACK_TAG = -2;

class Master {
  private readonly problem: CutProblem;
  private readonly pool: CutColumn[];
  private readonly usable: { readonly at: number; readonly column: SimplexColumn }[] = [];
  private readonly mostRow: Int32Array;
  private readonly leastRow: Int32Array;
  private readonly slacks: readonly SimplexColumn[];
  private readonly simplex: CutSimplex;
  private readonly wanted: Float64Array;
  private readonly unit: number;
  private readonly mostOf: readonly number[];
  private saved = 0;

  constructor(problem: CutProblem, pool: CutColumn[]) {
    this.problem = problem;
    this.pool = pool;
    const { demand, stocks } = problem;
    const people = demand.reduce((sum, count) => sum + count, 0);
    this.mostOf = stocks.map(({ most }) => Math.min(most, people));
    this.unit = Math.max(...stocks.map(({ cost }) => cost));
    this.mostRow = new Int32Array(stocks.length).fill(-1);
    this.leastRow = new Int32Array(stocks.length).fill(-1);
    const wanted = [...demand];
    const slacks: SimplexColumn[] = wanted.map((_, row) => slack(row, -1));
    const start: SimplexColumn[] = wanted.map((_, row) => uncut(row));
    for (const [stock, { least, most }] of stocks.entries()) {
      if (most < people) {
        this.mostRow[stock] = wanted.length;
        start.push(slack(wanted.length, 1));
        wanted.push(most);
      }
      if (least > 0) {
        this.leastRow[stock] = wanted.length;
        start.push(uncut(wanted.length));
        slacks.push(slack(wanted.length, -1));
        wanted.push(least);
      }
    }
    for (const row of this.mostRow) if (row !== -1) slacks.push(slack(row, 1));
    this.slacks = slacks;
    this.wanted = Float64Array.from(wanted);
    this.simplex = new CutSimplex(this.wanted, start);
    pool.forEach((column, at) => this.use(column, at));
  }

  /** Lets the best of the patterns and slacks at hand in; false where none saves anything. */
  enterKnown(): boolean {
    const price = this.simplex.prices();
    let best: SimplexColumn | undefined;
    let least = -LEAST_SAVING;
    const look = (column: SimplexColumn) => {
      const saving = reducedCost(column, price);
      if (saving < least) [least, best] = [saving, column];
    };
    this.slacks.forEach(look);
    this.usable.forEach(({ column }) => look(column));
    return best !== undefined && this.simplex.enter(best);
  }

  /** Makes patterns that save something, and lets the best of them in; false where there is none. */
  enterNew(grain: number): boolean {
    const price = this.simplex.prices();
    const { stocks, demand } = this.problem;
    const greatest = Math.max(...stocks.map(({ capacity, most }) => (most > 0 ? capacity : 0)));
    const fillings = bestFillings(this.problem, price.subarray(0, demand.length), greatest);
    const before = this.pool.length;
    this.saved = 0;
    for (const [stock, { capacity, most }] of stocks.entries()) {
      if (most <= 0) continue;
      const fixed = this.fixedCost(stock, price);
      const saving = fixed - (fillings.worth[capacity] ?? 0);
      this.saved += (this.mostOf[stock] ?? 0) * Math.min(0, saving);
      if (saving < -LEAST_SAVING) this.addPatterns(stock, fixed, fillings, price);
    }
    return this.pool.length > before && !this.isSettled(price, grain) && this.enterKnown();
  }

  /** Whether cost now and bound now lie within the same grain, so that nothing more can be learned. */
  private isSettled(price: Float64Array, grain: number): boolean {
    const values = this.simplex.values();
    if (values.some(({ column, value }) => column.tag === UNCUT_TAG && value > SHORT)) return false;
    const cost = values.reduce((sum, { column, value }) => sum + column.cost * value, 0);
    const step = grain / this.unit;
    return Math.ceil(this.boundAt(price) / step - SETTLED) >= Math.ceil(cost / step - SETTLED);
  }

  private boundAt(price: Float64Array): number {
    let bound = this.saved;
    for (const [row, value] of this.wanted.entries()) bound += this.clipped(row, price[row] ?? 0) * value;
    return bound;
  }

  /** The best filling of a stock, and the best ones that hold one given piece for certain: one table makes them all. */
  private addPatterns(stock: number, fixed: number, fillings: Fillings, price: Float64Array): void {
    const { stocks, demand, widths } = this.problem;
    const capacity = stocks[stock]?.capacity ?? 0;
    this.add({ stock, cuts: fillings.cutsAt(capacity) });
    const others = Array.from(widths, (width, piece) => {
      const room = capacity - width;
      return { piece, room, worth: (price[piece] ?? 0) + (fillings.worth[room] ?? -Infinity) };
    });
    const saving = others.filter(
      ({ piece, worth }) => (demand[piece] ?? 0) > 0 && worth > fixed + LEAST_SAVING,
    );
    for (const { piece, room } of saving.sort((a, b) => b.worth - a.worth).slice(0, MOST_AT_ONCE)) {
      const cuts = fillings.cutsAt(room);
      if ((cuts[piece] ?? 0) >= (demand[piece] ?? 0)) continue;
      cuts[piece] = (cuts[piece] ?? 0) + 1;
      this.add({ stock, cuts });
    }
  }

  private add(column: CutColumn): void {
    this.pool.push(column);
    this.use(column, this.pool.length - 1);
  }

  result(): CutRelaxation {
    const price = this.simplex.prices();
    const values = this.simplex.values();
    const short = values.some(({ column, value }) => column.tag === UNCUT_TAG && value > SHORT);
    if (short) return { bound: Infinity, uses: [] };
    const bound = this.boundAt(price);
    const uses = values.flatMap(({ column, value }) => {
      const pattern = column.tag < 0 ? undefined : this.pool[column.tag];
      return pattern === undefined || value < USED ? [] : [{ column: pattern, times: value }];
    });
    return { bound: bound * this.unit, uses };
  }

  /** Prices of demand and of a least number are never below 0, of a most never above. */
  private clipped(row: number, price: number): number {
    return this.mostRow.includes(row) ? Math.min(0, price) : Math.max(0, price);
  }

  private fixedCost(stock: number, price: Float64Array): number {
    const most = this.mostRow[stock] ?? -1;
    const least = this.leastRow[stock] ?? -1;
    return (
      (this.problem.stocks[stock]?.cost ?? 0) / this.unit -
      (most === -1 ? 0 : this.clipped(most, price[most] ?? 0)) -
      (least === -1 ? 0 : this.clipped(least, price[least] ?? 0))
    );
  }

  private use({ stock, cuts }: CutColumn, at: number): void {
    const { demand, stocks } = this.problem;
    if ((stocks[stock]?.most ?? 0) <= 0) return;
    const rows: number[] = [];
    const values: number[] = [];
    for (const [piece, count] of cuts.entries()) {
      if (count > (demand[piece] ?? 0)) return;
      if (count === 0) continue;
      rows.push(piece);
      values.push(count);
    }
    for (const row of [this.mostRow[stock] ?? -1, this.leastRow[stock] ?? -1]) {
      if (row === -1) continue;
      rows.push(row);
      values.push(1);
    }
    const cost = (stocks[stock]?.cost ?? 0) / this.unit;
    this.usable.push({ at, column: { rows, values, cost, tag: at } });
  }
}

function reducedCost({ rows, values, cost }: SimplexColumn, price: Float64Array): number {
  let reduced = cost;
  for (const [entry, row] of rows.entries()) reduced -= (price[row] ?? 0) * (values[entry] ?? 0);
  return reduced;
}

function slack(row: number, value: number): SimplexColumn {
  return { rows: [row], values: [value], cost: 0, tag: SLACK_TAG };
}

function uncut(row: number): SimplexColumn {
  return { rows: [row], values: [1], cost: UNCUT, tag: UNCUT_TAG };
}

/** More of a piece than this left uncut is a shortage, less is the error of the method. */
const SHORT = 1e-4;
const USED = 1e-7;
const SETTLED = 1e-6;
