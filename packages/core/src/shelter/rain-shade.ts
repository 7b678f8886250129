import { at } from "../numeric/at.ts";
import type { Point3 } from "./ground-plane.ts";
import type { Panel } from "./tarp-geometry.ts";

/** Slopes of rain, level metres a metre of fall, that a panel keeps off a point: pairs from–to, in no order. */
export type Slopes = number[];

/**
 * Which slopes of rain the panels keep off a point.
 *
 *   upwind of the point, in the upright plane of the wind, a panel shows as a segment; it covers all slopes between its ends
 *
 * Nothing is sampled over drop sizes: a segment covers a whole range of fall speeds at once.
 *
 * Shapes   panels, a level unit direction from which the wind comes → from a point to ranges of slope ≥ 0
 * Units    metres → level metres a metre of fall
 * Holds    any flat polygon, also a hollow one; one that lies edge on in the plane of the wind covers nothing
 * Error    exact for straight rays: even wind over the height of the tarp
 * Source   rain-shade (handbook/shelter.md)
 */
export function rainShade(
  panels: readonly Panel[],
  upwindX: number,
  upwindY: number,
): (point: Point3) => Slopes {
  const turned = panels.map((panel) => turnedPanel(panel, upwindX, upwindY));
  return (point) => {
    const aside = point[1] * upwindX - point[0] * upwindY;
    const along = point[0] * upwindX + point[1] * upwindY;
    const slopes: Slopes = [];
    for (const panel of turned) {
      const isBeside = aside < panel.leastAside || aside > panel.mostAside;
      if (!isBeside && panel.mostAlong >= along) addPanel(slopes, panel, aside, along, point[2]);
    }
    return joined(slopes);
  };
}

/** A panel seen along the wind. */
interface TurnedPanel {
  readonly aside: readonly number[];
  readonly along: readonly number[];
  readonly high: readonly number[];
  readonly leastAside: number;
  readonly mostAside: number;
  readonly mostAlong: number;
}

/** Plain lists: typed ones of this size cost more to make than they save. */
function turnedPanel({ corners }: Panel, upX: number, upY: number): TurnedPanel {
  const [aside, along, high]: [number[], number[], number[]] = [[], [], []];
  let [leastAside, mostAside, mostAlong] = [Infinity, -Infinity, -Infinity];
  for (const corner of corners) {
    const asideM = corner[1] * upX - corner[0] * upY;
    const alongM = corner[0] * upX + corner[1] * upY;
    aside.push(asideM);
    along.push(alongM);
    high.push(corner[2]);
    leastAside = Math.min(leastAside, asideM);
    mostAside = Math.max(mostAside, asideM);
    mostAlong = Math.max(mostAlong, alongM);
  }
  return { aside, along, high, leastAside, mostAside, mostAlong };
}

/** Crossings of the panel being cut: distance upwind and height over the point, two numbers each; no panel has more. */
const cut = new Float64Array(128);

function addPanel(
  slopes: Slopes,
  panel: TurnedPanel,
  pointAside: number,
  pointAlong: number,
  pointZ: number,
): void {
  const { aside, along, high } = panel;
  const last = aside.length - 1;
  let count = 0;
  let fromAside = (aside[last] ?? 0) - pointAside;
  let from = last;
  for (let corner = 0; corner <= last; corner++) {
    const toAside = (aside[corner] ?? 0) - pointAside;
    if (toAside < 0 !== fromAside < 0) {
      const share = fromAside / (fromAside - toAside);
      const [alongFrom, highFrom] = [along[from] ?? 0, high[from] ?? 0];
      cut[count++] = alongFrom - pointAlong + share * ((along[corner] ?? 0) - alongFrom);
      cut[count++] = highFrom - pointZ + share * ((high[corner] ?? 0) - highFrom);
    }
    fromAside = toAside;
    from = corner;
  }
  if (count === 4) addSegment(slopes, at(cut, 0), at(cut, 1), at(cut, 2), at(cut, 3));
  else if (count > 4) addSegments(slopes, count);
}

/** A hollow panel is cut more than twice: inside between the first and second crossing along its line, and so on. */
function addSegments(slopes: Slopes, count: number): void {
  const crossings = Array.from({ length: count / 2 }, (_, index) => [
    at(cut, 2 * index),
    at(cut, 2 * index + 1),
  ]);
  crossings.sort((a, b) => (a[0] ?? 0) - (b[0] ?? 0) || (a[1] ?? 0) - (b[1] ?? 0));
  for (let index = 0; index + 1 < crossings.length; index += 2) {
    const [from, to] = [crossings[index], crossings[index + 1]];
    addSegment(slopes, from?.[0] ?? 0, from?.[1] ?? 0, to?.[0] ?? 0, to?.[1] ?? 0);
  }
}

/** Slopes covered by one segment of the upright plane: cut off where it is not above the point, and downwind. */
function addSegment(slopes: Slopes, along0: number, high0: number, along1: number, high1: number): void {
  if (high0 < LOWEST_M && high1 < LOWEST_M) return;
  let first = along0 / high0;
  let second = along1 / high1;
  if (high0 < LOWEST_M || high1 < LOWEST_M) {
    const levelAlong = along0 + ((LOWEST_M - high0) / (high1 - high0)) * (along1 - along0);
    if (high0 < LOWEST_M) first = levelAlong / LOWEST_M;
    else second = levelAlong / LOWEST_M;
  }
  const high = Math.max(first, second);
  if (high >= 0) slopes.push(Math.max(0, Math.min(first, second)), high);
}

/** What is no more than a hair above the point counts as level with it. */
const LOWEST_M = 1e-9;

/**
 * Ranges put in order and joined where they overlap, in place.
 *
 * Shapes   pairs from–to in no order → pairs in order, none overlapping
 */
function joined(slopes: Slopes): Slopes {
  if (slopes.length <= 2) return slopes;
  if (slopes.length === 4) return joinedTwo(slopes);
  const pairs = Array.from({ length: slopes.length / 2 }, (_, index) => index);
  pairs.sort((a, b) => (slopes[2 * a] ?? 0) - (slopes[2 * b] ?? 0));
  const sorted = pairs.flatMap((index) => [slopes[2 * index] ?? 0, slopes[2 * index + 1] ?? 0]);
  const whole: Slopes = [];
  for (let index = 0; index < sorted.length; index += 2) {
    const [low, high] = [sorted[index] ?? 0, sorted[index + 1] ?? 0];
    const end = whole.length - 1;
    if (end > 0 && low <= (whole[end] ?? 0)) whole[end] = Math.max(whole[end] ?? 0, high);
    else whole.push(low, high);
  }
  return whole;
}

function joinedTwo(slopes: Slopes): Slopes {
  const low = Math.min(slopes[0] ?? 0, slopes[2] ?? 0);
  const isInOrder = low === slopes[0];
  const lowEnd = (isInOrder ? slopes[1] : slopes[3]) ?? 0;
  const high = (isInOrder ? slopes[2] : slopes[0]) ?? 0;
  const highEnd = (isInOrder ? slopes[3] : slopes[1]) ?? 0;
  if (high > lowEnd) return isInOrder ? slopes : [low, lowEnd, high, highEnd];
  return [low, Math.max(lowEnd, highEnd)];
}
