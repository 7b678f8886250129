import type { CampPlace } from "./camp-places-types.ts";

/**
 * Pairs of places that would hang like the spokes of a wheel: at one tree, less than 120° between them. At 120° and
 * more two alike pulls add up to no more than one of them.
 *
 *   spokes where cos(angle between the ways from the tree) > −1/2
 *
 * Shapes   places → pairs of their indices, lower first, sorted
 * Holds    two at one tree of which nobody knows the bearing count as spokes
 * Source   house-rules
 */
export function spokeConflicts(places: readonly CampPlace[]): (readonly [number, number])[] {
  const atTree = new Map<number, number[]>();
  for (const [index, { first, second }] of places.entries()) {
    for (const tree of [first, second]) {
      const list = atTree.get(tree);
      if (list === undefined) atTree.set(tree, [index]);
      else list.push(index);
    }
  }
  const found: (readonly [number, number])[] = [];
  for (const [tree, list] of atTree) {
    for (const [at, a] of list.entries()) {
      for (const b of list.slice(at + 1)) if (areSpokes(places[a], places[b], tree)) found.push([a, b]);
    }
  }
  return found.sort((a, b) => a[0] - b[0] || a[1] - b[1]);
}

function areSpokes(a: CampPlace | undefined, b: CampPlace | undefined, tree: number): boolean {
  if (a?.bearingRad === undefined || b?.bearingRad === undefined) return true;
  const turned = (a.first === tree) === (b.first === tree) ? 1 : -1;
  const cosine = turned * Math.cos(a.bearingRad - b.bearingRad);
  // Rounded, so that it decides the same on every machine.
  return Math.round(cosine * PER_TENTH_MILLIONTH) / PER_TENTH_MILLIONTH > WIDEST_COSINE;
}

const PER_TENTH_MILLIONTH = 1e7;

/** Cosine of 120°. Source: house-convention. */
const WIDEST_COSINE = -0.5;
