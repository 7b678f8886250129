import type { Limit, OkRange } from "@nightspan/core";
import { plainLabels } from "@nightspan/drawing";

/** "3.4 to 4.9 m: nearer, the sling is too long; farther, a strap would come beyond reach." */
export function saySpanWindow({ low, high, bindsLow, bindsHigh }: OkRange): string {
  // Inwards to 10 cm, so that no span is told that would not serve.
  const [from, to] = [Math.ceil(low * 10 - 1e-6) / 10, Math.floor(high * 10 + 1e-6) / 10];
  const shown = (value: number): string => plainLabels({ quantity: "length", value, digits: 1 });
  const range = from >= to ? `about ${shown((low + high) / 2)}` : `${from.toFixed(1)} to ${shown(to)}`;
  return `${range} apart: nearer, ${ENDS[bindsLow]}; farther, ${ENDS[bindsHigh]}.`;
}

const ENDS: Readonly<Record<Limit, string>> = {
  "trees-too-close": "no room is left for straps",
  "sling-shortest": "the strap or sling is too long even at its shortest",
  "sling-longest": "the strap or sling is too short even at its longest",
  "strap-reach": "a strap would come beyond reach",
  "strap-height-cap": "a strap would come above the house's cap",
  "low-point-cap": "it would hang above the house's cap",
  "low-point-ground": "the cloth would touch the ground",
  "angle-flattest": "the straps would come too flat",
  "angle-steepest": "the straps would come too steep",
  "seat-lowest": "the seat would come too low",
  "seat-highest": "the seat would come too high",
  "foot-raise-least": "the foot end would come too low",
  "foot-raise-most": "the foot end would come too high",
  "ridgeline-longer-than-cloth": "the ridgeline is longer than the hammock",
  "span-least": "the house rule does not allow it",
  "span-most": "the house rule does not allow it",
  "tarp-ridge": "the tarp does not fit between the trunks",
  "trunk-bend": "a trunk would bend too far",
  "tree-pull": "a tree would be pulled too hard",
  strength: "a part is too weak for the pull",
  "user-weight": "the sleeper is too heavy for the hammock",
};
