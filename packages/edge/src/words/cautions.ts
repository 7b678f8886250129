import { CAUTION_KEYS, DEFER_KEYS, type CautionKey, type DeferKey } from "@nightspan/core";

export interface Caution {
  readonly key: CautionKey;
  readonly text: string;
}

const WORDS: Readonly<Record<CautionKey, string>> = {
  "look-up": "Look up first, out to one and a half times the height of whatever could fall.",
  "dead-or-doubtful-tree": "A dead or doubtful tree is no anchor, and nobody sleeps within its reach.",
  "never-on-vehicle-or-masonry": "Tie to living trees, never to vehicles or masonry.",
  "no-stacking-swinging-standing":
    "One person in a hammock, never two. No hammock above another; no swinging and no standing in one.",
  "not-over-water": "Never hang over water, rocks or a drop.",
  "lowest-hang": "Hang as low as it goes: never higher than you would fall.",
  "soft-clear-ground": "Clear the ground beneath of stones, stumps and pegs.",
  "check-every-entry": "Check every knot and strap before each entry.",
  "lowest-rated-part": "The part with the lowest rating decides what the whole rig may carry.",
  "children-supervised": "Stay with children in and near hammocks; lift an empty one out of reach.",
  "thunder-leave-trees": "At thunder leave the trees for a building or a hard-topped vehicle.",
  "stop-wind-and-cold": "Agree before dark at which wind and which cold everybody gets up.",
  "flame-clear-of-synthetics": "Keep heat and open flame away from cloth and cord.",
  "static-numbers":
    "Figures are for a still load and rounded; dropping in pulls harder. Assumptions stand in the plan.",
};

/** What stands on every plan and every card, whatever was computed. */
export const CAUTIONS: readonly Caution[] = CAUTION_KEYS.map((key) => ({ key, text: WORDS[key] }));

const DEFERS: Readonly<Record<DeferKey, string>> = {
  "land-manager": "the land manager",
  organisation: "your own organisation",
  arborist: "a qualified arborist wherever a tree is in doubt",
  maker: "the maker's plate on every part",
  "emergency-and-weather": "the local emergency and weather services",
  medical: "a doctor for anybody's health",
};

/** Whose word goes before any figure here. */
export const DEFERS_TO = `Their word goes before any figure here: ${DEFER_KEYS.map((key) => DEFERS[key]).join(", ")}.`;
