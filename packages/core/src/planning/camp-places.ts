import type { Ground, StatedPair } from "../plan/camp.ts";
import type { HouseRules } from "../plan/house-rules.ts";
import { withoutBarredSpecies } from "./barred-species.ts";
import type { Anchor, CampPlace, CampPlaces } from "./camp-places-types.ts";
import { mapPlaces } from "./map-places.ts";
import { byCodeUnit } from "./order.ts";
import { spokeConflicts } from "./spoke-conflicts.ts";
import {
  fitsRules,
  statedPlace,
  tagsOffMap,
  TreeNames,
  unsoundAnchors,
  usableTags,
  type StatedPlace,
} from "./stated-places.ts";

/**
 * Every pair of trees that serves by the ground alone: of the map, and of the pairs stated by tag and distance.
 *
 * A stated pair whose trees both stand on the map is that pair of the map, with the span, fall and look that were
 * stated; where the map has no such place (blocked, out of range), stating the pair does not make one. A tag that is
 * on the map is that tree, so it carries no more hammocks than the rule allows, whoever names it.
 *
 * Shapes   trees, pairs in any order → anchors sorted by id, places by (first, second)
 * Units    metres, radians
 * Holds    neither trees nor pairs: no places
 * Source   layout-search (handbook/planning.md), house-rules
 */
export function campPlaces(surveyed: Ground, rules: HouseRules): CampPlaces {
  const ground = withoutBarredSpecies(surveyed, rules);
  const found = placesOn(ground, rules);
  if (rules.noSpokes?.value !== true) return found;
  return { ...found, conflicts: mergedPairs(found.conflicts, spokeConflicts(found.places)) };
}

function placesOn(ground: Ground, rules: HouseRules): CampPlaces {
  const map = mapPlaces(ground, rules);
  if (ground.pairs.length === 0) return map;
  const names = new TreeNames(ground.trees);
  const tags = tagsOffMap(ground, names).map((id) => ({ id }));
  const anchors: readonly Anchor[] = [...map.anchors, ...tags].sort((a, b) => byCodeUnit(a.id, b.id));
  const indexOf = new Map(anchors.map(({ id }, index) => [id, index]));
  const stated = ground.pairs.map((pair) => statedPlace(pair, names, indexOf));
  const unsound = unsoundAnchors(stated);
  const fitting = stated.filter((one) => fitsRules(one, rules) && !touches(one.place, unsound));
  const offMap = fitting.filter(isOffMap);
  const entries = [
    ...restated(map, indexOf, fitting).filter(
      ({ place }) => !touches(place, unsound) && !isBarred(place, stated),
    ),
    ...offMap.map(({ place }) => ({ place, mapIndex: -1 })),
  ].sort(inOrder);
  return {
    anchors,
    places: entries.map(({ place }) => place),
    conflicts: allConflicts(entries, map.conflicts, ground.pairs),
    blocked: map.blocked,
    funnel: {
      trees: anchors.length,
      usable: map.funnel.usable + usableTags(stated, rules),
      pairs: map.funnel.pairs + offMap.length,
      blockedBy: map.funnel.blockedBy,
    },
  };
}

type Pairs = readonly (readonly [number, number])[];

/** Pairs of both lists, each once, sorted. */
export function mergedPairs(one: Pairs, other: Pairs): Pairs {
  const byKey = new Map([...one, ...other].map((pair) => [pair.join(" "), pair]));
  return [...byKey.values()].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
}

interface Entry {
  readonly place: CampPlace;
  /** Index among the places of the map; −1 for a pair that is not on it. */
  readonly mapIndex: number;
}

function touches({ first, second }: CampPlace, anchors: ReadonlySet<number>): boolean {
  return anchors.has(first) || anchors.has(second);
}

/** Whether somebody states this very pair of the map not to be used. */
function isBarred({ first, second }: CampPlace, stated: readonly StatedPlace[]): boolean {
  return stated.some(({ place, use }) => !use && place.first === first && place.second === second);
}

function isOffMap({ trees }: StatedPlace): boolean {
  return trees.includes(undefined);
}

/** The places of the map under their new indices, each as a stated pair says it where one does. */
function restated(
  map: CampPlaces,
  indexOf: ReadonlyMap<string, number>,
  fitting: readonly StatedPlace[],
): Entry[] {
  const onMap = fitting.filter((one) => !isOffMap(one));
  const said = new Map(onMap.map(({ place }) => [`${place.first} ${place.second}`, place]));
  const to = (index: number): number => indexOf.get(map.anchors[index]?.id ?? "") ?? -1;
  return map.places.map((place, mapIndex) => {
    const [first, second] = [to(place.first), to(place.second)];
    return { place: { ...place, first, second, ...said.get(`${first} ${second}`) }, mapIndex };
  });
}

function inOrder({ place: a }: Entry, { place: b }: Entry): number {
  return a.first - b.first || a.second - b.second || byCodeUnit(a.pair ?? "", b.pair ?? "");
}

/** The map's overlaps, the pairs stated as too near each other, and places on the same two trees. */
function allConflicts(
  entries: readonly Entry[],
  mapped: CampPlaces["conflicts"],
  pairs: readonly StatedPair[],
): (readonly [number, number])[] {
  const fromMap = new Map(entries.map(({ mapIndex }, index) => [mapIndex, index]));
  const ofPair = new Map(entries.map(({ place }, index) => [place.pair, index]));
  const found = new Map<string, readonly [number, number]>();
  const add = (a: number | undefined, b: number | undefined): void => {
    if (a === undefined || b === undefined || a === b) return;
    const both = [Math.min(a, b), Math.max(a, b)] as const;
    found.set(both.join(" "), both);
  };
  mapped.forEach(([a, b]) => add(fromMap.get(a), fromMap.get(b)));
  pairs.forEach(({ id, tooNear }) => tooNear.forEach((other) => add(ofPair.get(id), ofPair.get(other))));
  entries.forEach(({ place }, index) => {
    for (let next = index + 1; next < entries.length; next++) {
      const other = entries[next]?.place;
      if (other?.first !== place.first || other.second !== place.second) break;
      add(index, next);
    }
  });
  return [...found.values()].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
}
