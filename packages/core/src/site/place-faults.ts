import { boxAround, inflate, type Point, type Ring } from "../geometry/point.ts";
import { estimatedHeightM } from "./estimated-height.ts";
import type { Place, PlacesInput } from "./places-types.ts";
import { shapeToFootprintM } from "./shape-distance.ts";
import type { Tree } from "./tree.ts";

/**
 * Looks at chosen places again, by other arithmetic than the one that found them, and tells what is
 * wrong with them in plain words: nothing where all is well.
 *
 * A stem's distance is measured in the berth's own quarter (along and across, folded onto one corner of
 * the hexagon) instead of along its sides, and two footprints are cut with one another instead of
 * parted by an axis. No index is used but the order of the stems from west to east.
 *
 * Units    metres; it complains of what is wrong by more than a micrometre
 * Source   layout-search (handbook/layout.md: looked at again)
 */
export function placeFaults(input: PlacesInput, chosen: readonly Place[]): readonly string[] {
  const eastward = input.trees
    .map((tree, index) => ({ tree, index }))
    .sort((a, b) => a.tree.xM - b.tree.xM || a.index - b.index);
  const widest = input.trees.reduce((most, tree) => Math.max(most, keptAwayM(tree, input)), 0);
  return [
    ...chosen.flatMap((place) => pairFaults(input, place)),
    ...chosen.flatMap((place) => stemFaults(input, place, eastward, widest)),
    ...chosen.flatMap((place) => obstacleFaults(input, place)),
    ...overlapFaults(chosen),
  ];
}

const SLACK_M = 1e-6;

function pairFaults({ trees, spanMinM, spanMaxM, trunkMinM }: PlacesInput, place: Place): string[] {
  const ends = [trees[place.first], trees[place.second]];
  const [from, to] = ends;
  if (from === undefined || to === undefined || from === to) return [`${nameOf(place)}: not two trees`];
  const spanM = Math.hypot(to.xM - from.xM, to.yM - from.yM);
  const faults = [from, to].flatMap((tree) => {
    if (tree.condition === "dead" || tree.condition === "doubtful") return [`${tree.id}: ${tree.condition}`];
    if (!tree.use) return [`${tree.id}: not to be used`];
    return tree.dbhM < trunkMinM - SLACK_M ? [`${tree.id}: too thin`] : [];
  });
  if (Math.abs(spanM - place.spanM) > SLACK_M)
    faults.push(`${nameOf(place)}: span ${place.spanM} is ${spanM}`);
  if (spanM < spanMinM - SLACK_M || spanM > spanMaxM + SLACK_M)
    faults.push(`${nameOf(place)}: span ${spanM}`);
  return faults;
}

function stemFaults(
  input: PlacesInput,
  place: Place,
  eastward: readonly { readonly tree: Tree; readonly index: number }[],
  widest: number,
): string[] {
  const box = inflate(boxAround(place.footprint), widest);
  const faults: string[] = [];
  for (let at = firstFrom(eastward, box.minX); at < eastward.length; at++) {
    const stem = eastward[at];
    if (stem === undefined || stem.tree.xM > box.maxX) break;
    if (stem.index === place.first || stem.index === place.second) continue;
    if (stem.tree.yM < box.minY || stem.tree.yM > box.maxY) continue;
    const apartM = quarterDistanceM(input, place, stem.tree);
    const reachM = keptAwayM(stem.tree, input);
    const isReach = reachM > stem.tree.dbhM / 2;
    const keptM = Math.max(input.halfWidthM, input.keptHalfWidthM ?? 0);
    const clearM = isReach ? quarterDistanceM({ ...input, halfWidthM: keptM }, place, stem.tree) : apartM;
    if (clearM < reachM - SLACK_M) faults.push(`${nameOf(place)}: ${stem.tree.id} is ${clearM} m away`);
  }
  return faults;
}

function keptAwayM(tree: Tree, input: PlacesInput): number {
  const heights =
    tree.condition === "dead"
      ? input.deadTreeHeights
      : tree.condition === "doubtful"
        ? input.doubtfulTreeHeights
        : 0;
  return Math.max(tree.dbhM / 2, heights * estimatedHeightM(tree));
}

