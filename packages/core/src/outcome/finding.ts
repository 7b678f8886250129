import type { RuleKey } from "./rule-key.ts";
import type { SourceKey } from "./source-key.ts";

/** The three verdicts, worst last. On screen and paper: "no rule broken", "look again", "do not hang". */
export type Verdict = "clear" | "look-again" | "do-not-hang";

export type Sense = "at-most" | "at-least";

/** Units a finding may carry. `1` is a plain number or ratio. */
export type FindingUnit = "N" | "kg" | "m" | "rad" | "Pa" | "m/s" | "K" | "1";

/**
 * One comparison, told once and shown everywhere: text, drawing and page read the same record.
 *
 * `margin` is limit/demand − 1 for "at-most" and demand/limit − 1 for "at-least"; null where the
 * denominator is zero. `subject` says what it is about: "berth-2/head-strap", "tree/K12", "camp".
 */
export interface Finding {
  readonly rule: RuleKey;
  readonly source: SourceKey;
  readonly subject: string;
  readonly sense: Sense;
  readonly demand: number;
  readonly limit: number;
  readonly unit: FindingUnit;
  readonly margin: number | null;
  readonly verdict: Verdict;
  /** Who or what is meant, by id, where the words need it: the named part, the other tree. */
  readonly about?: readonly string[];
  /** Told only to who asks why, as long as it is clear: mechanics behind a house rule, plain information. */
  readonly depth?: FindingDepth;
}

export type FindingDepth = "why";

export interface Comparison {
  readonly rule: RuleKey;
  readonly source: SourceKey;
  readonly subject: string;
  readonly sense: Sense;
  readonly demand: number;
  readonly limit: number;
  readonly unit: FindingUnit;
  readonly about?: readonly string[];
  readonly depth?: FindingDepth;
}

/** Below this margin a comparison that is met asks for a second look. */
export const LOOK_AGAIN_MARGIN = 0.1;

/** Relative slack so that a bound is inclusive for numbers that went through a conversion. */
const SLACK = 1e-9;

/** Compares, and lets the margin decide: below 0 do-not-hang, 0 to 0.10 look-again, else clear. */
export function compare(comparison: Comparison): Finding {
  const margin = marginOf(comparison.sense, comparison.demand, comparison.limit);
  return { ...comparison, margin, verdict: verdictOf(margin) };
}

/** A comparison whose verdict a rule sets, whatever the margin: a tree nobody has looked at. */
export function byRule(comparison: Comparison, verdict: Verdict): Finding {
  return { ...comparison, margin: marginOf(comparison.sense, comparison.demand, comparison.limit), verdict };
}

/** A comparison that is either kept or broken, with no look-again zone at its edge. */
export function kept(comparison: Comparison, broken: Verdict): Finding {
  const margin = marginOf(comparison.sense, comparison.demand, comparison.limit);
  const met = comparison.sense === "at-most" ? atMost(comparison) : atLeast(comparison);
  return { ...comparison, margin, verdict: met ? "clear" : broken };
}

/** The worst verdict of a list; "clear" for an empty one. */
export function worstVerdict(verdicts: Iterable<Verdict>): Verdict {
  let worst: Verdict = "clear";
  for (const verdict of verdicts) {
    if (RANK[verdict] > RANK[worst]) worst = verdict;
  }
  return worst;
}

/** Sort order for lists that show the worst first. */
export function worstFirst(a: Finding, b: Finding): number {
  return RANK[b.verdict] - RANK[a.verdict];
}

const RANK: Readonly<Record<Verdict, number>> = { clear: 0, "look-again": 1, "do-not-hang": 2 };

function marginOf(sense: Sense, demand: number, limit: number): number | null {
  const [numerator, denominator] = sense === "at-most" ? [limit, demand] : [demand, limit];
  return denominator === 0 ? null : numerator / denominator - 1;
}

function verdictOf(margin: number | null): Verdict {
  if (margin === null) return "clear";
  if (!(margin >= -SLACK)) return "do-not-hang";
  return margin <= LOOK_AGAIN_MARGIN ? "look-again" : "clear";
}

function atMost({ demand, limit }: Comparison): boolean {
  return demand <= limit + SLACK * Math.max(1, Math.abs(limit));
}

function atLeast({ demand, limit }: Comparison): boolean {
  return demand >= limit - SLACK * Math.max(1, Math.abs(limit));
}
