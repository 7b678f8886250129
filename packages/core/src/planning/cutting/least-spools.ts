import { diveCutting } from "./cut-dive.ts";
import { exactCutting } from "./cut-exact.ts";
import { DIVES, ROUNDING, TRIES } from "./cut-one-length.ts";
import { relaxCutting } from "./cut-relaxation.ts";
import { cutGreedily, isDone } from "./cut-rounds.ts";
import type { CutColumn, CutProblem, CutUse } from "./cutting-types.ts";
import { spoolNumbers, type SpoolKind } from "./spool-numbers.ts";

export type { SpoolKind } from "./spool-numbers.ts";

export interface LeastSpools {
  readonly uses: readonly CutUse[];
  /** Proven least bought, and of spools begun with that. */
  readonly least: { readonly bought: number; readonly spools: number };
  readonly isProven: boolean;
}

type Pieces = Omit<CutProblem, "stocks">;

/**
 * All pieces with the least bought, then the fewest spools begun, then the least length begun; nothing where the spools do not
 * make them all.
 */
export function leastSpools(pieces: Pieces, kinds: readonly SpoolKind[]): LeastSpools | undefined {
  return new SpoolSearch(pieces, kinds).search();
}

class SpoolSearch {
  private readonly pieces: Pieces;
  private readonly kinds: readonly SpoolKind[];
  private readonly need: number;
  private readonly count: number;
  private readonly pool: CutColumn[] = [];
  private tests = MOST_TESTS;
  /** The first in order that could not be decided. */
  private undecided: LeastSpools["least"] | undefined;

  constructor(pieces: Pieces, kinds: readonly SpoolKind[]) {
    this.pieces = pieces;
    this.kinds = kinds;
    this.need = pieces.widths.reduce((sum, width, at) => sum + width * (pieces.demand[at] ?? 0), 0);
    this.count = pieces.demand.reduce((sum, count) => sum + count, 0);
  }

  search(): LeastSpools | undefined {
    const most = this.count + 1;
    const ordered = this.problem(
      this.kinds.map(({ most: there }) => there),
      ({ bought }) => bought * most + 1,
    );
    const quick = cutGreedily(ordered);
    const last = isDone(quick.problem) ? quick.cost : Infinity;
    const first = Math.ceil(relaxCutting(ordered, this.pool, 1).bound - ROUNDING);
    const mostBought = last === Infinity ? this.mostSold() : Math.floor(last / most);
    for (let bought = Math.floor(first / most); bought <= mostBought; bought++) {
      if (bought > Math.floor(first / most) && !this.canServe(bought)) continue;
      for (let spools = bought * most < first ? first % most : 1; spools <= this.most(bought); spools++) {
        const uses = this.withJust(bought, spools);
        if (uses !== undefined) return this.told(uses, { bought, spools });
        if (this.tests <= 0)
          return isDone(quick.problem) ? this.told(quick.uses, { bought, spools }) : undefined;
      }
    }
    return isDone(quick.problem) ? this.told(quick.uses, this.orderOf(quick.uses)) : undefined;
  }

  /** The choices with just so much bought and so many spools, the shortest first. */
  private withJust(bought: number, spools: number): readonly CutUse[] | undefined {
    const { choices, isAll } = spoolNumbers(this.kinds, { bought, spools, capacity: this.need });
    if (!isAll) this.undecided ??= { bought, spools };
    for (const { counts } of choices) {
      if (this.tests-- <= 0) {
        this.undecided ??= { bought, spools };
        return undefined;
      }
      const uses = this.cutWithin(counts, spools);
      if (uses === "unknown") this.undecided ??= { bought, spools };
      else if (uses !== "none") return uses;
    }
    return undefined;
  }

  /** Whether all can be cut from no more than these; "none" is proven. */
  private cutWithin(counts: readonly number[], spools: number): readonly CutUse[] | "none" | "unknown" {
    const problem = this.problem(counts, () => 1);
    const tools = (budget: number) => ({ pool: this.pool, grain: 1, budget });
    if (relaxCutting(problem, this.pool, 1).bound > spools + ROUNDING) return "none";
    return diveCutting(problem, spools, tools(DIVES)) ?? exactCutting(problem, spools, tools(TRIES));
  }

  /** Whether the relaxation allows so much bought, beside all that lies in the store. */
  private canServe(bought: number): boolean {
    const counts = this.kinds.map(({ most, bought: each }) =>
      each === 0 ? most : Math.floor(bought / each),
    );
    return (
      relaxCutting(
        this.problem(counts, () => 1),
        this.pool,
        1,
      ).bound < Infinity
    );
  }

  private problem(counts: readonly number[], costOf: (kind: SpoolKind) => number): CutProblem {
    const stocks = this.kinds.map((kind, at) => {
      return { capacity: kind.capacity, cost: costOf(kind), least: 0, most: counts[at] ?? 0 };
    });
    return { ...this.pieces, stocks };
  }

  private told(uses: readonly CutUse[], found: LeastSpools["least"]): LeastSpools {
    const order = this.orderOf(uses);
    const { bought, spools } = this.undecided ?? found;
    const least = { bought, spools: Math.min(spools, order.spools) };
    const isProven =
      this.undecided === undefined && order.bought === found.bought && order.spools === found.spools;
    return { uses, least, isProven };
  }

  private orderOf(uses: readonly CutUse[]): LeastSpools["least"] {
    const sum = (each: (stock: number) => number) =>
      uses.reduce((total, { stock, times }) => total + times * each(stock), 0);
    return { bought: sum((stock) => this.kinds[stock]?.bought ?? 0), spools: sum(() => 1) };
  }

  /** Spools that can be begun with so much bought: each holds a piece at least. */
  private most(bought: number): number {
    const held = this.kinds.reduce((sum, { bought: each, most }) => sum + (each === 0 ? most : 0), 0);
    const sold = this.kinds.flatMap(({ bought: each }) => (each === 0 ? [] : [Math.floor(bought / each)]));
    return Math.min(this.count, held + Math.max(0, ...sold));
  }

  /** Where nothing is sold nothing can be bought. */
  private mostSold(): number {
    const longest = Math.max(...this.kinds.map(({ bought }) => bought));
    return longest * this.count;
  }
}

/** Choices of spools that may be looked at. */
const MOST_TESTS = 300;
