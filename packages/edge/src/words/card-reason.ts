import type { PlannedBerth } from "@nightspan/core";
import type { Names } from "./names.ts";
import { sayFinding } from "./say-finding.ts";

/**
 * What a card says after its verdict where something else than an unseen tree is the reason: the first finding that
 * carries the verdict, as the end of a sentence. Nothing where the berth is clear or only its trees are unseen.
 */
export function cardReason({ verdict, findings }: PlannedBerth, names: Names): string | undefined {
  if (verdict === "clear") return undefined;
  const carrying = findings.filter((finding) => finding.verdict === verdict);
  if (carrying.some(({ rule }) => UNSEEN.includes(rule))) return undefined;
  const [first] = carrying;
  return first === undefined ? undefined : inSentence(sayFinding(first, names));
}

const UNSEEN: readonly string[] = ["tree.looked-at", "tree.above-looked-at"];

/** "The straps are …." → "the straps are …"; a tag or a name at the start keeps its capital. */
function inSentence(sentence: string): string {
  const body = sentence.replace(/\.$/, "");
  return /^(?:The|Nobody|From|On|It|Dropping|Gusts)\b/.test(body)
    ? body.charAt(0).toLowerCase() + body.slice(1)
    : body;
}
