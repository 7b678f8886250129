import type { BerthTarp, Guy, WetVerdict } from "@nightspan/core";
import { markHeightM } from "../berth/berth-words.ts";
import { name, quantity, word } from "../scene/names.ts";
import type { TextItem } from "../scene/text-item.ts";

/** "Foot end not covered: lower the tarp 20 cm". */
export function wetVerdictText({ part, covered, lowerByM }: WetVerdict): TextItem {
  const said = { part: word(`tarp.part.${part}`) };
  if (covered) return word("tarp.covered", said);
  if (lowerByM === undefined) return word("tarp.not-covered", said);
  const by = quantity("short-length", Math.max(0.05, markHeightM(lowerByM)), 0);
  return word("tarp.lower", { ...said, by });
}

/** What a guy runs into; nothing where its way is clear. */
export function conflictTexts({ conflicts }: Guy): TextItem[] {
  return conflicts.map(({ with: kind, id }) =>
    word("tarp.guy-conflict", { what: word(`tarp.conflict.${kind}`, { id: name(id) }) }),
  );
}

/** All that a planner must know of a tarp, the worst first. */
export function tarpTexts(tarp: BerthTarp): TextItem[] {
  const wet = [...tarp.wetVerdicts].sort((a, b) => Number(a.covered) - Number(b.covered));
  const straps = (["head", "foot"] as const).flatMap((end): TextItem[] => {
    const said = { end: word(`tarp.part.${end}`) };
    const { strap } = tarp.drip[end];
    if (strap === "rubs") return [word("tarp.strap-rubs", said)];
    return strap === "above-tarp" ? [word("tarp.strap-above", said)] : [];
  });
  return [...tarp.guys.flatMap(conflictTexts), ...straps, ...wet.map(wetVerdictText)];
}
