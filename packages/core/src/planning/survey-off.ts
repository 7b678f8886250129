import type { Ground } from "../plan/camp.ts";
import { DEFAULTS } from "../plan/defaults.ts";

/**
 * By how much any position of the map may be off, where it was surveyed worse than is usual with a tape; else 0.
 *
 * Units    metres; the error stated is of each axis, so a position may be off by √2 of it
 * Source   layout-search (handbook/layout.md: position error)
 */
export function surveyOffM({ source, positionErrorM }: Pick<Ground, "source" | "positionErrorM">): number {
  const asUsual = source === "taped" && positionErrorM <= DEFAULTS["ground.position_error_m"].value;
  return asUsual || !(positionErrorM > 0) ? 0 : Math.SQRT2 * positionErrorM;
}
