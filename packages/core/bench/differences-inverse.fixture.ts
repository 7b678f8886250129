import { marchLinks, newMarch, startMarch, type Chain } from "../src/statics/chain.ts";
import { CLOTH_CELLS } from "../src/statics/hang-constants.ts";
import { placeNodes, type NodePlaces } from "../src/statics/hang-figures.ts";
import type { HangRig } from "../src/statics/hang-rig.ts";

/**
 * The same march, inverted the plain way: every derivative by finite differences, within a forward solve and
 * around it. Unknowns are both strap lengths and both anchor heights; asked for are the mean angle, a
 * centred hammock, the raise and the seat. Starts where the closed form without stretch would.
 */
export interface Wanted {
  readonly clearM: number;
  readonly meanAngle: number;
  readonly footRaiseM: number;
  readonly seatHeightM: number;
}

export interface PlainInverse {
  readonly settings: readonly number[];
  readonly miss: number;
  readonly solves: number;
}

const LAST = CLOTH_CELLS + 2;
const MIDDLE = 1 + CLOTH_CELLS / 2;
const MARCH = newMarch();
const PLACES: NodePlaces = { xM: new Float64Array(LAST + 1), zM: new Float64Array(LAST + 1) };
const DIFFERENCE = 1e-6;

export function inverseByDifferences(rig: HangRig, wanted: Wanted): PlainInverse {
  const gathersM = rig.ridgelineM ?? 0.9 * rig.clothM;
  const runM = (wanted.clearM - gathersM) / 2;
  const strapM = runM / Math.cos(wanted.meanAngle);
  const anchorM = wanted.seatHeightM + 0.3 * rig.clothM + runM * Math.tan(wanted.meanAngle);
  let solves = 0;
  const missOf = (settings: readonly number[]) => {
    solves += 2;
    return outerMiss(rig, wanted, settings);
  };
  let settings: readonly number[] = [strapM, strapM, anchorM, anchorM];
  let miss = missOf(settings);
  for (let step = 0; step < 30 && size(miss) > 1e-9; step++) {
    const change = newtonByDifferences(missOf, settings, miss);
    settings = settings.map((value, index) => value - (change[index] ?? NaN));
    miss = missOf(settings);
  }
  return { settings, miss: size(miss), solves };
}

function outerMiss(rig: HangRig, wanted: Wanted, settings: readonly number[]): number[] {
  const [head = NaN, foot = NaN, headAnchorM = NaN, footAnchorM = NaN] = settings;
  rig.lying.lengthM[0] = head;
  rig.lying.lengthM[CLOTH_CELLS + 1] = foot;
  const risenM = footAnchorM - headAnchorM;
  const lying = forward(rig, rig.lying, wanted.clearM, risenM);
  place(rig.lying, lying, headAnchorM);
  const [along = NaN, up = NaN] = lying;
  const [fromX, toX] = [PLACES.xM[1] ?? NaN, PLACES.xM[CLOTH_CELLS + 1] ?? NaN];
  const raiseM = (PLACES.zM[CLOTH_CELLS + 1] ?? NaN) - (PLACES.zM[1] ?? NaN);
  place(rig.sitting, forward(rig, rig.sitting, wanted.clearM, risenM), headAnchorM);
  return [
    (Math.atan(-up / along) + Math.atan((rig.weightN + up) / along)) / 2 - wanted.meanAngle,
    (fromX + toX - wanted.clearM) / 2,
    raiseM - wanted.footRaiseM,
    (PLACES.zM[MIDDLE] ?? NaN) - wanted.seatHeightM,
  ];
}

/** Slack first, then with the ridgeline where it would be too short. */
export function forward(rig: HangRig, chain: Chain, dxM: number, dzM: number): readonly number[] {
  const slackMiss = (x: readonly number[]) => chainMiss(chain, [...x, 0, 0], dxM, dzM).slice(0, 2);
  const slack = solveByDifferences(slackMiss, [0.8 * rig.weightN, -rig.weightN / 2]);
  const [, , apartX = NaN, apartZ = NaN] = chainMiss(chain, [...slack, 0, 0], dxM, dzM);
  const apartM = Math.hypot(apartX, apartZ);
  const ridgeM = rig.ridgelineM;
  if (ridgeM === undefined || apartM <= ridgeM) return [...slack, 0, 0];
  const tautMiss = (x: readonly number[]) => {
    const [missX = NaN, missZ = NaN, gx = NaN, gz = NaN] = chainMiss(chain, x, dxM, dzM);
    const [, , rx = NaN, rz = NaN] = x;
    const pull = Math.hypot(rx, rz);
    return [missX, missZ, gx - (ridgeM * rx) / pull, gz - (ridgeM * rz) / pull];
  };
  const [along = NaN, up = NaN] = slack;
  const guess = 0.2 * rig.weightN;
  return solveByDifferences(tautMiss, [along + guess / 2, up, guess, (guess * apartZ) / apartX]);
}

