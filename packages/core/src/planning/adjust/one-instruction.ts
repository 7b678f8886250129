import { degrees } from "../../quantity/angle.ts";
import type { HangDeviation } from "../../statics/hang-band.ts";
import type { HangLimits } from "../../statics/hang-types.ts";
import type { HangState, Instruction } from "./adjust-types.ts";
import { meanAngle } from "./evidence.ts";
import { moveOf, plus, type Come, type HungModel } from "./hung-model.ts";

/**
 * The one change that brings a hang nearest to its plan: at one end, by whole centimetres.
 *
 * The adjuster goes before the strap on the trunk: the strap is moved only where that is worth more than twice as much.
 * Nothing is said where nothing matters enough, or no one change is better than leaving it.
 */
export function oneInstruction(
  model: HungModel,
  limits: HangLimits,
  off: HangDeviation,
): Instruction | undefined {
  const now = trouble(model, limits, model.come(off));
  if (now <= ENOUGH) return undefined;
  const [adjuster, trunk] = [best(model, limits, off, ADJUSTER), best(model, limits, off, TRUNK)];
  const chosen = now - trunk.left > TRUNK_WORTH * (now - adjuster.left) ? trunk : adjuster;
  return chosen.left < now ? chosen.instruction : undefined;
}

/** Trouble below which a hang is left alone: every quantity within about its own tolerance. */
const ENOUGH = 1;

/** How much more moving a strap on the trunk must be worth than an adjuster. */
const TRUNK_WORTH = 2;

const MOST_CM = 60;

const ADJUSTER = ["take-in", "let-out"] as const;
const TRUNK = ["raise", "lower"] as const;

interface Tried {
  readonly instruction: Instruction;
  readonly left: number;
}

function best(
  model: HungModel,
  limits: HangLimits,
  off: HangDeviation,
  actions: readonly Instruction["action"][],
): Tried {
  const lines = (["head", "foot"] as const).flatMap((end) => actions.map((action) => ({ end, action })));
  const tried = lines.map((line) => downhill((cm) => tryOut(model, limits, off, { ...line, cm })));
  return tried.reduce((least, next) => (next.left < least.left ? next : least));
}

/** Goes on by whole centimetres as long as it gets better: first by tens, then by ones. */
function downhill(at: (cm: number) => Tried): Tried {
  let here = at(1);
  for (const stride of [10, 3, 1]) {
    for (;;) {
      const { cm } = here.instruction;
      const next = [cm + stride, cm - stride]
        .filter((value) => value >= 1 && value <= MOST_CM)
        .map(at)
        .find(({ left }) => left < here.left);
      if (next === undefined) break;
      here = next;
    }
  }
  return here;
}

function tryOut(model: HungModel, limits: HangLimits, off: HangDeviation, instruction: Instruction): Tried {
  const after = plus(off, moveOf(instruction));
  const { head, foot } = model.come(after).state;
  const isRoom = Math.min(head.strapLengthM, foot.strapLengthM) > LEAST_STRAP_M;
  return { instruction, left: isRoom ? trouble(model, limits, model.come(after)) : Infinity };
}

/** A strap must keep some length to be set at all [m]. Source: house-convention. */
const LEAST_STRAP_M = 0.05;

/** How far a state is from its plan and past its limits: squares, each over its own tolerance. */
function trouble(model: HungModel, limits: HangLimits, come: Come): number {
  const { planned } = model;
  const { state } = come;
  const aims = [
    (state.seatHeightM - planned.state.seatHeightM) / SEAT_TOLERANCE_M,
    (state.footRaiseM - planned.state.footRaiseM) / RAISE_TOLERANCE_M,
    (meanAngle(come) - meanAngle(planned)) / ANGLE_TOLERANCE,
  ];
  return [...aims, ...overLimits(state, limits)].reduce((sum, value) => sum + value * value, 0);
}

/** Within these a hang counts as planned. Source: common-practice. */
const SEAT_TOLERANCE_M = 0.05;
const RAISE_TOLERANCE_M = 0.05;
const ANGLE_TOLERANCE = degrees(6);

/** Past a limit each of these counts as one tolerance. */
const OVER_M = 0.02;
const OVER_ANGLE = degrees(1);

function overLimits({ head, foot, seatHeightM, lowPointM }: HangState, limits: HangLimits): number[] {
  const over = (excess: number, tolerance: number): number => Math.max(0, excess) / tolerance;
  const cap = Math.min(limits.reachM ?? Infinity, limits.strapHeightMaxM ?? Infinity);
  const ofStraps = [head, foot].flatMap(({ angle, strapHeightM }) => [
    over(angle - limits.angleMax, OVER_ANGLE),
    over(limits.angleMin - angle, OVER_ANGLE),
    over(strapHeightM - cap, OVER_M),
  ]);
  return [
    ...ofStraps,
    over(limits.lowPointMinM - lowPointM, OVER_M),
    over(lowPointM - (limits.lowPointMaxM ?? Infinity), OVER_M),
    over(limits.seatHeightMinM - seatHeightM, OVER_M),
    over(seatHeightM - limits.seatHeightMaxM, OVER_M),
  ];
}
