import { boxGrid } from "../geometry/box-grid.ts";
import { penetrationDepth } from "../geometry/penetration-depth.ts";
import { boxAround, inflate, type Ring } from "../geometry/point.ts";
import { polygonToPolygon } from "../geometry/polygon-distance.ts";
import type { Place } from "./places-types.ts";

/**
 * Pairs of places whose convex footprints overlap, by index, lower first, sorted.
 *
 * With room between them they must lie that far apart, and two at one tree always conflict: they share its point, and
 * which way the others lie is not known so well. With negative room they may overlap by so much.
 *
 * Units    metres; touching is allowed, an overlap of up to 1e-7 m too
 * Source   layout-search
 */
export function footprintConflicts(
  places: readonly Place[],
  roomM = 0,
): readonly (readonly [number, number])[] {
  const boxes = places.map(({ footprint }) => inflate(boxAround(footprint), Math.max(0, roomM)));
  const grid = boxGrid(boxes);
  const exclude = roomM > 0 ? apartBy(roomM) : overlapBy(OVERLAP_SLACK_M - roomM);
  const found: (readonly [number, number])[] = [];
  for (const [i, place] of places.entries()) {
    const box = boxes[i];
    if (box === undefined) continue;
    const later: number[] = [];
    grid.each(box, (j) => {
      const other = places[j];
      if (j > i && other !== undefined && exclude(place, other)) later.push(j);
    });
    later.sort((a, b) => a - b);
    for (const j of later) found.push([i, j]);
  }
  return found;
}

type Exclude = (a: Place, b: Place) => boolean;

function overlapBy(depthM: number): Exclude {
  return ({ footprint: a }, { footprint: b }) => penetrationDepth(a, b) > depthM;
}

function apartBy(roomM: number): Exclude {
  const near = (a: Ring, b: Ring): boolean => polygonToPolygon(a, b) < roomM;
  return (a, b) => shareTree(a, b) || near(a.footprint, b.footprint);
}

function shareTree(a: Place, b: Place): boolean {
  return a.first === b.first || a.first === b.second || a.second === b.first || a.second === b.second;
}

/** Footprints may reach this far into each other [m]. Source: house-convention. */
const OVERLAP_SLACK_M = 1e-7;
