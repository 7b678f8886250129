import type { Plan } from "@nightspan/core";

export type TreePair = readonly [string, string];

/**
 * Pairs of trees that somebody asked for or nearly had, and that will not do: wishes that could not be kept, and the
 * nearest pairs of those who have no berth. Each once; a pair that carries a berth is not among them.
 */
export function refusedPairs({ pinsRefused = [], unplaced, berths }: Plan): readonly TreePair[] {
  const all = [...pinsRefused, ...unplaced.flatMap(({ pairs = [] }) => pairs)].map(({ trees }) => trees);
  const seen = new Set(berths.map(({ headTree, footTree }) => key([headTree, footTree])));
  return all.filter((trees) => {
    const known = seen.has(key(trees));
    seen.add(key(trees));
    return !known;
  });
}

function key([first, second]: TreePair): string {
  return JSON.stringify(first < second ? [first, second] : [second, first]);
}
