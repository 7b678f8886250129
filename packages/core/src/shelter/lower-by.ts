import type { BodyPart, HungBody } from "./hung-body.ts";
import type { Panel } from "./tarp-geometry.ts";
import { wetting, type Weather } from "./wetting.ts";

/** Below this share of the open rain a part counts as covered: mist and splash are more. */
export const COVERED_SHARE = 0.01;

export interface PartShareInput {
  readonly body: HungBody;
  readonly panels: readonly Panel[];
  readonly weather: Weather;
  readonly windsFrom: readonly number[];
}

export type PartShares = Readonly<Record<BodyPart, number>>;

/**
 * Worst share of the open rain that reaches each side and end, over some directions of the wind.
 *
 * Shapes   body, panels, weather, directions → four shares
 * Source   rain-shade (handbook/shelter.md)
 */
export function partShares({ body, panels, weather, windsFrom }: PartShareInput): PartShares {
  const worst = { left: 0, right: 0, head: 0, foot: 0 };
  for (const windFrom of windsFrom) {
    const open = wetting(body, [], weather, windFrom).partsM2;
    const wet = wetting(body, panels, weather, windFrom).partsM2;
    for (const part of BODY_PARTS) {
      if (open[part] > 0) worst[part] = Math.max(worst[part], wet[part] / open[part]);
    }
  }
  return worst;
}

export const BODY_PARTS = ["left", "right", "head", "foot"] as const satisfies readonly BodyPart[];

/**
 * How far the tarp as a whole must come down to cover a part; nothing where that alone does not do it.
 *
 * Shapes   as `partShares`, a part, the most it may come down → metres, upwards to 5 mm
 * Units    metres
 * Holds    shares that lowering never makes greater
 * Source   rain-shade (handbook/shelter.md)
 */
export function findLowerBy(input: PartShareInput, part: BodyPart, mostM: number): number | undefined {
  const shareAt = (downM: number) =>
    partShares({ ...input, panels: input.panels.map((panel) => lowered(panel, downM)) })[part];
  if (!(mostM > 0) || shareAt(mostM) >= COVERED_SHARE) return undefined;
  let [low, high] = [0, mostM];
  while (high - low > FINE_M) {
    const middle = (low + high) / 2;
    if (shareAt(middle) < COVERED_SHARE) high = middle;
    else low = middle;
  }
  return high;
}

const FINE_M = 0.005;

function lowered({ name, corners }: Panel, downM: number): Panel {
  return { name, corners: corners.map(([xM, yM, zM]) => [xM, yM, zM - downM]) };
}
