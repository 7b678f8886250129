import type { HungBody } from "./hung-body.ts";
import type { Panel } from "./tarp-geometry.ts";
import { wetting, type Weather, type Wetting } from "./wetting.ts";

export interface Spoke {
  /** Where the wind comes from, anticlockwise from head-to-foot seen from above [rad]. */
  readonly windFrom: number;
  readonly wet: Wetting;
}

/**
 * What gets wet for every direction of the wind.
 *
 * Shapes   body, panels, weather, number of directions → that many spokes, even all round
 * Source   rain-shade (handbook/shelter.md)
 */
export function rainRose(body: HungBody, panels: readonly Panel[], weather: Weather, spokes = 36): Spoke[] {
  return Array.from({ length: spokes }, (_, index) => {
    const windFrom = (2 * Math.PI * index) / spokes;
    return { windFrom, wet: wetting(body, panels, weather, windFrom) };
  });
}
