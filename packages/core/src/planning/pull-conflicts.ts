import type { CampPlace, CampPlaces } from "./camp-places-types.ts";
import { reversed } from "./bearing.ts";
import type { FitClass } from "./fit-classes.ts";
import type { HangDesk } from "./hang-desk.ts";
import { hardestPull, PULL_SLACK, type EndPull, type PullLimits } from "./pull-limits.ts";

export interface PullConflictsInput {
  readonly ground: Pick<CampPlaces, "anchors" | "places">;
  readonly classes: readonly FitClass[];
  readonly allowed: readonly Uint8Array[];
  readonly desk: HangDesk;
  readonly limits: PullLimits;
  /** Hammocks that a tree may carry. */
  readonly hammocks: number;
}

/**
 * Places at one tree that would pull it too hard between them, as if whoever of those who may lie there pulls hardest
 * lay in both.
 *
 *   two hammocks at a tree       |p + q| ≤ F
 *   k at a tree, each two        |p + q| ≤ 2 F / k,  so that  |Σ p| = |Σ over pairs (p + q)| / (k − 1) ≤ F
 *
 * p is a level vector towards the berth's other tree, F what the house or the trunk's mechanics bears; sums of sideways
 * pulls and of bending at the ground are held against their own limit. Two of which nobody knows the bearing add up.
 *
 * Shapes   places → pairs of their indices, lower first, sorted; none where one hammock a tree is allowed
 * Units    N, N m
 * Error    on the safe side for three and more, by no more than the angle between them costs
 * Source   layout-search, house-rules (handbook/layout.md: pull at a tree)
 */
export function pullConflicts(input: PullConflictsInput): (readonly [number, number])[] {
  const { ground, hammocks } = input;
  if (hammocks < 2) return [];
  const hardest = hardestOf(input);
  const order = hardestFirst(input);
  const found: (readonly [number, number])[] = [];
  for (const list of placesAtTrees(ground)) {
    if (list.length < 2 || !mightBind(input, list, hardest)) continue;
    const pulls = list.map((at) => vectorsOf(input, at, order));
    for (const [index, one] of pulls.entries()) {
      for (const other of pulls.slice(index + 1)) {
        if (isTooMuch(one, other, 2 / Math.max(2, hammocks))) found.push([one.place, other.place]);
      }
    }
  }
  return found.sort((a, b) => a[0] - b[0] || a[1] - b[1]);
}

/** One end of a place. */
interface EndOf {
  readonly place: number;
  readonly end: 0 | 1;
}

function placesAtTrees({ anchors, places }: PullConflictsInput["ground"]): EndOf[][] {
  const atTree: EndOf[][] = anchors.map(() => []);
  for (const [place, { first, second }] of places.entries()) {
    atTree[first]?.push({ place, end: 0 });
    atTree[second]?.push({ place, end: 1 });
  }
  return atTree;
}

function hardestOf({ classes }: PullConflictsInput): EndPull {
  const all = classes.map(hardestPull);
  return {
    sidewaysN: all.reduce((most, { sidewaysN }) => Math.max(most, sidewaysN), 0),
    momentNm: all.reduce((most, { momentNm }) => Math.max(most, momentNm), 0),
  };
}

/** Most trees bear far more than so many of the heaviest: nothing is worked out for them. */
function mightBind(
  { limits, hammocks }: PullConflictsInput,
  list: readonly EndOf[],
  hardest: EndPull,
): boolean {
  const bears = list.reduce(
    (least, { place, end }) => Math.min(least, limits.momentNm(place)[end]),
    Infinity,
  );
  return hammocks * hardest.sidewaysN > limits.forceN || hammocks * hardest.momentNm > bears;
}

/** What the hardest hang at a place does to its tree, and what the tree bears. */
interface TreePull extends EndPull {
  readonly place: number;
  /** From the tree to the other one, clockwise from north [rad]; absent: nobody knows. */
  readonly towardsRad?: number;
  readonly forceN: number;
  readonly bearsNm: number;
}

/** Classes that may pull hardest first, with the most that each may pull. */
type Order = readonly { readonly classIndex: number; readonly most: EndPull }[];

function hardestFirst({ classes }: PullConflictsInput): Order {
  return classes
    .map((fit, classIndex) => ({ classIndex, most: hardestPull(fit) }))
    .sort((a, b) => b.most.sidewaysN - a.most.sidewaysN || a.classIndex - b.classIndex);
}

function vectorsOf(
  { ground, allowed, desk, limits }: PullConflictsInput,
  { place, end }: EndOf,
  order: Order,
): TreePull {
  const there = ground.places[place];
  let [sidewaysN, momentNm] = [0, 0];
  for (const { classIndex, most } of order) {
    if (there === undefined || allowed[classIndex]?.[place] !== 1) continue;
    if (most.sidewaysN <= sidewaysN && most.momentNm <= momentNm) continue;
    const pull = desk.pullsAt(classIndex, place)?.[end];
    if (pull === undefined) continue;
    sidewaysN = Math.max(sidewaysN, pull.sidewaysN);
    momentNm = Math.max(momentNm, pull.momentNm);
  }
  const towardsRad = there === undefined ? undefined : bearingFrom(there, end);
  const bears = { forceN: limits.forceN, bearsNm: limits.momentNm(place)[end] };
  return { place, sidewaysN, momentNm, ...bears, ...(towardsRad === undefined ? {} : { towardsRad }) };
}

function bearingFrom({ bearingRad }: CampPlace, end: 0 | 1): number | undefined {
  return bearingRad === undefined || end === 0 ? bearingRad : reversed(bearingRad);
}

function isTooMuch(a: TreePull, b: TreePull, share: number): boolean {
  const cosine = cosineBetween(a, b);
  const length = (p: number, q: number): number => Math.sqrt(p * p + q * q + 2 * p * q * cosine);
  const force = share * Math.min(a.forceN, b.forceN);
  const moment = share * Math.min(a.bearsNm, b.bearsNm);
  return (
    length(a.sidewaysN, b.sidewaysN) > force * (1 + PULL_SLACK) ||
    length(a.momentNm, b.momentNm) > moment * (1 + PULL_SLACK)
  );
}

/** Rounded, so that it decides the same on every machine; 1 where nobody knows. */
function cosineBetween({ towardsRad: a }: TreePull, { towardsRad: b }: TreePull): number {
  if (a === undefined || b === undefined) return 1;
  return Math.round(Math.cos(a - b) * PER_TENTH_MILLIONTH) / PER_TENTH_MILLIONTH;
}

const PER_TENTH_MILLIONTH = 1e7;
