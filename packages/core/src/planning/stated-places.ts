import type { Ground, StatedPair } from "../plan/camp.ts";
import type { HouseRules } from "../plan/house-rules.ts";
import { LENGTH_SLACK_M } from "../quantity/constants.ts";
import { STEPPED_SPAN_ERROR_RATIO, USUAL_ERRORS } from "../statics/hang-errors.ts";
import type { Tree, TreeCondition } from "../site/tree.ts";
import { isUsableTree } from "../site/usable-tree.ts";
import type { CampPlace } from "./camp-places-types.ts";
import { reversed } from "./bearing.ts";

/** A stated pair as a place, and the trees of the map that it names, first before second. */
export interface StatedPlace {
  readonly place: CampPlace;
  readonly trees: Ends<Tree | undefined>;
  /** Whether somebody says that the pair may be used, and the health of its trees as stated with it. */
  readonly use: boolean;
  readonly conditions: Ends<TreeCondition>;
}

type Ends<T> = readonly [first: T, second: T];

/** The trees of the map by tag, else by id. */
export class TreeNames {
  private readonly byTag: ReadonlyMap<string, Tree>;
  private readonly byId: ReadonlyMap<string, Tree>;

  constructor(trees: readonly Tree[]) {
    this.byTag = new Map(trees.map((tree) => [tree.tag, tree]));
    this.byId = new Map(trees.map((tree) => [tree.id, tree]));
  }

  find(name: string): Tree | undefined {
    return this.byTag.get(name) ?? this.byId.get(name);
  }
}

/** Tags of stated pairs that are not on the map, each once. */
export function tagsOffMap(ground: Ground, names: TreeNames): string[] {
  const tags = ground.pairs.flatMap(({ trees }) => trees);
  return [...new Set(tags.filter((tag) => names.find(tag) === undefined))];
}

/** Turns a stated pair so that its trees stand in the order of their ids. `indexOf`: anchor ids → indices. */
export function statedPlace(
  pair: StatedPair,
  names: TreeNames,
  indexOf: ReadonlyMap<string, number>,
): StatedPlace {
  const found: Ends<Tree | undefined> = [names.find(pair.trees[0]), names.find(pair.trees[1])];
  const index = (end: 0 | 1): number => indexOf.get(found[end]?.id ?? pair.trees[end]) ?? -1;
  const isTurned = index(0) > index(1);
  const turned = <T>([a, b]: Ends<T>): Ends<T> => (isTurned ? [b, a] : [a, b]);
  const trees = turned(found);
  const stated = turned(pair.dbhM);
  const [first, second] = turned([index(0), index(1)]);
  const { fallM, bearingRad, lookedAt } = pair;
  const place: CampPlace = {
    first,
    second,
    spanM: pair.spanM,
    spanErrorM: pair.stepped ? STEPPED_SPAN_ERROR_RATIO * pair.spanM : USUAL_ERRORS.spanM,
    dbhM: [trees[0]?.dbhM ?? stated[0], trees[1]?.dbhM ?? stated[1]],
    dbhAssumed: pair.dbhAssumed && trees.includes(undefined),
    ...(fallM === undefined ? {} : { fallM: isTurned ? -fallM : fallM }),
    ...(bearingRad === undefined ? {} : { bearingRad: isTurned ? reversed(bearingRad) : bearingRad }),
    pair: pair.id,
    stepItOut: false,
    stepped: pair.stepped,
    ...(lookedAt === undefined ? {} : { lookedAt }),
  };
  return { place, trees, use: pair.use ?? true, conditions: turned(pair.conditions ?? UNKNOWN) };
}

/** A pair of which nobody says how its trees are. */
const UNKNOWN = ["not-looked-at", "not-looked-at"] as const;

/** Whether a stated pair serves by the house rules: span in range, trunks stout, trees sound and allowed. */
export function fitsRules({ place, trees, use, conditions }: StatedPlace, rules: HouseRules): boolean {
  const { first, second, spanM } = place;
  const inRange =
    spanM >= rules.spanMinM.value - LENGTH_SLACK_M && spanM <= rules.spanMaxM.value + LENGTH_SLACK_M;
  const sound = trees.every((tree) => tree === undefined || isUsableTree(tree, rules.trunkMinM.value));
  const stated = use && conditions.every(isSound);
  return (
    first !== second && inRange && sound && stated && isStout(place, 0, rules) && isStout(place, 1, rules)
  );
}

/** How many trees known by tag alone are stout enough and not called doubtful or dead, each counted once. */
export function usableTags(stated: readonly StatedPlace[], rules: HouseRules): number {
  const usable = new Set<number>();
  const bad = new Set<number>();
  for (const { place, trees, conditions } of stated) {
    for (const end of [0, 1] as const) {
      const anchor = end === 0 ? place.first : place.second;
      if (trees[end] !== undefined || !isStout(place, end, rules)) continue;
      (isSound(conditions[end]) ? usable : bad).add(anchor);
    }
  }
  return [...usable].filter((anchor) => !bad.has(anchor)).length;
}

function isSound(condition: TreeCondition): boolean {
  return condition !== "doubtful" && condition !== "dead";
}

/** Anchors of trees that somebody calls doubtful or dead with any of their pairs: none of their pairs serves. */
export function unsoundAnchors(stated: readonly StatedPlace[]): ReadonlySet<number> {
  return new Set(
    stated.flatMap(({ place, conditions }) => [
      ...(isSound(conditions[0]) ? [] : [place.first]),
      ...(isSound(conditions[1]) ? [] : [place.second]),
    ]),
  );
}

/** An assumed trunk is not refused for its size: nobody measured it, and the berth says so. */
function isStout(place: CampPlace, end: 0 | 1, rules: HouseRules): boolean {
  return place.dbhAssumed || place.dbhM[end] >= rules.trunkMinM.value - LENGTH_SLACK_M;
}
