/** What every plan and every card says, whatever was computed. The words are made in `edge`. */
export const CAUTION_KEYS = [
  "look-up",
  "dead-or-doubtful-tree",
  "never-on-vehicle-or-masonry",
  "no-stacking-swinging-standing",
  "not-over-water",
  "lowest-hang",
  "soft-clear-ground",
  "check-every-entry",
  "lowest-rated-part",
  "children-supervised",
  "thunder-leave-trees",
  "stop-wind-and-cold",
  "flame-clear-of-synthetics",
  "static-numbers",
] as const;

export type CautionKey = (typeof CAUTION_KEYS)[number];

/** Whose word goes before any figure here. */
export const DEFER_KEYS = [
  "land-manager",
  "organisation",
  "arborist",
  "maker",
  "emergency-and-weather",
  "medical",
] as const;

export type DeferKey = (typeof DEFER_KEYS)[number];
