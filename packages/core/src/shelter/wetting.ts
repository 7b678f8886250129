import type { FallingRain } from "./falling-rain.ts";
import type { BodyPart, HungBody, Layer } from "./hung-body.ts";
import { rainOnPatch } from "./rain-on-patch.ts";
import { rainShade } from "./rain-shade.ts";
import type { Panel } from "./tarp-geometry.ts";
import type { WindSpeed } from "./wind-profile.ts";

/** Rain and wind as they act at the berth. */
export interface Weather {
  readonly rain: FallingRain;
  /** Speeds that stand for the wind and its gusts, shares summing to 1. */
  readonly winds: readonly WindSpeed[];
}

/** Open rain that reaches each layer and part: as much as falls through so many level square metres [m²]. */
export interface Wetting {
  readonly layersM2: Readonly<Record<Layer, number>>;
  readonly partsM2: Readonly<Record<BodyPart, number>>;
  readonly wholeM2: number;
}

/**
 * Water that reaches a hung hammock under a tarp, for one direction of the wind.
 *
 * Shapes   body, panels, weather → m² of open rain by layer and by part; times `rain.rateMS` it is m³/s
 * Units    metres; `windFrom`: where the wind comes from, anticlockwise from head-to-foot seen from above [rad]
 * Holds    even wind over the height of the tarp; splash, run-off from the tarp and mist are not in it
 * Error    the body is an estimate; the shade itself is exact
 * Source   rain-shade (handbook/shelter.md)
 */
export function wetting(
  { patches }: HungBody,
  panels: readonly Panel[],
  { rain, winds }: Weather,
  windFrom: number,
): Wetting {
  const [upX, upY] = [Math.cos(windFrom), Math.sin(windFrom)];
  const shade = rainShade(panels, upX, upY);
  const layersM2 = { sleeper: 0, hammock: 0, under: 0 };
  const partsM2 = { left: 0, right: 0, head: 0, foot: 0 };
  let wholeM2 = 0;
  for (const { middle, area, layer, parts } of patches) {
    const covered = shade(middle);
    let reached = 0;
    for (const { windMS, share } of winds) {
      reached += share * rainOnPatch(area, upX, upY, windMS, rain, covered);
    }
    if (reached === 0) continue;
    layersM2[layer] += reached;
    wholeM2 += reached;
    for (const part of parts) partsM2[part] += reached;
  }
  return { layersM2, partsM2, wholeM2 };
}
