import type { Camp, Plan } from "@nightspan/core";
import { youthLacksTexts } from "@nightspan/drawing";
import { labels } from "./labels.ts";

/** Children who lack a warm enough layer tonight, to be told first. */
export function youthLackLines(plan: Plan, camp: Camp): readonly string[] {
  return youthLacksTexts(plan, camp).map((text) => innermost(labels(text)));
}

/** Of fences in fences about what runs from right to left the innermost alone. */
function innermost(text: string): string {
  return text.replace(/(\u2068[^\u2068\u2069]*\u2069)|[\u2068\u2069]/g, (_, fence?: string) => fence ?? "");
}
