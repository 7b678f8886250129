import { commonDivisor } from "./common-divisor.ts";
import { diveCutting, type DiveTools } from "./cut-dive.ts";
import { exactCutting } from "./cut-exact.ts";
import { DIVES, ROUNDING, TRIES, type CutSearch } from "./cut-one-length.ts";
import { relaxCutting, type CutRelaxation } from "./cut-relaxation.ts";
import { cutGreedily, isDone } from "./cut-rounds.ts";
import type { CutColumn, CutProblem, CutStock, CutUse } from "./cutting-types.ts";

interface Node {
  readonly stocks: readonly CutStock[];
  readonly bound: number;
  readonly relaxation: CutRelaxation;
}

/**
 * The least cost of stocks of several lengths.
 *
 * How many of each stock are begun is made whole by branching, the least bound first. Where the numbers are whole a way of
 * cutting is dived for at exactly that cost; failing that, all ways with those numbers are tried within a budget, and then
 * other numbers.
 */
export class CutTree {
  private readonly problem: CutProblem;
  private readonly pool: CutColumn[] = [];
  /** Every cost is a multiple of it. */
  private readonly grain: number;
  private open: Node[] = [];
  private nodes = 0;
  private best: readonly CutUse[] | undefined;
  private cost = Infinity;
  /** Least bound of all that was left undecided. */
  private undecided = Infinity;

  constructor(problem: CutProblem) {
    this.problem = problem;
    this.grain = problem.stocks.map(({ cost }) => cost).reduce(commonDivisor, 0);
    const quick = cutGreedily(problem);
    if (isDone(quick.problem)) this.keep(quick.uses);
  }

  search(): CutSearch {
    this.push(this.problem.stocks);
    for (let node = this.pop(); node !== undefined; node = this.pop()) this.look(node);
    return { uses: this.best, cost: this.cost, bound: Math.min(this.cost, this.undecided) };
  }

  private push(stocks: readonly CutStock[]): void {
    if (stocks.some(({ least, most }) => least > most)) return;
    const relaxation = relaxCutting({ ...this.problem, stocks }, this.pool, this.grain);
    const bound = this.grain * Math.ceil(relaxation.bound / this.grain - ROUNDING);
    if (bound < this.cost) this.open.push({ stocks, bound, relaxation });
  }

  /** The node with the least bound; nothing where none can better what is found, or the nodes are used up. */
  private pop(): Node | undefined {
    this.open = this.open.filter(({ bound }) => bound < this.cost).sort((a, b) => b.bound - a.bound);
    const node = this.open.pop();
    if (node === undefined) return undefined;
    this.nodes++;
    if (this.nodes <= MOST_NODES) return node;
    this.undecided = Math.min(this.undecided, node.bound);
    return undefined;
  }

  private look({ stocks, bound, relaxation }: Node): void {
    const begun = stocks.map(() => 0);
    for (const { column, times } of relaxation.uses) begun[column.stock] = (begun[column.stock] ?? 0) + times;
    const split = leastWhole(begun);
    if (split !== -1) {
      const at = begun[split] ?? 0;
      this.push(limited(stocks, split, 0, Math.floor(at)));
      this.push(limited(stocks, split, Math.ceil(at), Infinity));
      return;
    }
    const dived = diveCutting({ ...this.problem, stocks }, bound, this.tools(DIVES));
    if (dived !== undefined) this.keep(dived);
    else this.tryAll(stocks, bound, begun.map(Math.round));
  }

  private tryAll(stocks: readonly CutStock[], bound: number, begun: readonly number[]): void {
    const only = stocks.map((stock, index) => ({ ...stock, least: 0, most: begun[index] ?? 0 }));
    const answer = exactCutting({ ...this.problem, stocks: only }, bound, this.tools(TRIES));
    if (answer === "unknown") this.undecided = Math.min(this.undecided, bound);
    else if (answer !== "none") {
      this.keep(answer);
      return;
    }
    this.otherNumbers(stocks, begun);
  }

  /** All numbers of stocks but these: fewer or more of the first; as many of the first and fewer or more of the second … */
  private otherNumbers(stocks: readonly CutStock[], begun: readonly number[]): void {
    let same = stocks;
    for (const [stock, count] of begun.entries()) {
      this.push(limited(same, stock, 0, count - 1));
      this.push(limited(same, stock, count + 1, Infinity));
      same = limited(same, stock, count, count);
    }
  }

  private tools(budget: number): DiveTools {
    return { pool: this.pool, grain: this.grain, budget };
  }

  private keep(uses: readonly CutUse[]): void {
    const costs = this.problem.stocks.map(({ cost }) => cost);
    const cost = uses.reduce((sum, { stock, times }) => sum + times * (costs[stock] ?? 0), 0);
    if (cost >= this.cost) return;
    this.cost = cost;
    this.best = uses;
  }
}

function limited(stocks: readonly CutStock[], which: number, least: number, most: number): CutStock[] {
  return stocks.map((stock, index) =>
    index === which
      ? { ...stock, least: Math.max(stock.least, least), most: Math.min(stock.most, most) }
      : stock,
  );
}

/** The number farthest from whole; −1 where all are whole. */
function leastWhole(numbers: readonly number[]): number {
  const off = numbers.map((value) => Math.abs(value - Math.round(value)));
  const most = Math.max(...off);
  return most > WHOLE ? off.indexOf(most) : -1;
}

const WHOLE = 1e-5;
const MOST_NODES = 200;
