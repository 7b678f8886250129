import type { BerthSearch, BerthSearchInput } from "./berth-search-types.ts";
import type { DealBlock } from "./choose-berths-people.ts";

/** Somebody at a place that is theirs whatever else moves. */
interface Kept {
  readonly place: number;
}

/**
 * The search with those who keep their places in it: each a class of one at that place alone, so that a group gathers
 * round them, or has its hub there.
 */
export function besidePinned(
  search: BerthSearchInput,
  base: BerthSearch,
  pinned: readonly Kept[],
  costUnits: Float64Array,
): { readonly search: BerthSearchInput; readonly base: BerthSearch } {
  if (pinned.length === 0) return { search, base };
  const capacities = search.capacities?.slice() ?? new Int32Array(search.trees).fill(search.capacity);
  for (const { place } of pinned) {
    const { first = -1, second = -1 } = search.places[place] ?? {};
    for (const tree of [first, second]) capacities[tree] = (capacities[tree] ?? 0) + 1;
  }
  const costOf = (place: number): number => costUnits[place] ?? 0;
  const own = pinned.map(({ place }) => {
    const only = new Float64Array(search.places.length).fill(-1);
    only[place] = costOf(place);
    return { people: 1, costUnits: only };
  });
  const units = pinned.reduce((sum, { place }) => sum + costOf(place), 0);
  const seats = pinned.map(({ place }, index) => ({ place, classIndex: search.classes.length + index }));
  return {
    search: { ...search, capacities, classes: [...search.classes, ...own] },
    base: {
      ...base,
      placed: base.placed + pinned.length,
      bound: base.bound + pinned.length,
      costUnits: base.costUnits + units,
      lowerBoundUnits: base.lowerBoundUnits + units,
      chosen: [...base.chosen, ...seats].sort((a, b) => a.place - b.place),
    },
  };
}

/** The blocks of those who look for a berth: the first so many claimants. */
export function withoutPinned(
  blocks: readonly DealBlock[],
  people: number,
  pinned: readonly Kept[],
): DealBlock[] {
  const taken = new Set(pinned.map(({ place }) => place));
  return blocks.map((block) => ({
    ...block,
    people: block.people.filter((person) => person < people),
    places: block.places.filter((place) => !taken.has(place)),
  }));
}
