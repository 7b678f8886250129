import type { CampPlaces } from "./camp-places-types.ts";
import { reversed } from "./bearing.ts";
import type { FitClass } from "./fit-classes.ts";
import type { HangDesk } from "./hang-desk.ts";
import { hardestPull, PULL_SLACK, type EndPull, type PullLimits } from "./pull-limits.ts";

export interface PullConflictsInput {
  readonly ground: Pick<CampPlaces, "anchors" | "places" | "conflicts">;
  readonly classes: readonly FitClass[];
  readonly allowed: readonly Uint8Array[];
  readonly desk: HangDesk;
  readonly limits: PullLimits;
  /** Hammocks that a tree may carry. */
  readonly hammocks: number;
}

/**
 * Places at one tree that would pull it too hard between them, as if whoever of those who may lie there pulls hardest
 * lay in each.
 *
 *   two hammocks at a tree       |p + q| ≤ F
 *   three or four                of each set whose |Σ p| > F, the two of it with the greatest |p + q| exclude each other
 *   more                         each two |p + q| ≤ 2 F / k,  so that  |Σ p| = |Σ over pairs (p + q)| / (k − 1) ≤ F
 *
 * p is a level vector towards the berth's other tree, F what the house or the trunk's mechanics bears; sums of sideways
 * pulls and of bending at the ground are held against their own limit. Sets in which some lie empty are sets too. Two of
 * which nobody knows the bearing add up.
 *
 * Shapes   places → pairs of their indices, lower first, sorted; only such as the ground does not exclude already; none
 *          where one hammock a tree is allowed
 * Units    N, N m
 * Holds    nobody hangs where they alone pull beyond the limit, so two with 120° or more between them are never too much
 * Error    on the safe side: where each two of three would do, one two of them is given up
 * Source   layout-search, house-rules (handbook/layout.md: pull at a tree)
 */
export function pullConflicts(input: PullConflictsInput): (readonly [number, number])[] {
  const { ground, hammocks } = input;
  if (hammocks < 2) return [];
  const hardest = hardestOf(input);
  const known = new Set(ground.conflicts.map(([a, b]) => pairKey(a, b, ground.places.length)));
  const together = (a: EndOf, b: EndOf): boolean =>
    !known.has(pairKey(Math.min(a.place, b.place), Math.max(a.place, b.place), ground.places.length));
  const [pullOf, mostOf] = [pullsWhenAsked(input), mostPulls(input, hardest)];
  const found: (readonly [number, number])[] = [];
  for (const list of placesAtTrees(ground)) {
    if (list.length < 2 || !mightBind(input, list, hardest)) continue;
    const task: TreeTask = { list, together, pullOf, mostOf, hammocks };
    found.push(...(hammocks === 2 || hammocks > MOST_IN_SETS ? pairsTooHard(task) : pairsOfSets(task)));
  }
  const each = new Map(found.map((pair) => [pairKey(...pair, ground.places.length), pair]));
  return [...each.values()].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
}

/** Hammocks at a tree up to which each set of them is looked at. */
const MOST_IN_SETS = 4;

function pairKey(a: number, b: number, places: number): number {
  return a * places + b;
}

interface TreeTask {
  readonly list: readonly EndOf[];
  /** Whether the ground lets both be used. */
  readonly together: (a: EndOf, b: EndOf) => boolean;
  readonly pullOf: (end: EndOf) => TreePull;
  /** No hang there pulls harder: known before any is worked out. */
  readonly mostOf: (end: EndOf) => TreePull;
  readonly hammocks: number;
}

function pairsTooHard({ list, together, pullOf, mostOf, hammocks }: TreeTask): (readonly [number, number])[] {
  return list.flatMap((one, index) =>
    list.slice(index + 1).flatMap((other) => {
      if (!together(one, other) || (hammocks === 2 && !mightBeTooMuch([one, other], mostOf))) return [];
      const pulls = [pullOf(one), pullOf(other)];
      return KINDS.some((kind) => isTooMuch(pulls, kind, 2 / hammocks))
        ? [[one.place, other.place] as const]
        : [];
    }),
  );
}

/** Of each set of two up to `hammocks` places that pulls too hard, the two that pull hardest between them. */
function pairsOfSets({ list, together, pullOf, mostOf, hammocks }: TreeTask): (readonly [number, number])[] {
  const found: (readonly [number, number])[] = [];
  const grow = (set: readonly EndOf[], from: number): void => {
    for (const [index, end] of list.entries()) {
      if (index < from || !set.every((other) => together(other, end))) continue;
      const larger = [...set, end];
      if (mightBeTooMuch(larger, mostOf)) {
        const pulls = larger.map(pullOf);
        for (const kind of KINDS) if (isTooMuch(pulls, kind, 1)) found.push(hardestPair(pulls, kind));
      }
      if (larger.length < hammocks) grow(larger, index + 1);
    }
  };
  grow([], 0);
  return found;
}

/** One end of a place. */
interface EndOf {
  readonly place: number;
  readonly end: 0 | 1;
  /** From the tree to the other one, clockwise from north [rad]; absent: nobody knows. */
  readonly towardsRad?: number;
}

