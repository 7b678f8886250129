import { deLevaSegments, type BodySegment } from "./de-leva.ts";

/** A stretch of load along the cloth: density runs linearly, so that mass and centre of mass are right. */
export interface LoadStretch {
  /** Along the cloth from its head end [m]. */
  readonly fromM: number;
  readonly toM: number;
  readonly massKg: number;
  /** Centre of mass from `fromM`, over the stretch's length; within 1/3 to 2/3. */
  readonly comRatio: number;
}

const SEGMENTS = deLevaSegments("both");
const WHOLE_RATIO = SEGMENTS.reduce((sum, { massRatio }) => sum + massRatio, 0);

/** Stations of the body's underside above the soles, over the stature; ankle to head. */
export const STATION_RATIO = bodyStations(SEGMENTS);

/**
 * A sleeper lying straight along the cloth with the middle of the stature on the cloth's middle.
 * Arms lie beside the trunk; the head is towards the cloth's start.
 */
export function lyingBody(clothM: number, statureM: number, massKg: number): readonly LoadStretch[] {
  const solesM = (clothM + statureM) / 2;
  return SEGMENTS.map(({ massRatio, comRatio, topRatio, bottomRatio }) => ({
    fromM: solesM - topRatio * statureM,
    toM: solesM - bottomRatio * statureM,
    massKg: (massKg * massRatio) / WHOLE_RATIO,
    comRatio,
  }));
}

/** Where a station of the body lies along the cloth, from the cloth's head end [m]. */
export function stationOnCloth(clothM: number, statureM: number, stationRatio: number): number {
  return (clothM + statureM) / 2 - stationRatio * statureM;
}

/**
 * Adds stretches of load to the nodes of equal cells, keeping each cell's weight and first moment.
 *
 * Shapes   nodesKg: cells + 1 nodes from the cloth's head end to its foot end
 */
export function loadNodes(nodesKg: Float64Array, clothM: number, stretches: readonly LoadStretch[]): void {
  const cells = nodesKg.length - 1;
  const cellM = clothM / cells;
  for (const { fromM, toM, massKg, comRatio } of stretches) {
    const lengthM = toM - fromM;
    // Density over the length: 1 + k (s − 1/2), with k set by the centre of mass.
    const k = 6 * (2 * comRatio - 1);
    const first = Math.max(0, Math.floor(fromM / cellM));
    const last = Math.min(cells - 1, Math.floor(toM / cellM));
    for (let cell = first; cell <= last; cell++) {
      const a = Math.max(0, (cell * cellM - fromM) / lengthM);
      const b = Math.min(1, ((cell + 1) * cellM - fromM) / lengthM);
      if (!(b > a)) continue;
      const [even, sloped] = [1 - k / 2, b * b - a * a];
      const share = even * (b - a) + (k / 2) * sloped;
      const moment = (even * sloped) / 2 + (k / 3) * (b * b * b - a * a * a);
      const inCellM = fromM - cell * cellM;
      const onRight = (massKg * (share * inCellM + moment * lengthM)) / cellM;
      nodesKg[cell] = (nodesKg[cell] ?? 0) + massKg * share - onRight;
      nodesKg[cell + 1] = (nodesKg[cell + 1] ?? 0) + onRight;
    }
  }
}

function bodyStations(segments: readonly BodySegment[]) {
  const find = (name: BodySegment["name"]) => segments.find((segment) => segment.name === name);
  return {
    ankle: find("shanks")?.bottomRatio ?? Number.NaN,
    knee: find("thighs")?.bottomRatio ?? Number.NaN,
    hip: find("thighs")?.topRatio ?? Number.NaN,
    shoulder: find("upper-arms")?.topRatio ?? Number.NaN,
    head: 1 - (find("head")?.lengthRatio ?? Number.NaN) / 2,
  };
}
