import { degrees } from "../../quantity/angle.ts";
import type { AsHung, UnsureQuantity } from "./adjust-types.ts";
import type { Come, HungModel } from "./hung-model.ts";

/** One thing that was found: what it is, how sure, and where the model says the same. */
export interface Evidence {
  readonly found: number;
  /** One standard deviation, in the unit of `found`. */
  readonly error: number;
  readonly said: (come: Come) => number;
  /** Where it was measured, not felt. */
  readonly of?: UnsureQuantity | "spanM";
}

/** All that was found, as numbers; feelings count as numbers with a wide error. */
export function evidenceOf(measured: AsHung, model: HungModel): Evidence[] {
  const { head, foot } = measured;
  return [
    ...number(measured.spanM, 0.03, ({ state }) => state.spanM, "spanM"),
    ...number(head?.strapHeightM, 0.02, ({ state }) => state.head.strapHeightM),
    ...number(foot?.strapHeightM, 0.02, ({ state }) => state.foot.strapHeightM),
    ...number(head?.angle, ANGLE_ERROR, ({ state }) => state.head.angle, "head.angle"),
    ...number(foot?.angle, ANGLE_ERROR, ({ state }) => state.foot.angle, "foot.angle"),
    ...number(measured.seatHeightM, 0.015, ({ state }) => state.seatHeightM, "seatHeightM"),
    ...number(measured.footRaiseM, 0.025, ({ state }) => state.footRaiseM, "footRaiseM"),
    ...feeling(measured.ridgeline, RIDGELINE, ({ ridgeN }) => ridgeN / model.weightN),
    ...feeling(measured.slides, SLIDES, ({ state }) => state.footRaiseM),
    ...feeling(measured.sits, SITS, ({ state }) => state.seatHeightM - model.planned.state.seatHeightM),
    ...lying(measured, model),
  ];
}

type Feeling = readonly [middle: number, error: number];

/** Pull of the ridgeline over the hung weight, by its feel. Source: common-practice; the pulls derived in statics. */
const RIDGELINE = { slack: [0, 0.1], bends: [0.25, 0.15], tight: [0.6, 0.25] } as const;

/** Foot raise by which way people say they slide [m]. Source: common-practice. */
const SLIDES = { "to-foot": [0.03, 0.08], no: [0.2, 0.08], "to-head": [0.37, 0.08] } as const;

/** Seat against the planned seat by how people come to sit [m]. Source: common-practice. */
const SITS = { "too-low": [-0.1, 0.06], well: [0, 0.04], "too-high": [0.1, 0.06] } as const;

/**
 * How much nearer the gathers are than planned for whose knees are strained, and farther for whose shoulders are
 * squeezed, over the length of the cloth. The lie feels the straps through the distance of the gathers alone, so behind
 * a taut ridgeline these say nothing of the straps. 0.04 is about 6° of fold. Source: common-practice; hang-chain.
 */
const KNEES_STRAINED = [-0.04, 0.03] as const;
const SHOULDERS_SQUEEZED = [0.03, 0.03] as const;

/** A phone or a folded card along the strap. Source: common-practice. */
const ANGLE_ERROR = degrees(2);

function number(
  found: number | undefined,
  error: number,
  said: Evidence["said"],
  of?: Evidence["of"],
): Evidence[] {
  if (found === undefined) return [];
  return [{ found, error, said, ...(of === undefined ? {} : { of }) }];
}

function feeling<K extends string>(
  felt: K | undefined,
  table: Readonly<Record<K, Feeling>>,
  said: (come: Come) => number,
): Evidence[] {
  if (felt === undefined) return [];
  const [found, error] = table[felt];
  return [{ found, error, said }];
}

/** Easy knees and easy shoulders say nothing: most hangs are easy on both. */
function lying({ knees, shoulders }: AsHung, { planned, request }: HungModel): Evidence[] {
  const apart = ({ gatherM }: Come): number => (gatherM - planned.gatherM) / request.hammock.lengthM;
  return [
    ...(knees === "strained" ? feeling("strained", { strained: KNEES_STRAINED }, apart) : []),
    ...(shoulders === "squeezed" ? feeling("squeezed", { squeezed: SHOULDERS_SQUEEZED }, apart) : []),
  ];
}

export function meanAngle({ state }: Come): number {
  return (state.head.angle + state.foot.angle) / 2;
}
