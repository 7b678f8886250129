import { BARE_M2K_PER_W, type HalvesInput } from "./halves.ts";

/** Where an under layer lies: on the cloth, between two layers of cloth, or hung below all cloth. */
export type UnderPlace = "on-cloth" | "between-layers" | "hung-below";

export interface UnderLayerInput {
  /** Of the layer alone, lofted [m²K/W]; 0 for nothing under the sleeper. */
  readonly insulationM2KPerW: number;
  readonly coveredRatio: number;
  readonly place: UnderPlace;
  /** Of what it covers, where it hangs off and outside air moves between. */
  readonly gapRatio: number;
  readonly permeabilityMS: number;
  /** What lies pressed between back and cloth: the bag's under side, clothes [m²K/W]. */
  readonly pressedM2KPerW: number;
}

/**
 * The lower half of a hammock sleeper: what hangs or lies below, where it covers, and what is pressed on top of it.
 *
 *   covered = c (1 − gap) · kept,   R = R_layer + R_pressed
 *
 * A layer with outside air between it and the cloth counts for nothing there, as that air is at the air's own
 * temperature; so a gap is bare cloth. A mat that lies on the cloth slides: three tenths of what it covers are counted
 * bare; between two layers it keeps its place. Wind cannot blow through a mat, only through what hangs.
 *
 * Shapes   one layer in, the lower half out
 * Units    [m²K/W], ratios [1], permeabilityMS [m/s]
 * Holds    R 0 to 5, ratios 0 to 1
 * Error    covered shares are guesses until somebody looks: 0.1 of them is 2 to 4 K
 * Source   sleeper-balance; kept shares are common-practice (handbook/heat.md)
 */
export function underLayer(layer: UnderLayerInput): HalvesInput["bottom"] {
  const pressedM2KPerW = Math.min(layer.pressedM2KPerW, BARE_M2K_PER_W);
  const isMat = layer.place !== "hung-below";
  return {
    insulationM2KPerW: layer.insulationM2KPerW + pressedM2KPerW,
    coveredRatio: layer.coveredRatio * (1 - layer.gapRatio) * KEPT_RATIO[layer.place],
    permeabilityMS: isMat ? NO_AIR_MS : layer.permeabilityMS,
  };
}

/** What stays under the sleeper over a night. Source: common-practice. */
const KEPT_RATIO: Readonly<Record<UnderPlace, number>> = {
  "on-cloth": 0.7,
  "between-layers": 1,
  "hung-below": 1,
};

/** Through foam or an inflated mat [m/s]. */
const NO_AIR_MS = 0;
