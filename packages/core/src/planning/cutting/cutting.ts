import type { Basis } from "../../outcome/basis.ts";
import { refuse, refuseAll, succeed, type Outcome, type Refusal } from "../../outcome/outcome.ts";
import { byCodeUnit } from "../order.ts";
import { cutOneLength, type CutSearch } from "./cut-one-length.ts";
import { wholeProblem, type WholeProblem } from "./cut-problem.ts";
import { cutGreedily } from "./cut-rounds.ts";
import { CutTree } from "./cut-tree.ts";
import type { CutUse, Cutting, CuttingInput, CuttingPattern } from "./cutting-types.ts";

/**
 * Pieces cut from spools or bars so that the fewest are begun; of several lengths the least length.
 *
 *   min Σ cost·x,  Σ cuts·x ≥ demand,  Σ x of a stock ≤ its count, x whole
 *
 * Shapes   lines of stock, lines of pieces → patterns
 * Units    whole millimetres
 * Holds    whole lengths > 0, counts ≥ 0, kerf ≥ 0; pieces that cannot all be cut are refused by name
 * Error    none where `proven`; otherwise `bound` tells how far the best can be
 * Source   pattern-cutting (handbook/kit.md: derivation, worked figures)
 */
export function cutting(input: CuttingInput): Outcome<Cutting> {
  const faults = refuseAll([...lineFaults(input), ...tooLong(input)]);
  if (faults !== undefined) return faults;
  const problem = wholeProblem(input);
  const cells = problem.widths.length * Math.max(0, ...problem.stocks.map(({ capacity }) => capacity));
  if (cells > MOST_CELLS) return refuse("pieces", cells, TOO_FINE);
  const found = searched(problem);
  if (found.uses === undefined) return refuseAll(unmet(input, problem)) ?? succeed(NOTHING);
  const patterns = patternsOf(found.uses, problem);
  return succeed({
    stocksUsed: patterns.reduce((sum, { times }) => sum + times, 0),
    objective: found.cost,
    bound: found.bound,
    proven: found.bound === found.cost,
    patterns,
    basis: BASIS,
  });
}

function searched(problem: WholeProblem): CutSearch {
  if (problem.piecesMm.length === 0) return { uses: [], cost: 0, bound: 0 };
  return problem.stocks.length === 1 ? cutOneLength(problem) : new CutTree(problem).search();
}

function lineFaults({ stock, pieces, kerfMm }: CuttingInput): Refusal[] {
  const isWhole = (value: number, least: number) => Number.isSafeInteger(value) && value >= least;
  const lengths = (name: string, lines: readonly { readonly lengthMm: number }[]): Refusal[] =>
    lines.flatMap(({ lengthMm }, at) =>
      isWhole(lengthMm, 1) && lengthMm <= LONGEST_MM
        ? []
        : [
            {
              field: `${name}.${at}.lengthMm`,
              got: lengthMm,
              need: `a whole number from 1 to ${LONGEST_MM} mm`,
            },
          ],
    );
  const counts = (name: string, lines: readonly { readonly count?: number }[]): Refusal[] =>
    lines.flatMap(({ count }, at) =>
      count === undefined || isWhole(count, 0)
        ? []
        : [{ field: `${name}.${at}.count`, got: count, need: "a whole number, 0 or more" }],
    );
  const kerf: Refusal[] = isWhole(kerfMm, 0)
    ? []
    : [{ field: "kerfMm", got: kerfMm, need: "a whole number of millimetres, 0 or more" }];
  return [
    ...lengths("stock", stock),
    ...counts("stock", stock),
    ...lengths("pieces", pieces),
    ...counts("pieces", pieces),
    ...kerf,
  ];
}

function tooLong({ stock, pieces }: CuttingInput): Refusal[] {
  const longest = Math.max(0, ...stock.filter(({ count }) => count !== 0).map(({ lengthMm }) => lengthMm));
  return pieces.flatMap(({ lengthMm, count }, at) =>
    count > 0 && lengthMm > longest
      ? [
          {
            field: `pieces.${at}`,
            got: `${lengthMm} mm, ${count} of them`,
            need: `a stock of ${lengthMm} mm or more`,
          },
        ]
      : [],
  );
}

/** Where the stock does not go round: what is left over when the widest are cut first, by line. */
function unmet(input: CuttingInput, problem: WholeProblem): Refusal[] {
  const left = cutGreedily(problem).problem.demand;
  return problem.piecesMm.flatMap((lengthMm, piece) => {
    const count = left[piece] ?? 0;
    const at = input.pieces.findIndex((line) => line.lengthMm === lengthMm && line.count > 0);
    return count === 0
      ? []
      : [{ field: `pieces.${at}`, got: `${lengthMm} mm, ${count} of them not cut`, need: "more stock" }];
  });
}

function patternsOf(uses: readonly CutUse[], { piecesMm, stocksMm }: WholeProblem): CuttingPattern[] {
  const alike = new Map<string, { use: CutUse; times: number }>();
  for (const use of uses) {
    const key = `${use.stock} ${use.cuts.join(" ")}`;
    alike.set(key, { use, times: (alike.get(key)?.times ?? 0) + use.times });
  }
  return [...alike.values()]
    .map(({ use, times }) => ({
      stockMm: stocksMm[use.stock] ?? 0,
      times,
      cuts: piecesMm.flatMap((lengthMm, piece) => {
        const count = use.cuts[piece] ?? 0;
        return count > 0 ? [{ lengthMm, count }] : [];
      }),
    }))
    .sort((a, b) => b.stockMm - a.stockMm || b.times - a.times || byCodeUnit(keyOf(a), keyOf(b)));
}

function keyOf({ cuts }: CuttingPattern): string {
  return cuts.map(({ lengthMm, count }) => `${lengthMm}:${count}`).join(" ");
}

/** Different lengths × longest stock, in the pieces' common divisor: what a table of fillings may hold. */
const MOST_CELLS = 50_000_000;
const TOO_FINE = `at most ${MOST_CELLS} different lengths × units of the longest stock: round the lengths`;

/** A hundred kilometres: longer numbers would only be a slip of the pen. */
const LONGEST_MM = 100_000_000;

const BASIS: Basis = {
  rule: "pattern-cutting",
  source: "pattern-cutting",
  assumes: ["pieces may be cut in any order along a stock", "what is left of a stock counts as used"],
};

const NOTHING: Cutting = { stocksUsed: 0, objective: 0, bound: 0, proven: true, patterns: [], basis: BASIS };
