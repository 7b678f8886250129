import type { Finding, Limit } from "@nightspan/core";
import { length } from "./quantities.ts";

/** What stands in the way, as the end of a sentence: "It cannot be hung here: …". */
export function sayLimit(limit: Limit): string {
  return LIMITS[limit];
}

/** A text as a limit's key, where it is one. */
export function findLimit(text: string): Limit | undefined {
  return isLimit(text) ? text : undefined;
}

/** Where a house cap stands in the way: how high it would come, and what the cap is; a cap that costs a berth can be asked about. */
export function overCap(limit: Limit, wantedM: number, mostM: number): string {
  if (!CAPS.includes(limit)) return "";
  return ` (${length(wantedM)} wanted, ${length(mostM)} allowed)`;
}

/** Of both ends of a pair the one that would come farthest over a cap; all else as it is. */
export function farthestOverCap(findings: readonly Finding[]): readonly Finding[] {
  const key = ({ about }: Finding) => JSON.stringify(about ?? []);
  const isCap = ({ about }: Finding) => CAPS.some((limit) => limit === about?.[2]);
  return findings.filter(
    (one) => !isCap(one) || !findings.some((other) => key(other) === key(one) && other.demand > one.demand),
  );
}

const CAPS: readonly Limit[] = ["strap-height-cap", "low-point-cap"];

function isLimit(text: string): text is Limit {
  return Object.hasOwn(LIMITS, text);
}

const LIMITS: Readonly<Record<Limit, string>> = {
  "trees-too-close": "the trees are too close for this hammock",
  "sling-shortest": "the strap or sling is too long even at its shortest",
  "sling-longest": "the strap or sling is too short even at its longest",
  "strap-reach": "a strap would come higher than anybody here can reach",
  "strap-height-cap": "a strap would come higher than the house rule allows",
  "low-point-cap": "the hammock would hang higher than the house rule allows",
  "low-point-ground": "the cloth would touch the ground",
  "angle-flattest": "the straps would come too flat and pull too hard",
  "angle-steepest": "the straps would come too steep",
  "seat-lowest": "the seat would come too low",
  "seat-highest": "the seat would come too high",
  "foot-raise-least": "the foot end would come too low",
  "foot-raise-most": "the foot end would come too high",
  "ridgeline-longer-than-cloth": "the ridgeline is longer than the hammock",
  "span-least": "the trees are nearer than the house rule allows",
  "span-most": "the trees are farther than the house rule allows",
  "tarp-ridge": "the tarp's ridge does not fit between the trees",
  "trunk-bend": "a trunk would bend too far",
  "tree-pull": "a tree would be pulled harder than the house rule allows",
  strength: "a part is too weak for the pull",
  "user-weight": "the sleeper is over the hammock's greatest user weight",
};
