import type { Camp, Ground } from "../../plan/camp.ts";
import type { Tree } from "../../site/tree.ts";
import type { CampPlace } from "../camp-places-types.ts";
import { headIsSecond } from "../hang-request.ts";

/**
 * Rise of the ground to the left of a berth, a level metre: from the slope that is stated, else from the trees near by
 * whose ground is known; 0 where nobody knows.
 */
export function acrossRise({ ground }: Camp, place: CampPlace): number {
  const { bearingRad, middle } = place;
  if (ground === undefined || bearingRad === undefined) return 0;
  const turned = headIsSecond(place) ? bearingRad + Math.PI : bearingRad;
  const leftwards = turned - Math.PI / 2;
  const [eastRise, northRise] = gradient(ground, middle);
  return eastRise * Math.sin(leftwards) + northRise * Math.cos(leftwards);
}

function gradient(
  ground: Ground,
  middle: CampPlace["middle"],
): readonly [eastRise: number, northRise: number] {
  const { slope, trees } = ground;
  if (slope !== undefined) {
    const { riseRatio, downhillRad } = slope;
    return [-riseRatio * Math.sin(downhillRad), -riseRatio * Math.cos(downhillRad)];
  }
  return middle === undefined ? [0, 0] : fitted(trees, middle);
}

/** Plane of least squares through the ground at the trees within `NEAR_M`; level where they do not make one. */
function fitted(trees: readonly Tree[], [xM, yM]: readonly [number, number]): readonly [number, number] {
  const near = trees.flatMap((tree) => {
    const [east, north] = [tree.xM - xM, tree.yM - yM];
    const isNear = east * east + north * north <= NEAR_M * NEAR_M;
    return isNear && tree.elevationM !== undefined ? [[east, north, tree.elevationM] as const] : [];
  });
  const mean = (axis: 0 | 1 | 2) => near.reduce((sum, point) => sum + point[axis], 0) / near.length;
  const [me, mn, mz] = [mean(0), mean(1), mean(2)];
  let [ee, en, nn, ez, nz] = [0, 0, 0, 0, 0];
  for (const [east, north, z] of near) {
    ee += (east - me) ** 2;
    en += (east - me) * (north - mn);
    nn += (north - mn) ** 2;
    ez += (east - me) * (z - mz);
    nz += (north - mn) * (z - mz);
  }
  const determinant = ee * nn - en * en;
  if (near.length < 3 || !(determinant > LEAST_SPREAD * ee * nn)) return [0, 0];
  return [(ez * nn - nz * en) / determinant, (nz * ee - ez * en) / determinant];
}

const NEAR_M = 8;
/** Trees nearly in one line say nothing across it. */
const LEAST_SPREAD = 0.05;
