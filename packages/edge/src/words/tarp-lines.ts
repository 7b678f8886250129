import type { BerthTarp, Plan, PlannedBerth, TarpSide, WetVerdict } from "@nightspan/core";
import { ENGLISH } from "@nightspan/drawing";
import { inColumns } from "./in-columns.ts";
import { handDifference, handLength } from "./quantities.ts";

const HEADS = ["no.", "tarp", "tied head, foot", "sides", "rain"];

/** One line a berth: which tarp, how high its ridge is tied at each tree, how its sides hang, what rain reaches. */
export function tarpLines({ berths }: Plan): readonly string[] {
  const rows = berths.flatMap((berth) => cells(berth));
  return rows.length === 0 ? [] : inColumns([HEADS, ...rows]);
}

function cells({ id, tarp }: PlannedBerth): readonly (readonly string[])[] {
  if (tarp === undefined) return [];
  const { headTieM, footTieM } = tarp.pitch;
  return [[id, tarp.item, `${handLength(headTieM)}, ${handLength(footTieM)}`, sides(tarp), saysRain(tarp)]];
}

/** Steep from here on, about 40° below level. */
const STEEP_RAD = 0.7;

function sides({ pitch }: BerthTarp): string {
  const words = (["left", "right"] as const).map((side) => sideWord(pitch, side));
  const [left = "", right = ""] = words;
  const both = left === right ? `both ${left}` : `left ${left}, right ${right}`;
  return pitch.closedEnds.length === 0 ? both : `${both}, ${pitch.closedEnds.join(" and ")} end closed`;
}

function sideWord(pitch: BerthTarp["pitch"], side: TarpSide): string {
  if (pitch.porch === side) return "a porch";
  if (pitch.pegged.includes(side)) return "to the ground";
  return (side === "left" ? pitch.leftAngle : pitch.rightAngle) >= STEEP_RAD ? "steep" : "shallow";
}

function saysRain({ wetVerdicts }: BerthTarp): string {
  if (wetVerdicts.length === 0) return ENGLISH["tarp.no-rain"];
  const open = wetVerdicts.filter(({ covered }) => !covered);
  return open.length === 0 ? "covered all round" : open.map(notCovered).join("; ");
}

function notCovered({ part, lowerByM }: WetVerdict): string {
  const what = `${ENGLISH[`tarp.part.${part}`]} not covered`;
  return lowerByM === undefined ? what : `${what}: lower by ${handDifference(Math.max(lowerByM, 0.05))}`;
}
