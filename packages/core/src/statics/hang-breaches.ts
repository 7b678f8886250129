import type { Limit, Refusal } from "../outcome/outcome.ts";
import { LENGTH_SLACK_M } from "../quantity/constants.ts";
import { inDegrees, radians } from "../quantity/angle.ts";
import type { HangTrial, TrialStraps } from "./hang-trial.ts";
import type { HangInput } from "./hang-types.ts";

/** Which way the strap angle would have to go for a limit to be met. */
export type Wish = "flatter" | "steeper" | "neither";

/** One limit and by how much it is overstepped; `over` ≤ 0 where it is met [m, or rad for angles]. */
export interface Overstep {
  readonly limit: Limit;
  readonly wish: Wish;
  /** 1 where the bound is a highest, −1 where it is a lowest: over = sense · (got − bound). */
  readonly sense: 1 | -1;
  readonly over: number;
  readonly field: string;
  readonly got: number;
  readonly bound: number;
}

/** What the straps' limits look at; made by a trial, or told of a setting as it hangs. */
export type StrapFigures = Pick<
  TrialStraps,
  "runM" | "headStrapM" | "footStrapM" | "headAngle" | "footAngle"
>;

export type LimitInput = Pick<HangInput, "suspension" | "limits">;

/** Limits that rest on the straps alone: room between the trees, lengths, angles. */
export function strapOversteps(
  { suspension, limits }: LimitInput,
  straps: StrapFigures,
): readonly Overstep[] {
  const list = [atLeast("trees-too-close", "steeper", "spanM", straps.runM, 0)];
  for (const [end, lengthM, angle] of endsOf(straps)) {
    const length = `${end}.strapLengthM`;
    list.push(atLeast("sling-shortest", "steeper", length, lengthM, suspension.minM));
    if (suspension.maxM !== undefined) {
      list.push(atMost("sling-longest", "flatter", length, lengthM, suspension.maxM));
    }
    list.push(angleAtLeast(`${end}.angle`, angle, limits.angleMin));
    list.push(angleAtMost(`${end}.angle`, angle, limits.angleMax));
  }
  return list;
}

/** Limits on the heights of straps, seat and low point, and on the raise. */
export function heightOversteps(
  { limits }: LimitInput,
  { setting, figures }: Pick<HangTrial, "setting" | "figures">,
): readonly Overstep[] {
  const list: Overstep[] = [];
  for (const end of ["head", "foot"] as const) {
    const heightM = end === "head" ? setting.headHeightM : setting.footHeightM;
    const field = `${end}.strapHeightM`;
    if (limits.reachM !== undefined)
      list.push(atMost("strap-reach", "flatter", field, heightM, limits.reachM));
    if (limits.strapHeightMaxM !== undefined) {
      list.push(atMost("strap-height-cap", "flatter", field, heightM, limits.strapHeightMaxM));
    }
    list.push(atLeast("low-point-ground", "neither", field, heightM, limits.lowPointMinM));
  }
  list.push(atLeast("low-point-ground", "neither", "lowPointM", figures.lowPointM, limits.lowPointMinM));
  if (limits.lowPointMaxM !== undefined) {
    list.push(atMost("low-point-cap", "neither", "lowPointM", figures.lowPointM, limits.lowPointMaxM));
  }
  list.push(atLeast("seat-lowest", "neither", "seatHeightM", figures.seatHeightM, limits.seatHeightMinM));
  list.push(atMost("seat-highest", "neither", "seatHeightM", figures.seatHeightM, limits.seatHeightMaxM));
  list.push(atLeast("foot-raise-least", "neither", "footRaiseM", figures.footRaiseM, limits.footRaiseMinM));
  list.push(atMost("foot-raise-most", "neither", "footRaiseM", figures.footRaiseM, limits.footRaiseMaxM));
  return list;
}

/** Met within the slack on lengths, so that bounds are inclusive. */
export function isOver({ over }: Overstep): boolean {
  return !(over <= LENGTH_SLACK_M);
}

/** How far the limits that wish the same way are overstepped at most; −Infinity where there are none. */
export function worstOver(oversteps: readonly Overstep[], wish: Wish): number {
  return oversteps.reduce(
    (worst, step) => (step.wish === wish ? Math.max(worst, step.over) : worst),
    -Infinity,
  );
}

/** The oversteps as refusals, each limit of each field once. */
export function refusalsOf(oversteps: readonly Overstep[]): readonly Refusal[] {
  return oversteps.filter(isOver).map(({ limit, field, got, bound, wish }) => ({
    field,
    got: shown(field, got),
    need:
      limit === "trees-too-close" ? ROOM : `${sideOf(limit, wish)} ${shown(field, bound)} ${unitOf(field)}`,
    binds: limit,
  }));
}

function endsOf({ headStrapM, footStrapM, headAngle, footAngle }: StrapFigures) {
  return [
    ["head", headStrapM, headAngle],
    ["foot", footStrapM, footAngle],
  ] as const;
}

function atLeast(limit: Limit, wish: Wish, field: string, got: number, bound: number): Overstep {
  return { limit, wish, sense: -1, over: bound - got, field, got, bound };
}

function atMost(limit: Limit, wish: Wish, field: string, got: number, bound: number): Overstep {
  return { limit, wish, sense: 1, over: got - bound, field, got, bound };
}

function angleAtLeast(field: string, got: number, bound: number): Overstep {
  return { ...atLeast("angle-flattest", "steeper", field, got, bound), over: settled(bound - got) };
}

function angleAtMost(field: string, got: number, bound: number): Overstep {
  return { ...atMost("angle-steepest", "flatter", field, got, bound), over: settled(got - bound) };
}

/** A difference of angles counts as none below 1e-7 rad: it went through tangents. */
function settled(difference: number): number {
  return Math.abs(difference) < 1e-7 ? 0 : difference;
}

const AT_MOST: readonly Limit[] = [
  "sling-longest",
  "strap-reach",
  "strap-height-cap",
  "low-point-cap",
  "angle-steepest",
  "seat-highest",
  "foot-raise-most",
];

function sideOf(limit: Limit, wish: Wish): string {
  return wish === "flatter" || AT_MOST.includes(limit) ? "at most" : "at least";
}

function unitOf(field: string): string {
  return field.endsWith("angle") ? "degrees" : "m";
}

/** Of a span too short the room left at each end is told. */
const ROOM = "room for a strap at each end: more than 0 m between bark and hammock";

function shown(field: string, value: number): number {
  const plain = field.endsWith("angle") ? inDegrees(radians(value)) : value;
  return Math.round(plain * 1000) / 1000;
}
