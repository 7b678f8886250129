import type { HouseRules } from "../plan/house-rules.ts";
import { GRAVITY_M_S2 } from "../quantity/constants.ts";
import type { Hang } from "../statics/hang-types.ts";
import type { CampPlace, CampPlaces } from "./camp-places-types.ts";
import type { FitClass } from "./fit-classes.ts";
import { mostMomentNm } from "./findings/trunk.ts";
import { headIsSecond } from "./hang-request.ts";

/** How hard the tree at either end of a place may be pulled: by the house, and by what its trunk bears. */
export interface PullLimits {
  /** Sideways, over all hammocks at a tree [N]; Infinity where nobody caps it. */
  readonly forceN: number;
  /** Bending at the ground at either end of each place [N m]; Infinity for a trunk nobody measured. */
  readonly momentNm: (place: number) => readonly [first: number, second: number];
}

/** What one hang does to the trees of its place. */
export interface EndPull {
  readonly sidewaysN: number;
  readonly momentNm: number;
}

export function pullLimits(
  { places, anchors }: Pick<CampPlaces, "places" | "anchors">,
  { treePullMaxN }: HouseRules,
): PullLimits {
  const ends = places.map((place) => {
    const most = (end: 0 | 1): number => {
      const tree = anchors[end === 0 ? place.first : place.second]?.tree;
      return tree === undefined && place.dbhAssumed ? Infinity : mostMomentNm(tree, place.dbhM[end]);
    };
    return [most(0), most(1)] as const;
  });
  return {
    forceN: treePullMaxN?.value ?? Infinity,
    momentNm: (place) => ends[place] ?? [Infinity, Infinity],
  };
}

/** What a hang does at the first and at the second tree of its place. */
export function endPulls(
  place: CampPlace,
  { head, foot }: Readonly<Record<"head" | "foot", StrapPull>>,
): readonly [EndPull, EndPull] {
  const [first, second] = headIsSecond(place) ? [foot, head] : [head, foot];
  return [endPull(first), endPull(second)];
}

type StrapPull = Pick<Hang["head"], "sidewaysN" | "strapHeightM">;

function endPull({ sidewaysN, strapHeightM }: StrapPull): EndPull {
  return { sidewaysN, momentNm: sidewaysN * strapHeightM };
}

/**
 * No hang of a class pulls harder, wherever it is: both straps hang at the flattest angle allowed, as high as allowed.
 *
 *   sideways ≤ weight / (2 tan α), as sideways · (tan α₁ + tan α₂) = weight
 */
export function hardestPull({ members: [kit], limits }: FitClass): EndPull {
  const massKg = kit.sleeper.massKg + (kit.hammock.massKg ?? 0) + UNCOUNTED_KG;
  const sidewaysN = (massKg * GRAVITY_M_S2) / (2 * Math.tan(limits.angleMin));
  const heightM = Math.min(limits.reachM ?? Infinity, limits.strapHeightMaxM ?? Infinity);
  return { sidewaysN, momentNm: sidewaysN * heightM };
}

/** Straps, slings and an assumed hammock's own weight are in the hang and not in this sum; more than they weigh. */
const UNCOUNTED_KG = 5;

/** Relative, so that a limit is kept by who meets it exactly. */
export const PULL_SLACK = 1e-9;
