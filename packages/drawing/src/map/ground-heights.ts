import type { Camp } from "@nightspan/core";
import type { XY } from "../scene/scene.ts";

/** How steep the ground is, and which way down. */
export interface GroundFall {
  readonly riseRatio: number;
  /** The way water runs, clockwise from north [rad]. */
  readonly downhillRad: number;
}

export type HeightAt = (place: XY) => number;

export interface GroundHeights {
  readonly heightAt: HeightAt;
  readonly fall: GroundFall;
}

type Spot = readonly [x: number, y: number, z: number];

/** The ground between surveyed stems: the best plane, and on it what is left over, averaged by nearness. */
export function groundHeights(camp: Camp): GroundHeights | undefined {
  const spots = (camp.ground?.trees ?? []).flatMap(({ xM, yM, elevationM }): Spot[] =>
    elevationM === undefined ? [] : [[xM, yM, elevationM]],
  );
  if (spots.length < 4) return undefined;
  const every = Math.ceil(spots.length / MOST_SPOTS);
  const used = spots.filter((_, index) => index % every === 0);
  const [mx, my, mz] = meanOf(used);
  const [gx, gy] = steepest(used, [mx, my, mz]);
  const plane: HeightAt = ([x, y]) => mz + gx * (x - mx) + gy * (y - my);
  const left = used.map(([x, y, z]) => [x, y, z - plane([x, y])] as const);
  const reach = reachOf(used);
  return {
    heightAt: (place) => plane(place) + nearness(left, place, reach),
    fall: { riseRatio: Math.hypot(gx, gy), downhillRad: Math.atan2(-gx, -gy) },
  };
}

const MOST_SPOTS = 150;

function meanOf(spots: readonly Spot[]): Spot {
  const sum = spots.reduce<Spot>(([x, y, z], [sx, sy, sz]) => [x + sx, y + sy, z + sz], [0, 0, 0]);
  return [sum[0] / spots.length, sum[1] / spots.length, sum[2] / spots.length];
}

/** Gradient of the plane of least squares; level where the stems stand in one line. */
function steepest(spots: readonly Spot[], [mx, my, mz]: Spot): XY {
  let [xx, xy, yy, xz, yz] = [0, 0, 0, 0, 0];
  for (const [x, y, z] of spots) {
    const [dx, dy, dz] = [x - mx, y - my, z - mz];
    xx += dx * dx;
    xy += dx * dy;
    yy += dy * dy;
    xz += dx * dz;
    yz += dy * dz;
  }
  const det = xx * yy - xy * xy;
  return det < 1e-6 * xx * yy || det === 0 ? [0, 0] : [(xz * yy - yz * xy) / det, (yz * xx - xz * xy) / det];
}

/** About two stems' distance apart [m]. */
function reachOf(spots: readonly Spot[]): number {
  const [xs, ys] = [spots.map(([x]) => x), spots.map(([, y]) => y)];
  const area = (Math.max(...xs) - Math.min(...xs)) * (Math.max(...ys) - Math.min(...ys));
  return Math.max(2, 1.6 * Math.sqrt(area / spots.length));
}

function nearness(spots: readonly Spot[], [px, py]: XY, reach: number): number {
  let [sum, weight] = [0, 1e-3];
  for (const [x, y, z] of spots) {
    const near = Math.exp(-((x - px) ** 2 + (y - py) ** 2) / (2 * reach * reach));
    sum += near * z;
    weight += near;
  }
  return sum / weight;
}
