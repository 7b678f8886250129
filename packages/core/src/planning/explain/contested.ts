import type { Plan } from "../../plan/plan.ts";
import { byCodeUnit } from "../order.ts";
import type { PreparedCamp } from "../prepare-camp.ts";

/** The places about which somebody without a berth and those who have one are at odds. */
export interface Contested {
  /** Sorted. */
  readonly places: readonly number[];
  /** Those of them that carry a berth of the plan, sorted. */
  readonly taken: readonly number[];
}

/**
 * From the people without a berth outwards: the places that would serve them, the berths that stand in the way of
 * those, the other places that would serve whoever lies there, and so on until nothing is added.
 *
 * Nobody of these people can have any other place, so as many as lie here now is most only if the places say so.
 *
 * Holds    a plan of this camp; nothing is contested where no pair serves those without a berth
 * Source   layout-search (handbook/planning.md: what limits it)
 */
export function contestedPlaces(prepared: PreparedCamp, plan: Plan): Contested {
  const { ground, classes, allowed } = prepared;
  const classOf = new Map(
    classes.flatMap(({ members }, index) => members.map(({ sleeper }) => [sleeper.id, index] as const)),
  );
  const lying = takenPlaces(prepared, plan);
  // Those who keep a pinned place are out of the question.
  for (const { place } of prepared.pinned) lying.delete(place);
  const hinders = hindering(prepared);
  const inPlaces = new Set<number>();
  const inClasses = new Set<number>();
  const queue = plan.unplaced.flatMap(({ sleeper }) => classOf.get(sleeper) ?? []);
  const add = (place: number): void => {
    if (inPlaces.has(place)) return;
    inPlaces.add(place);
    const sleeper = lying.get(place);
    if (sleeper !== undefined) queue.push(classOf.get(sleeper) ?? -1);
    for (const other of hinders(place)) if (lying.has(other)) add(other);
  };
  for (let at = 0; at < queue.length; at++) {
    const classIndex = queue[at] ?? -1;
    if (classIndex < 0 || inClasses.has(classIndex)) continue;
    inClasses.add(classIndex);
    ground.places.forEach((_, place) => {
      if (allowed[classIndex]?.[place] === 1) add(place);
    });
  }
  const places = [...inPlaces].sort((a, b) => a - b);
  return { places, taken: places.filter((place) => lying.has(place)) };
}

/** Who lies at which place of the camp. */
export function takenPlaces({ ground }: PreparedCamp, { berths }: Plan): Map<number, string> {
  const keyOf = (trees: readonly string[], pair = ""): string =>
    JSON.stringify([...[...trees].sort(byCodeUnit), pair]);
  const placeOf = new Map(
    ground.places.map(({ first, second, pair }, place) => [
      keyOf([ground.anchors[first]?.id ?? "", ground.anchors[second]?.id ?? ""], pair),
      place,
    ]),
  );
  return new Map(
    berths.flatMap(({ headTree, footTree, pair, sleeper }) => {
      const place = placeOf.get(keyOf([headTree, footTree], pair));
      return place === undefined ? [] : [[place, sleeper] as const];
    }),
  );
}

/** Places that overlap with one, or share a tree with it. */
function hindering({ ground }: PreparedCamp): (place: number) => Iterable<number> {
  const overlaps = ground.places.map((): number[] => []);
  for (const [a, b] of ground.conflicts) {
    overlaps[a]?.push(b);
    overlaps[b]?.push(a);
  }
  const atTree = ground.anchors.map((): number[] => []);
  ground.places.forEach(({ first, second }, place) => {
    atTree[first]?.push(place);
    atTree[second]?.push(place);
  });
  return (place) => {
    const { first = -1, second = -1 } = ground.places[place] ?? {};
    return [...(overlaps[place] ?? []), ...(atTree[first] ?? []), ...(atTree[second] ?? [])];
  };
}
