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

/** Stations of the body's underside above the soles, over the stature; ankle to head. */
export const STATION_RATIO = bodyStations(deLevaSegments("both"));

/**
 * A sleeper lying straight along the cloth with the middle of the stature on the cloth's middle.
 * Arms lie beside the trunk; the head is towards the cloth's start.
 */
export function lyingBody(clothM: number, statureM: number, massKg: number): readonly LoadStretch[] {
  const segments = deLevaSegments("both");
  const whole = segments.reduce((sum, { massRatio }) => sum + massRatio, 0);
  const solesM = (clothM + statureM) / 2;
  return segments.map(({ massRatio, comRatio, topRatio, bottomRatio }) => ({
    fromM: solesM - topRatio * statureM,
    toM: solesM - bottomRatio * statureM,
    massKg: (massKg * massRatio) / whole,
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
  for (const stretch of stretches) {
    const first = Math.max(0, Math.floor(stretch.fromM / cellM));
    const last = Math.min(cells - 1, Math.floor(stretch.toM / cellM));
    for (let cell = first; cell <= last; cell++) {
      const { massKg, momentKgM } = stretchWithin(stretch, cell * cellM, (cell + 1) * cellM);
      const onRight = (momentKgM - massKg * cell * cellM) / cellM;
      nodesKg[cell] = (nodesKg[cell] ?? 0) + massKg - onRight;
      nodesKg[cell + 1] = (nodesKg[cell + 1] ?? 0) + onRight;
    }
  }
}

/** Mass of a stretch between two places on the cloth, and its moment about the cloth's start. */
function stretchWithin(stretch: LoadStretch, lowM: number, highM: number) {
  const lengthM = stretch.toM - stretch.fromM;
  const a = Math.max(0, (lowM - stretch.fromM) / lengthM);
  const b = Math.min(1, (highM - stretch.fromM) / lengthM);
  if (!(b > a)) return { massKg: 0, momentKgM: 0 };
  // Density over the length: 1 + k (s − 1/2), with k set by the centre of mass.
  const k = 6 * (2 * stretch.comRatio - 1);
  const share = (1 - k / 2) * (b - a) + (k / 2) * (b * b - a * a);
  const moment = ((1 - k / 2) * (b * b - a * a)) / 2 + (k / 3) * (b ** 3 - a ** 3);
  const massKg = stretch.massKg * share;
  return { massKg, momentKgM: massKg * stretch.fromM + stretch.massKg * moment * lengthM };
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