function placesAtTrees({ anchors, places }: PullConflictsInput["ground"]): EndOf[][] {
  const atTree: EndOf[][] = anchors.map(() => []);
  for (const [place, there] of places.entries()) {
    const onwards = there.bearingRad;
    const [first, second] =
      onwards === undefined ? [{}, {}] : [{ towardsRad: onwards }, { towardsRad: reversed(onwards) }];
    atTree[there.first]?.push({ place, end: 0, ...first });
    atTree[there.second]?.push({ place, end: 1, ...second });
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
interface TreePull extends EndPull, EndOf {
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

/** The hardest hang at an end of a place, worked out once and only for ends that are asked for. */
function pullsWhenAsked(input: PullConflictsInput): (end: EndOf) => TreePull {
  const order = hardestFirst(input);
  const { desk, limits } = input;
  const known = new Map<number, readonly [EndPull, EndPull]>();
  return (at) => {
    const both = known.get(at.place) ?? hardestThere(input, at.place, order, desk);
    known.set(at.place, both);
    return { ...at, ...both[at.end], forceN: limits.forceN, bearsNm: limits.momentNm(at.place)[at.end] };
  };
}

function mostPulls({ limits }: PullConflictsInput, hardest: EndPull): (end: EndOf) => TreePull {
  return (at) => {
    const bearsNm = limits.momentNm(at.place)[at.end];
    return {
      ...at,
      sidewaysN: Math.min(hardest.sidewaysN, limits.forceN),
      momentNm: Math.min(hardest.momentNm, bearsNm),
      forceN: limits.forceN,
      bearsNm,
    };
  };
}

/** Over all who may lie there and alone do not pull too hard. */
function hardestThere(
  { allowed, limits }: PullConflictsInput,
  place: number,
  order: Order,
  desk: HangDesk,
): readonly [EndPull, EndPull] {
  let [first, second]: readonly [EndPull, EndPull] = [NO_PULL, NO_PULL];
  const bears = limits.momentNm(place);
  for (const { classIndex, most } of order) {
    if (allowed[classIndex]?.[place] !== 1) continue;
    if (isWithin(most, first) && isWithin(most, second)) continue;
    const pulls = desk.pullsAt(classIndex, place);
    if (pulls === undefined || pulls.some((pull, end) => isBeyond(pull, limits.forceN, bears[end]))) continue;
    [first, second] = [greaterOf(first, pulls[0]), greaterOf(second, pulls[1])];
  }
  return [first, second];
}

const NO_PULL: EndPull = { sidewaysN: 0, momentNm: 0 };

function isWithin(a: EndPull, b: EndPull): boolean {
  return a.sidewaysN <= b.sidewaysN && a.momentNm <= b.momentNm;
}

function isBeyond({ sidewaysN, momentNm }: EndPull, forceN: number, bearsNm = Infinity): boolean {
  return sidewaysN > forceN * (1 + PULL_SLACK) || momentNm > bearsNm * (1 + PULL_SLACK);
}

function greaterOf(a: EndPull, b: EndPull): EndPull {
  return { sidewaysN: Math.max(a.sidewaysN, b.sidewaysN), momentNm: Math.max(a.momentNm, b.momentNm) };
}

const KINDS = ["force", "moment"] as const;
type Kind = (typeof KINDS)[number];

function isTooMuch(pulls: readonly TreePull[], kind: Kind, share: number): boolean {
  const most = pulls.map(({ forceN, bearsNm }) => (kind === "force" ? forceN : bearsNm));
  return sumOf(pulls, kind) > share * Math.min(...most) * (1 + PULL_SLACK);
}

/** |Σ p|, by the cosines between each two. */
function sumOf(pulls: readonly TreePull[], kind: Kind): number {
  let square = 0;
  for (const [index, one] of pulls.entries()) {
    square += lengthOf(one, kind) * lengthOf(one, kind);
    for (const other of pulls.slice(index + 1)) {
      square += 2 * lengthOf(one, kind) * lengthOf(other, kind) * cosineBetween(one, other);
    }
  }
  return Math.sqrt(Math.max(0, square));
}

function lengthOf({ sidewaysN, momentNm }: EndPull, kind: Kind): number {
  return kind === "force" ? sidewaysN : momentNm;
}

function hardestPair(pulls: readonly TreePull[], kind: Kind): readonly [number, number] {
  let best: readonly [number, number] = [0, 0];
  let most = -Infinity;
  for (const [index, one] of pulls.entries()) {
    for (const other of pulls.slice(index + 1)) {
      const sum = sumOf([one, other], kind);
      if (sum <= most) continue;
      most = sum;
      best = [one.place, other.place];
    }
  }
  return best;
}

/**
 * Whether hangs that pull no harder than the most could pull too hard: |Σ p| is convex in their lengths, so it is longest
 * where each is at its most or nothing. One alone never is too much.
 */
function mightBeTooMuch(ends: readonly EndOf[], mostOf: (end: EndOf) => TreePull): boolean {
  return subsetsOf(ends.map(mostOf)).some(
    (pulls) => pulls.length > 1 && KINDS.some((kind) => isTooMuch(pulls, kind, 1)),
  );
}

function subsetsOf(pulls: readonly TreePull[]): readonly (readonly TreePull[])[] {
  return pulls.reduce<readonly (readonly TreePull[])[]>(
    (sets, pull) => [...sets, ...sets.map((set) => [...set, pull])],
    [[]],
  );
}

/** Rounded, so that it decides the same on every machine; 1 where nobody knows. */
function cosineBetween({ towardsRad: a }: EndOf, { towardsRad: b }: EndOf): number {
  if (a === undefined || b === undefined) return 1;
  return Math.round(Math.cos(a - b) * PER_TENTH_MILLIONTH) / PER_TENTH_MILLIONTH;
}

const PER_TENTH_MILLIONTH = 1e7;
