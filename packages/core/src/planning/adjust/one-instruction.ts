import { degrees } from "../../quantity/angle.ts";
import type { HangDeviation } from "../../statics/hang-band.ts";
import type { Instruction, Move, NextStep } from "./adjust-types.ts";
import { meanAngle } from "./evidence.ts";
import { moveOf, plus, type Come, type HungModel } from "./hung-model.ts";
import { keepsAll, leadsNotPast, overLimits, sumOfSquares, type OverLimits } from "./over-limits.ts";

/**
 * The one change that brings a hang nearest to its plan: at one end, by whole centimetres.
 *
 * The adjuster goes before the strap on the trunk: the strap is moved only where the adjuster alone would not do, and
 * the strap would, or is worth more than twice as much.
 * Moves that will not go are left out, and the next best is told. No instruction leads past an angle, a reach, a cap, a strap's length or too near the ground. Nothing is said where
 * every limit is kept and the rest is within tolerance, or where no one change is better than leaving it.
 */
export function oneInstruction(model: HungModel, off: HangDeviation, cannot: readonly Move[] = []): Told {
  const now = standing(model, model.come(off));
  if (isEnough(now)) return { next: "leave-it" };
  const from = { model, off, now, cannot };
  const [adjuster, trunk] = [best(from, ADJUSTER), best(from, TRUNK)];
  const isWorth = now.trouble - trunk.left > TRUNK_WORTH * (now.trouble - adjuster.left);
  const { left, instruction } = !adjuster.enough && (isWorth || trunk.enough) ? trunk : adjuster;
  if (instruction !== undefined && left < now.trouble) return { next: "change", instruction };
  return { next: keepsAll(now.over) ? "leave-it" : "hang-anew" };
}

/** What to do next, and the change where there is one. Hung anew where a limit is broken and no one change helps. */
export interface Told {
  readonly next: NextStep;
  readonly instruction?: Instruction;
}

/** Off the plan by no more than this a hang is left alone: every quantity within about its own tolerance. */
const ENOUGH = 1;

/** How much more moving a strap on the trunk must be worth than an adjuster. */
const TRUNK_WORTH = 2;

const MOST_CM = 60;

const ADJUSTER = ["take-in", "let-out"] as const;
const TRUNK = ["raise", "lower"] as const;

interface Standing {
  /** How far from the plan. */
  readonly offPlan: number;
  /** The same, and how far past the limits, or nearer to them than wished. */
  readonly trouble: number;
  readonly over: OverLimits;
}

interface From {
  readonly model: HungModel;
  readonly off: HangDeviation;
  readonly now: Standing;
  readonly cannot: readonly Move[];
}

interface Tried {
  readonly instruction: Instruction;
  /** Trouble that is left. */
  readonly left: number;
  readonly enough: boolean;
}

type Best = Pick<Tried, "left" | "enough"> & Partial<Pick<Tried, "instruction">>;

function isEnough({ offPlan, over }: Standing): boolean {
  return offPlan <= ENOUGH && keepsAll(over);
}

/** Where no move is left to try. */
const NOTHING_GOES: Best = { left: Infinity, enough: false };

function best(from: From, actions: readonly Instruction["action"][]): Best {
  const lines = (["head", "foot"] as const)
    .flatMap((end) => actions.map((action) => ({ end, action })))
    .filter(({ end, action }) => !from.cannot.some((move) => move.end === end && move.action === action));
  const tried = lines.map((line) => downhill((cm) => tryOut(from, { ...line, cm })));
  return tried.reduce<Best>((least, next) => (next.left < least.left ? next : least), NOTHING_GOES);
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

function tryOut({ model, off, now }: From, instruction: Instruction): Tried {
  const after = model.come(plus(off, moveOf(instruction)));
  const { head, foot } = after.state;
  const isRoom = Math.min(head.strapLengthM, foot.strapLengthM) > LEAST_STRAP_M;
  const then = standing(model, after);
  const isAllowed = isRoom && leadsNotPast(now.over, then.over);
  return { instruction, left: isAllowed ? then.trouble : Infinity, enough: isEnough(then) };
}

/** A strap must keep some length to be set at all [m]. Source: house-convention. */
const LEAST_STRAP_M = 0.05;

/** How far a state is from its plan and past its limits: sums of squares, each over its own tolerance. */
function standing({ planned, request }: HungModel, come: Come): Standing {
  const { state } = come;
  const over = overLimits(state, request);
  const wished = overLimits(state, request, planned.state);
  const offPlan = sumOfSquares([
    (state.seatHeightM - planned.state.seatHeightM) / SEAT_TOLERANCE_M,
    (state.footRaiseM - planned.state.footRaiseM) / RAISE_TOLERANCE_M,
    (meanAngle(come) - meanAngle(planned)) / ANGLE_TOLERANCE,
  ]);
  return { offPlan, trouble: offPlan + sumOfSquares([...wished.hard, ...wished.soft]), over };
}

/** Within these a hang counts as planned. Source: common-practice. */
const SEAT_TOLERANCE_M = 0.05;
const RAISE_TOLERANCE_M = 0.05;
const ANGLE_TOLERANCE = degrees(6);
