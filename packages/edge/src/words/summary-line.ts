import type { Plan } from "@nightspan/core";
import { sayLookedAt, sayNotChecked, sayVerdict } from "./say-verdict.ts";

/** One line of the summary, and what it is, so that a terminal can set it off. */
export interface SummaryLine {
  readonly kind: "verdict" | "beside" | "heading" | "item" | "row" | "blank";
  readonly text: string;
}

/** A heading and its lines, with a blank line before; nothing where there are none. */
export function section(
  title: string,
  texts: readonly string[],
  kind: "item" | "row" = "item",
): readonly SummaryLine[] {
  if (texts.length === 0) return [];
  return [
    { kind: "blank", text: "" },
    { kind: "heading", text: title },
    ...texts.map((text) => ({ kind, text })),
  ];
}

/** The verdict's word and what always stands beside it. */
export function verdictLines(plan: Plan, after: string): readonly SummaryLine[] {
  const besides = [sayLookedAt(plan.treesLookedAt), sayNotChecked(plan.notChecked)];
  return [
    { kind: "verdict", text: `${capital(sayVerdict(plan.verdict))}.${after === "" ? "" : ` ${after}`}` },
    ...besides.flatMap((text): SummaryLine[] =>
      text === undefined ? [] : [{ kind: "beside", text: `${capital(text)}.` }],
    ),
  ];
}

export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
