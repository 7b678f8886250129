import type { BerthTarp, Guy, PlannedBerth, TarpSide } from "@nightspan/core";
import type { BerthFacts } from "../berth/berth-facts.ts";
import { markHeightM } from "../berth/berth-words.ts";
import { quantity, word } from "../scene/names.ts";
import type { TextItem } from "../scene/text-item.ts";
import { listed, sentences } from "./card-words.ts";

/** What hands do with the tarp: ridge height, low side, drip lines, pegs in steps, and what is not covered. */
export function tarpAction({ berth, sleeper }: BerthFacts): TextItem | undefined {
  const { tarp } = berth;
  if (tarp === undefined) return undefined;
  return sentences([
    ridgeText(tarp, berth),
    word("card.tarp-drip"),
    ...pegTexts(tarp.guys, sleeper.stepM),
    ...notCovered(tarp),
  ]);
}

function ridgeText({ ridge, panels }: BerthTarp, berth: PlannedBerth): TextItem {
  const height = quantity("length", markHeightM(ridge.headTieM), 2);
  const low = lowSide(panels);
  const foot = markHeightM(ridge.footTieM);
  const ties =
    foot === markHeightM(ridge.headTieM)
      ? word("card.tarp-ridge", { height })
      : word("card.tarp-ridge-two", { height, foot: quantity("length", foot, 2) });
  if (low === undefined) return word("card.tarp-sentence", { ridge: ties });
  return word("card.tarp-low", { ridge: ties, side: sideText(low, berth) });
}

/** Edges nearer in height than this are alike [m]. */
const ALIKE_M = 0.08;

/** The side that is pitched lower; nothing where both are alike. */
export function lowSide(panels: BerthTarp["panels"]): TarpSide | undefined {
  const lowest = (side: TarpSide): number => {
    const own = panels.filter(({ name }) => name === side).flatMap(({ corners }) => corners);
    return Math.min(...own.map(([, , z]) => z));
  };
  const [left, right] = [lowest("left"), lowest("right")];
  if (!(Math.abs(left - right) > ALIKE_M)) return undefined;
  return left < right ? "left" : "right";
}

/** A side of a berth as a direction of the compass, where its bearing is known; else of who looks from head to foot. */
export function sideText(side: TarpSide, { bearingRad }: PlannedBerth): TextItem {
  if (bearingRad === undefined) return word(`card.side-${side}`);
  const turn = side === "left" ? -Math.PI / 2 : Math.PI / 2;
  return quantity("bearing", (bearingRad + turn + 2 * Math.PI) % (2 * Math.PI), 0);
}

/** How far from the ridge line the pegs stand, in the sleeper's own steps; a closed end's stands right under it. */
function pegTexts(guys: readonly Guy[], stepM: number): TextItem[] {
  const aside = guys.filter(({ name }) => !name.endsWith("-door"));
  const steps = aside.map(({ asideM }) => Math.round((2 * Math.abs(asideM)) / stepM) / 2);
  if (steps.length === 0) return [];
  const [least, most] = [Math.min(...steps), Math.max(...steps)];
  const from = quantity("steps", least, 1);
  if (least === most) return [word("card.tarp-pegs", { steps: from })];
  return [word("card.tarp-pegs-range", { least: from, most: quantity("steps", most, 1) })];
}

/** The plain answer: which sides or ends the rain reaches, and by how much lower they would be covered. */
function notCovered({ wetVerdicts }: BerthTarp): TextItem[] {
  const open = wetVerdicts.filter(({ covered }) => !covered);
  if (wetVerdicts.length === 0) return [];
  if (open.length === 0) return [word("card.tarp-covered")];
  const parts = listed(open.map(({ part }) => word(`tarp.part.${part}`)));
  const by = open.map(({ lowerByM }) => lowerByM);
  const known = by.filter((metres) => metres !== undefined);
  if (known.length < by.length) return [word("card.tarp-open", { parts })];
  const lower = quantity("short-length", Math.max(0.05, markHeightM(Math.max(...known))), 0);
  return [word("card.tarp-lower", { parts, by: lower })];
}
