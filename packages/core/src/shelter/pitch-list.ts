import { groundZM } from "./ground-plane.ts";
import { flatSides, type TarpCut } from "./tarp-cut.ts";
import {
  canClose,
  lowestCornerM,
  SIDES,
  type BerthFrame,
  type End,
  type Pitch,
  type Side,
} from "./tarp-geometry.ts";

/** How many pitches are looked at: a few for a whole camp, many for one berth. */
export type Effort = "few" | "many";

export interface PitchListInput {
  readonly cut: TarpCut;
  readonly berth: BerthFrame;
  readonly effort: Effort;
  /** Highest the ridge cord can be tied, above the ground at a tree [m]. */
  readonly reachM: number;
  /** End that the wind blows at, where one does. */
  readonly windEnd?: End;
  /** Side away from the wind, where there is one. */
  readonly leeSide?: Side;
}

export interface ListedPitch {
  readonly pitch: Pitch;
  readonly pegged: readonly Side[];
}

/**
 * Pitches of one tarp that are worth trying: ridge parallel to the hammock's ends at several heights over them, sides from
 * shallow to pegged at the ground, one side up as a porch, one down to windward, ends open or folded, the tarp in the middle or shifted.
 *
 * Shapes   cut and berth → pitches, in an order that never changes
 * Units    metres, radians
 * Source   tarp-geometry (handbook/shelter.md)
 */
export function pitchList(input: PitchListInput): ListedPitch[] {
  const { cut, effort } = input;
  const list: ListedPitch[] = [];
  for (const overM of OVER_M[effort]) {
    const ties = tiesAt(input, overM);
    if (ties === undefined) continue;
    for (const shiftM of shifts(input)) {
      const base = { ...ties, shiftM, closedEnds: [] };
      for (const angleDeg of ANGLES_DEG[effort]) {
        const even = settle(input, base, { left: angleDeg, right: angleDeg });
        list.push(even);
        for (const closedEnds of closings(input)) {
          const { leftAngle, rightAngle } = even.pitch;
          if (canClose(cut, Math.max(leftAngle, rightAngle)))
            list.push({ ...even, pitch: { ...even.pitch, closedEnds } });
        }
      }
      for (const porch of porches(input)) {
        const other = porch === "left" ? { left: PORCH_DEG, right: 50 } : { left: 50, right: PORCH_DEG };
        list.push(settle(input, base, other));
      }
      for (const lee of porches(input)) list.push(settle(input, base, stormAngles(lee)));
    }
  }
  return list;
}

/** Ridge over the line through both gathers [m]. */
const OVER_M: Readonly<Record<Effort, readonly number[]>> = {
  few: [0.25, 0.4, 0.6],
  many: [0.2, 0.3, 0.4, 0.5, 0.65, 0.8],
};

/** Sides below level; 80° stands for as steep as the ground allows. */
const ANGLES_DEG: Readonly<Record<Effort, readonly number[]>> = {
  few: [30, 45, 80],
  many: [25, 35, 45, 55, 80],
};

const PORCH_DEG = 8;
/** To windward down, as far as the ground allows, and shallow to lee. Common practice. */
const STORM_DEG = { windward: 60, lee: 30 } as const;

function stormAngles(lee: Side): Readonly<Record<Side, number>> {
  const { windward, lee: shallow } = STORM_DEG;
  return lee === "left" ? { left: shallow, right: windward } : { left: windward, right: shallow };
}

const SHIFT_M = 0.15;

function tiesAt({ berth, reachM }: PitchListInput, overM: number) {
  const { headGather, footGather, spanM, ground } = berth;
  const slope = (footGather[2] - headGather[2]) / (footGather[0] - headGather[0]);
  const headTieM = headGather[2] - slope * headGather[0] + overM;
  const footTieM = headTieM + slope * spanM - groundZM(ground, spanM, 0);
  return Math.max(headTieM, footTieM) > reachM ? undefined : { headTieM, footTieM };
}

function shifts({ effort, cut, berth }: PitchListInput): readonly number[] {
  const spareM = cut.ridgeM - (berth.footGather[0] - berth.headGather[0]);
  return effort === "many" && spareM > 4 * SHIFT_M ? [0, -SHIFT_M, SHIFT_M] : [0];
}

function closings({ effort, windEnd }: PitchListInput): readonly (readonly End[])[] {
  if (effort === "many") return [["head"], ["foot"], ["head", "foot"]];
  return windEnd === undefined ? [["head", "foot"]] : [[windEnd]];
}

function porches({ effort, leeSide }: PitchListInput): readonly Side[] {
  if (effort === "many") return SIDES;
  return leeSide === undefined ? [] : [leeSide];
}

/** Sides no steeper than brings their lowest corner to the ground; those that it does are pegged there. */
function settle(
  { cut, berth }: PitchListInput,
  base: Omit<Pitch, "leftAngle" | "rightAngle">,
  anglesDeg: Readonly<Record<Side, number>>,
): ListedPitch {
  const angles = { left: anglesDeg.left * DEG, right: anglesDeg.right * DEG };
  const pegged: Side[] = [];
  for (const side of SIDES) {
    const lowest = lowestCornerM(flatSides(cut)[side].corners, base, berth, side);
    if (lowest(angles[side]) >= 0) continue;
    pegged.push(side);
    let [low, high] = [0, angles[side]];
    for (let step = 0; step < HALVINGS; step++) {
      const middle = (low + high) / 2;
      if (lowest(middle) >= 0) low = middle;
      else high = middle;
    }
    angles[side] = low;
  }
  return { pitch: { ...base, leftAngle: angles.left, rightAngle: angles.right }, pegged };
}

const DEG = Math.PI / 180;
const HALVINGS = 16;
