import type { Ground } from "../plan/camp.ts";
import type { CampPlace } from "./camp-places-types.ts";

/**
 * The order in which berths are numbered: as one reads the map, in rows from the north, each from west to east; pairs
 * that are not on the map follow in the order of the camp file.
 *
 * Shapes   chosen places in any order → the same, as indices into the input, in reading order
 */
export function readingOrder(places: readonly CampPlace[], ground: Pick<Ground, "pairs">): number[] {
  const north = places.reduce((most, { middle }) => Math.max(most, middle?.[1] ?? -Infinity), -Infinity);
  const rank = new Map(ground.pairs.map(({ id }, index) => [id, index]));
  const keys = places.map(({ middle, pair }, index): readonly [number, number, number] =>
    middle === undefined
      ? [Infinity, rank.get(pair ?? "") ?? Infinity, index]
      : [Math.floor((north - middle[1]) / ROW_M), middle[0], index],
  );
  return keys.sort(byKey).map(([, , index]) => index);
}

/** Depth of a row on the ground [m]. Source: house-convention, about two berths. */
const ROW_M = 8;

function byKey(a: readonly [number, number, number], b: readonly [number, number, number]): number {
  if (a[0] !== b[0]) return a[0] < b[0] ? -1 : 1;
  if (a[1] !== b[1]) return a[1] < b[1] ? -1 : 1;
  return a[2] - b[2];
}
