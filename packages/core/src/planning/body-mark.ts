import type { SourceKey } from "../outcome/source-key.ts";

export type BodyMarkKey =
  | "knee"
  | "hip"
  | "waist"
  | "elbow"
  | "chest"
  | "shoulder"
  | "chin"
  | "mouth"
  | "eyes"
  | "forehead"
  | "crown"
  | "fist-above-head"
  | "reach";

/** A height said as a place on a standing body. */
export interface BodyMark {
  readonly mark: BodyMarkKey;
  /** Height of that place on this person [m]. */
  readonly markM: number;
  /** The height that was asked for above the mark; negative: below it [m]. */
  readonly deviationM: number;
}

/**
 * The named place on a standing person nearest to a height. A fist above the head is a mark only where it is just right:
 * nobody finds what lies a hand's breadth off a fist, so else the crown and the reach are told.
 *
 *   mark height = share × stature
 *
 * Shapes   scalars in, one record out
 * Units    heightM, statureM [m]
 * Holds    every finite height; below the knee and above reach the deviation grows
 * Error    people differ from the shares by about 2 % of stature either way, and shoes add 2 to 3 cm
 * Source   each share names its own (handbook/planning.md)
 */
export function bodyMark(heightM: number, statureM: number): BodyMark {
  let best: BodyMark = markAt(BODY_MARKS[0], heightM, statureM);
  for (const share of BODY_MARKS) {
    const next = markAt(share, heightM, statureM);
    const isFound = next.mark !== "fist-above-head" || Math.abs(next.deviationM) < JUST_RIGHT_M;
    if (isFound && Math.abs(next.deviationM) < Math.abs(best.deviationM)) best = next;
  }
  return best;
}

/**
 * The mark of a height as hands are told it: both the height and what is left over the mark to 5 cm. All that is printed
 * or said of a mark comes from here, so that a height has one name everywhere.
 */
export function toldBodyMark(heightM: number, statureM: number): BodyMark {
  const nearest = bodyMark(toFiveCm(heightM), statureM);
  return { ...nearest, deviationM: toFiveCm(nearest.deviationM) };
}

function toFiveCm(lengthM: number): number {
  return Math.round(lengthM * 20) / 20;
}

/** Off by less than this a height told to 5 cm is told as the mark itself [m]. */
const JUST_RIGHT_M = 0.025;

interface MarkShare {
  readonly mark: BodyMarkKey;
  readonly ofStature: number;
  readonly source: SourceKey;
}

/** Heights of the marks as shares of stature, lowest first. */
export const BODY_MARKS: readonly [MarkShare, ...MarkShare[]] = [
  { mark: "knee", ofStature: 0.285, source: "drillis-contini-1966" },
  { mark: "hip", ofStature: 0.516, source: "ansur-ii" },
  { mark: "waist", ofStature: 0.6, source: "common-practice" },
  { mark: "elbow", ofStature: 0.63, source: "drillis-contini-1966" },
  { mark: "chest", ofStature: 0.72, source: "drillis-contini-1966" },
  { mark: "shoulder", ofStature: 0.82, source: "ansur-ii" },
  { mark: "chin", ofStature: 0.87, source: "drillis-contini-1966" },
  { mark: "mouth", ofStature: 0.895, source: "common-practice" },
  { mark: "eyes", ofStature: 0.936, source: "drillis-contini-1966" },
  { mark: "forehead", ofStature: 0.97, source: "common-practice" },
  { mark: "crown", ofStature: 1, source: "house-convention" },
  { mark: "fist-above-head", ofStature: 1.055, source: "common-practice" },
  { mark: "reach", ofStature: 1.2, source: "common-practice" },
];

function markAt({ mark, ofStature }: MarkShare, heightM: number, statureM: number): BodyMark {
  const markM = ofStature * statureM;
  return { mark, markM, deviationM: heightM - markM };
}