/** Distance from a stem's centre to the closed hexagon, along and across its own axis. */
function quarterDistanceM(
  { trees, halfWidthM }: PlacesInput,
  { first, second, spanM }: Place,
  stem: Tree,
): number {
  const from = trees[first] ?? stem;
  const to = trees[second] ?? stem;
  const alongX = (to.xM - from.xM) / spanM;
  const alongY = (to.yM - from.yM) / spanM;
  const offX = stem.xM - (from.xM + to.xM) / 2;
  const offY = stem.yM - (from.yM + to.yM) / 2;
  const fromEnd = spanM / 2 - Math.abs(offX * alongX + offY * alongY);
  const aside = Math.abs(offY * alongX - offX * alongY);
  const quarter = spanM / 4;
  if (fromEnd >= quarter) return Math.max(0, aside - halfWidthM);
  if (fromEnd >= 0 && aside * quarter <= fromEnd * halfWidthM) return 0;
  const squared = quarter * quarter + halfWidthM * halfWidthM;
  const share = Math.min(1, Math.max(0, (fromEnd * quarter + aside * halfWidthM) / squared));
  return Math.hypot(fromEnd - share * quarter, aside - share * halfWidthM);
}

function firstFrom(eastward: readonly { readonly tree: Tree }[], x: number): number {
  let low = 0;
  let high = eastward.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((eastward[middle]?.tree.xM ?? Infinity) < x) low = middle + 1;
    else high = middle;
  }
  return low;
}

function obstacleFaults({ obstacles }: PlacesInput, place: Place): string[] {
  return obstacles.flatMap(({ id, shape, setbackM }) => {
    const apartM = shapeToFootprintM(shape, place.footprint);
    return apartM < setbackM - SLACK_M ? [`${nameOf(place)}: ${id} is ${apartM} m away`] : [];
  });
}

function overlapFaults(chosen: readonly Place[]): string[] {
  const eastward = chosen
    .map((place) => ({ place, box: boxAround(place.footprint) }))
    .sort((a, b) => a.box.minX - b.box.minX);
  return eastward.flatMap(({ place, box }, at) => {
    const faults: string[] = [];
    for (const other of eastward.slice(at + 1)) {
      if (other.box.minX > box.maxX) break;
      if (other.box.minY > box.maxY || other.box.maxY < box.minY) continue;
      const shared = cutArea(place.footprint, other.place.footprint);
      if (shared > SLACK_M * (box.maxX - box.minX + (box.maxY - box.minY))) {
        faults.push(`${nameOf(place)} and ${nameOf(other.place)} share ${shared} m²`);
      }
    }
    return faults;
  });
}

/** Area that two convex rings share: one is cut along each side of the other. */
function cutArea(a: Ring, b: Ring): number {
  const way = areaOf(b) < 0 ? -1 : 1;
  let rest = a;
  for (const [at, from] of b.entries()) {
    const to = b[(at + 1) % b.length] ?? from;
    rest = cutAlong(rest, from, to, way);
  }
  return Math.abs(areaOf(rest));
}

function cutAlong(ring: Ring, from: Point, to: Point, way: number): Ring {
  const sideOf = ([x, y]: Point): number =>
    way * ((to[0] - from[0]) * (y - from[1]) - (to[1] - from[1]) * (x - from[0]));
  return ring.flatMap((point, at) => {
    const next = ring[(at + 1) % ring.length] ?? point;
    const here = sideOf(point);
    const there = sideOf(next);
    const kept = here >= 0 ? [point] : [];
    if (here >= 0 === there >= 0) return kept;
    const share = here / (here - there);
    return [
      ...kept,
      [point[0] + share * (next[0] - point[0]), point[1] + share * (next[1] - point[1])] as const,
    ];
  });
}

function areaOf(ring: Ring): number {
  return ring.reduce((sum, [x, y], at) => {
    const [nextX, nextY] = ring[(at + 1) % ring.length] ?? [x, y];
    return sum + (x * nextY - nextX * y) / 2;
  }, 0);
}

function nameOf({ first, second }: Place): string {
  return `trees ${first} and ${second}`;
}
