import { bracketedRoot } from "../numeric/bracketed-root.ts";
import { succeed, type Failure, type Limit, type Outcome } from "../outcome/outcome.ts";
import {
  heightOversteps,
  isOver,
  refusalsOf,
  strapOversteps,
  worstOver,
  type LimitInput,
  type Overstep,
  type Wish,
} from "./hang-breaches.ts";
import { lyingAt } from "./hang-lying.ts";
import type { HangRig } from "./hang-rig.ts";
import { siteOf, trialHang, trialStraps, type HangTrial, type TrialInput } from "./hang-trial.ts";

/** The hang that comes nearest to the angle asked for, and which limit moved it where one did. */
export interface HangCore {
  readonly trial: HangTrial;
  readonly movedBy: Limit | undefined;
}

/** The mean angles at which the first strap meets its limit, where they are known already. */
export interface AngleEdges {
  readonly flatter: number;
  readonly steeper: number;
}

export type HangCoreInput = TrialInput & LimitInput;

/**
 * The inverse without ranges and drawing: straps and heights for the mean angle asked for, or for the
 * nearest one that keeps every limit. Refused with every limit in the way where no angle does.
 *
 * Shapes   one rig, one pair
 * Units    SI
 * Holds    an input in which `hangInputRefusals` finds nothing
 * Error    forces to 1e-10 of the weight; where a limit binds, to 1e-8 m or rad inside it
 * Source   hang-chain
 */
export function hangCore(rig: HangRig, input: HangCoreInput, edges?: AngleEdges): Outcome<HangCore> {
  const target = tried(rig, input, input.targets.angle);
  const wish = wishOf(target.broken);
  if (wish === undefined) return close(target, undefined);
  if (wish === "neither") return refused(target.broken);
  const moved = nearestThatServes(rig, input, wish, edges?.[wish]);
  return close(moved, target.broken.find((step) => step.wish === wish)?.limit);
}

interface Tried {
  /** Absent where the trees leave no room for straps, or the solver found no rest. */
  readonly trial?: HangTrial;
  readonly oversteps: readonly Overstep[];
  readonly broken: readonly Overstep[];
}

/** How far inside a limit the search comes to rest [m or rad]. */
const INSIDE = 1e-8;

function tried(rig: HangRig, input: HangCoreInput, meanAngle: number): Tried {
  const straps = trialStraps(rig, input, meanAngle);
  const ofStraps = strapOversteps(input, straps);
  if (!(straps.runM > 0) || !straps.lying.converged) {
    return { oversteps: ofStraps, broken: ofStraps.filter(isOver) };
  }
  const trial = trialHang(rig, siteOf(input), input, straps);
  const oversteps = [...ofStraps, ...heightOversteps(input, trial)];
  return { trial, oversteps, broken: oversteps.filter(isOver) };
}

/** The one way the broken limits ask for; undefined where none is broken, "neither" where they disagree. */
function wishOf(broken: readonly Overstep[]): Wish | undefined {
  if (broken.length === 0) return undefined;
  const flatter = broken.some(({ wish }) => wish === "flatter");
  const steeper = broken.some(({ wish }) => wish === "steeper");
  if (flatter === steeper) return "neither";
  return flatter ? "flatter" : "steeper";
}

/**
 * Moves the mean angle from the target the way wished, no further than the strap that comes first to its
 * limit, and stops at the first angle where nothing wishes to go on.
 */
function nearestThatServes(
  rig: HangRig,
  input: HangCoreInput,
  wish: "flatter" | "steeper",
  knownEdge: number | undefined,
): Tried {
  const { angle } = input.targets;
  const edgeAngle = knownEdge ?? furthestAngle(rig, input, wish);
  const edge = tried(rig, input, edgeAngle);
  if (worstOver(edge.oversteps, wish) > 0) return edge;
  const over = (mean: number) => worstOver(tried(rig, input, mean).oversteps, wish) + INSIDE;
  const { x, converged } = bracketedRoot(over, edgeAngle, angle, INSIDE / 10);
  if (!converged) return edge;
  const found = tried(rig, input, x);
  return worstOver(found.oversteps, wish) > 0 ? edge : found;
}

/** The mean angle at which the first strap meets its angle limit; the trees do not enter. */
export function furthestAngle(rig: HangRig, input: AngleInput, wish: "flatter" | "steeper"): number {
  const { targets, limits } = input;
  const bound = wish === "flatter" ? limits.angleMin : limits.angleMax;
  const room = (mean: number) => {
    const { alongN, headDownN, footDownN } = lyingAt(rig, mean, targets.footRaiseM);
    return wish === "flatter"
      ? Math.atan(Math.min(headDownN, footDownN) / alongN) - bound - INSIDE
      : bound - INSIDE - Math.atan(Math.max(headDownN, footDownN) / alongN);
  };
  const { x, converged } = bracketedRoot(room, bound, targets.angle, INSIDE / 10);
  return converged ? x : targets.angle;
}

type AngleInput = Pick<HangCoreInput, "targets" | "limits">;

function close({ trial, broken }: Tried, movedBy: Limit | undefined): Outcome<HangCore> {
  if (broken.length > 0) return refused(broken);
  if (trial === undefined || !trial.figures.converged) return { ok: false, refusals: [NO_REST] };
  return succeed({ trial, movedBy });
}

function refused(broken: readonly Overstep[]): Failure {
  return { ok: false, refusals: refusalsOf(broken) };
}

const NO_REST = {
  field: "targets",
  got: "no rest found",
  need: "a foot raise and an angle at which the straps can carry the sleeper",
};
