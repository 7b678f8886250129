import type { Camp, Plan } from "@nightspan/core";
import { CAUTIONS, DEFERS_TO } from "./cautions.ts";
import { lookLines, refusedLines } from "./look-lines.ts";
import { namesOf } from "./names.ts";
import { sayAssumptions } from "./say-assumptions.ts";
import { footSentence, headSentence, sitSentence, webbingSentence } from "./say-hang.ts";
import { saySpanWindow } from "./say-span-window.ts";
import { sayPairsOut, sayUnplaced } from "./say-unplaced.ts";
import { section, verdictLines, type SummaryLine } from "./summary-line.ts";

/** "Two trees, tonight" in words: look up, a sentence for each tree, then sit; or why to sleep on the ground. */
export function tonightLines(plan: Plan, camp: Camp): readonly SummaryLine[] {
  const names = namesOf(camp);
  return [
    ...verdictLines(plan, plan.berths.length === 0 ? "No berth between these two trees." : ""),
    { kind: "blank", text: "" },
    ...[LOOK_FIRST, ...answerLines(plan, camp)].map((text): SummaryLine => ({ kind: "item", text })),
    ...section("Look again", lookLines(plan, names)),
    ...section("Do not hang", refusedLines(plan, names)),
    ...section("Assumed", sayAssumptions(plan.defaultsUsed, names, "weighty")),
    ...section("Cautions", [...CAUTIONS.map(({ text }) => text), DEFERS_TO]),
  ];
}

const LOOK_FIRST = "Look up first. No light, or no crowns seen: sleep on the ground, or come back tomorrow.";

function answerLines(plan: Plan, camp: Camp): readonly string[] {
  const [berth] = plan.berths;
  if (berth !== undefined) {
    const { spanWindow } = berth;
    const window =
      spanWindow === undefined ? [] : [`This kit hangs between trees ${saySpanWindow(spanWindow)}`];
    const webbing = webbingSentence(berth, camp) ?? [];
    return [headSentence(berth, camp), footSentence(berth, camp), sitSentence(berth), webbing, window].flat();
  }
  const out = sayPairsOut(camp);
  const reasons =
    out.length > 0 ? out : plan.unplaced.flatMap((unplaced) => sayUnplaced(unplaced, namesOf(camp)));
  return [...reasons, "Sleep on the ground, or find other trees."];
}
