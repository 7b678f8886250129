import type { BodyPart, HungBody } from "./hung-body.ts";
import type { Panel } from "./tarp-geometry.ts";
import { wetting, type Weather, type Wetting } from "./wetting.ts";

/** Below this share of the open rain a part counts as covered: mist and splash are more. */
export const COVERED_SHARE = 0.01;

export interface PartShareInput {
  readonly body: HungBody;
  readonly panels: readonly Panel[];
  readonly weather: Weather;
  readonly windsFrom: readonly number[];
  /** What reaches the body without a tarp, one for each direction. */
  readonly open: readonly Wetting[];
}

export type PartShares = Readonly<Record<BodyPart, number>>;

/**
 * Worst share of the open rain that reaches each side and end, over some directions of the wind.
 *
 * Shapes   body, panels, weather, directions → four shares
 * Source   rain-shade (handbook/shelter.md)
 */
export function partShares(input: PartShareInput): PartShares {
  return worstShares(input.open, coveredWettings(input));
}

/** What reaches the body below the tarp, one for each direction. */
export function coveredWettings({
  body,
  panels,
  weather,
  windsFrom,
}: Omit<PartShareInput, "open">): Wetting[] {
  return windsFrom.map((windFrom) => wetting(body, panels, weather, windFrom));
}

/** Worst share of each part, direction by direction. */
export function worstShares(open: readonly Wetting[], wet: readonly Wetting[]): PartShares {
  const worst = { left: 0, right: 0, head: 0, foot: 0 };
  wet.forEach(({ partsM2 }, index) => {
    const whole = open[index]?.partsM2;
    for (const part of BODY_PARTS) {
      const partM2 = whole?.[part] ?? 0;
      if (partM2 > 0) worst[part] = Math.max(worst[part], partsM2[part] / partM2);
    }
  });
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