/** Miss at the far end, and the vector from gather to gather. */
function chainMiss(chain: Chain, x: readonly number[], dxM: number, dzM: number): number[] {
  const [along = NaN, up = NaN, ridgeAlong = NaN, ridgeUp = NaN] = x;
  startMarch(MARCH, along, up);
  marchLinks(chain, MARCH, 0, chain.ridgeFromNode);
  const [fromX, fromZ] = [MARCH.xM, MARCH.zM];
  MARCH.alongN -= ridgeAlong;
  MARCH.upN -= ridgeUp;
  marchLinks(chain, MARCH, chain.ridgeFromNode, chain.ridgeToNode);
  const [gx, gz] = [MARCH.xM - fromX, MARCH.zM - fromZ];
  MARCH.alongN += ridgeAlong;
  MARCH.upN += ridgeUp;
  marchLinks(chain, MARCH, chain.ridgeToNode, chain.lengthM.length);
  return [MARCH.xM - dxM, MARCH.zM - dzM, gx, gz];
}

function place(
  chain: Chain,
  [alongN = NaN, upN = NaN, ridgeAlongN = NaN, ridgeUpN = NaN]: readonly number[],
  zM: number,
) {
  placeNodes(chain, { alongN, upN, ridgeAlongN, ridgeUpN }, 0, zM, PLACES);
}

type Miss = (x: readonly number[]) => number[];

function solveByDifferences(missOf: Miss, start: readonly number[]): readonly number[] {
  let x = start;
  let miss = missOf(x);
  for (let step = 0; step < 60 && size(miss) > 1e-11; step++) {
    const change = newtonByDifferences(missOf, x, miss);
    let share = 1;
    let next = x;
    let nextMiss = miss;
    for (let halving = 0; halving < 30; halving++, share /= 2) {
      next = x.map((value, index) => value - share * (change[index] ?? NaN));
      nextMiss = (next[0] ?? NaN) > 0 ? missOf(next) : [Infinity];
      if (size(nextMiss) < size(miss)) break;
    }
    if (!(size(nextMiss) < size(miss))) break;
    [x, miss] = [next, nextMiss];
  }
  return x;
}

function newtonByDifferences(missOf: Miss, x: readonly number[], miss: readonly number[]): number[] {
  const columns = x.map((value, index) => {
    const by = DIFFERENCE * Math.max(1, Math.abs(value));
    const moved = missOf(x.map((same, at) => (at === index ? same + by : same)));
    return moved.map((after, row) => (after - (miss[row] ?? NaN)) / by);
  });
  return solveLinear(columns, miss);
}

/** Gauss with the largest pivot; the matrix given by columns. */
function solveLinear(columns: readonly (readonly number[])[], right: readonly number[]): number[] {
  const rows = right.map((last, row) => [...columns.map((column) => column[row] ?? NaN), last]);
  rows.forEach((_, pivot) => {
    let best = pivot;
    rows.forEach((row, at) => {
      if (at > pivot && Math.abs(row[pivot] ?? NaN) > Math.abs(rows[best]?.[pivot] ?? NaN)) best = at;
    });
    const row = rows[best] ?? [];
    rows[best] = rows[pivot] ?? [];
    rows[pivot] = row;
    for (const other of rows) {
      if (other === row) continue;
      const factor = (other[pivot] ?? NaN) / (row[pivot] ?? NaN);
      row.forEach((value, at) => (other[at] = (other[at] ?? NaN) - factor * value));
    }
  });
  return rows.map((row, index) => (row[right.length] ?? NaN) / (row[index] ?? NaN));
}

function size(values: readonly number[]): number {
  return Math.hypot(...values);
}
