import { at } from "../numeric/at.ts";
import { marchLinks, newMarch, startMarch, type Chain, type March } from "./chain.ts";

/** What a chain between two supports depends on, in the order of every list of slopes. */
export const CHAIN_CAUSES = ["dxM", "dzM", "firstLinkM", "lastLinkM", "stretchLog"] as const;

/** How a chain at rest moves with each of its causes: one entry a cause. */
export interface ChainSlopes {
  readonly alongN: Float64Array;
  readonly upN: Float64Array;
  readonly ridgeAlongN: Float64Array;
  readonly ridgeUpN: Float64Array;
  /** Place of one node of the cloth, from the first support. */
  readonly nodeX: Float64Array;
  readonly nodeZ: Float64Array;
  /** Height of the ridgeline's second node over its first. */
  readonly raiseM: Float64Array;
}

/** A chain at rest: tension in its first link, and the ridgeline's pull, 0 where it is slack. */
export interface ChainRest {
  readonly alongN: number;
  readonly upN: number;
  readonly ridgeAlongN: number;
  readonly ridgeUpN: number;
}

export function newChainSlopes(): ChainSlopes {
  const list = () => new Float64Array(CHAIN_CAUSES.length);
  return {
    alongN: list(),
    upN: list(),
    ridgeAlongN: list(),
    ridgeUpN: list(),
    nodeX: list(),
    nodeZ: list(),
    raiseM: list(),
  };
}

/**
 * Derivatives of a chain's rest, exact: the equations of `solveTaut` (or `solveSlack`) hold for every cause θ, so
 *
 *   K t' − C r' = −∂end/∂θ,   C t' − (C + M) r' = −∂cloth/∂θ
 *
 * with K and C the derivatives of the whole chain and of the cloth by the tension at their start, and
 * M = R (I − r rᵀ/|r|²)/|r| of an inextensible ridgeline. A slack ridgeline leaves K t' = −∂end/∂θ.
 *
 * Shapes   one march; five causes; `node` between the ridgeline's nodes
 * Units    per metre, `stretchLog` per unit of the natural logarithm of all stretch
 * Holds    a rest found by solveSlack or solveTaut, on chains of one strap link, cloth, one strap link
 * Error    rounding, times the conditioning of the rest
 * Source   hang-chain
 */
export function chainSlopes(
  chain: Chain,
  rest: ChainRest,
  ridgelineM: number | undefined,
  node: number,
  slopes: ChainSlopes,
): void {
  marchWhole(chain, rest, node);
  const { ridgeAlongN: rx, ridgeUpN: rz } = rest;
  const taut = ridgelineM !== undefined && (rx !== 0 || rz !== 0);
  prepare(taut ? ridgelineM / Math.sqrt(rx * rx + rz * rz) : 0, rx, rz);
  for (let cause = 0; cause < CHAIN_CAUSES.length; cause++) oneCause(cause, taut, slopes);
}

// Working stores, reused by every call so that none allocates.
const MARCH = newMarch();

/** The derivative of a stretch by the tension at its start: symmetric. */
interface Matrix {
  xx: number;
  xz: number;
  zz: number;
}

const FIRST = newMatrix();
const TO_NODE = newMatrix();
const CLOTH = newMatrix();
const ALL = newMatrix();
/** K⁻¹ and, of a taut ridgeline, the inverse of C + M − C K⁻¹ C. */
const K_INVERSE = newMatrix();
const S_INVERSE = newMatrix();

function newMatrix(): Matrix {
  return { xx: NaN, xz: NaN, zz: NaN };
}

/** How the end, the node and the cloth move with each cause while the tensions stay. */
const END_X = new Float64Array(CHAIN_CAUSES.length);
const END_Z = new Float64Array(CHAIN_CAUSES.length);
const NODE_X = new Float64Array(CHAIN_CAUSES.length);
const NODE_Z = new Float64Array(CHAIN_CAUSES.length);
const CLOTH_X = new Float64Array(CHAIN_CAUSES.length);
const CLOTH_Z = new Float64Array(CHAIN_CAUSES.length);
const DX = 0;
const DZ = 1;
const FIRST_LINK = 2;
const LAST_LINK = 3;
const STRETCH = 4;

/** The march, with what is fixed at held tensions noted on the way. */
function marchWhole(chain: Chain, rest: ChainRest, node: number): void {
  const links = chain.lengthM.length;
  const from = chain.ridgeFromNode;
  const to = chain.ridgeToNode;
  startMarch(MARCH, rest.alongN, rest.upN);
  marchLinks(chain, MARCH, 0, from);
  keep(MARCH, FIRST);
  END_X[DX] = -1;
  END_Z[DZ] = -1;
  strapCause(chain, 0, FIRST_LINK);
  NODE_X[FIRST_LINK] = at(END_X, FIRST_LINK);
  NODE_Z[FIRST_LINK] = at(END_Z, FIRST_LINK);
  const firstPerN = at(chain.lengthM, 0) * at(chain.stretchPerN, 0);
  const firstX = firstPerN * MARCH.alongN;
  const firstZ = firstPerN * MARCH.upN;
  MARCH.alongN -= rest.ridgeAlongN;
  MARCH.upN -= rest.ridgeUpN;
  clothStretch(chain, MARCH.alongN, MARCH.upN, node);
  marchLinks(chain, MARCH, from, node);
  keep(MARCH, TO_NODE);
  marchLinks(chain, MARCH, node, to);
  keep(MARCH, CLOTH);
  MARCH.alongN += rest.ridgeAlongN;
  MARCH.upN += rest.ridgeUpN;
  marchLinks(chain, MARCH, to, links);
  keep(MARCH, ALL);
  strapCause(chain, links - 1, LAST_LINK);
  const lastPerN = at(chain.lengthM, links - 1) * at(chain.stretchPerN, links - 1);
  NODE_X[STRETCH] = at(NODE_X, STRETCH) + firstX;
  NODE_Z[STRETCH] = at(NODE_Z, STRETCH) + firstZ;
  END_X[STRETCH] = firstX + at(CLOTH_X, STRETCH) + lastPerN * MARCH.alongN;
  END_Z[STRETCH] = firstZ + at(CLOTH_Z, STRETCH) + lastPerN * MARCH.upN;
  takeOff(TO_NODE, FIRST);
  takeOff(CLOTH, FIRST);
}

function keep({ xPerAlong, xPerUp, zPerUp }: March, into: Matrix): void {
  into.xx = xPerAlong;
  into.xz = xPerUp;
  into.zz = zPerUp;
}

function takeOff(from: Matrix, { xx, xz, zz }: Matrix): void {
  from.xx -= xx;
  from.xz -= xz;
  from.zz -= zz;
}

/** A longer strap moves the end along its own pull, which is the one the march has come to. */
function strapCause(chain: Chain, link: number, cause: number): void {
  const { alongN, upN } = MARCH;
  const perMetre = 1 / Math.sqrt(alongN * alongN + upN * upN) + at(chain.stretchPerN, link);
  END_X[cause] = perMetre * alongN;
  END_Z[cause] = perMetre * upN;
}

/** Stretch of the cloth up to the node, and of all of it. */
function clothStretch(chain: Chain, alongN: number, upN: number, node: number): void {
  let x = 0;
  let z = 0;
  let up = upN;
  for (let link = chain.ridgeFromNode; link < chain.ridgeToNode; link++) {
    if (link === node) {
      NODE_X[STRETCH] = x;
      NODE_Z[STRETCH] = z;
    }
    up += at(chain.weightN, link);
    const perN = at(chain.lengthM, link) * at(chain.stretchPerN, link);
    x += perN * alongN;
    z += perN * up;
  }
  CLOTH_X[STRETCH] = x;
  CLOTH_Z[STRETCH] = z;
}

function prepare(slope: number, rx: number, rz: number): void {
  invert(ALL.xx, ALL.xz, ALL.zz, K_INVERSE);
  if (slope === 0) return;
  const square = rx * rx + rz * rz;
  const { xx: cxx, xz: cxz, zz: czz } = CLOTH;
  const { xx: kxx, xz: kxz, zz: kzz } = K_INVERSE;
  const pxx = kxx * cxx + kxz * cxz;
  const pxz = kxx * cxz + kxz * czz;
  const pzx = kxz * cxx + kzz * cxz;
  const pzz = kxz * cxz + kzz * czz;
  const sxx = cxx + (slope * rz * rz) / square - (cxx * pxx + cxz * pzx);
  const sxz = cxz - (slope * rx * rz) / square - (cxx * pxz + cxz * pzz);
  const szz = czz + (slope * rx * rx) / square - (cxz * pxz + czz * pzz);
  invert(sxx, sxz, szz, S_INVERSE);
}

function invert(xx: number, xz: number, zz: number, into: Matrix): void {
  const determinant = xx * zz - xz * xz;
  into.xx = zz / determinant;
  into.xz = -xz / determinant;
  into.zz = xx / determinant;
}

function oneCause(cause: number, taut: boolean, slopes: ChainSlopes): void {
  const endX = at(END_X, cause);
  const endZ = at(END_Z, cause);
  const qx = timesX(K_INVERSE, endX, endZ);
  const qz = timesZ(K_INVERSE, endX, endZ);
  let ridgeX = 0;
  let ridgeZ = 0;
  if (taut) {
    const restX = timesX(CLOTH, qx, qz) - at(CLOTH_X, cause);
    const restZ = timesZ(CLOTH, qx, qz) - at(CLOTH_Z, cause);
    ridgeX = -timesX(S_INVERSE, restX, restZ);
    ridgeZ = -timesZ(S_INVERSE, restX, restZ);
  }
  const backX = timesX(CLOTH, ridgeX, ridgeZ);
  const backZ = timesZ(CLOTH, ridgeX, ridgeZ);
  const along = timesX(K_INVERSE, backX, backZ) - qx;
  const up = timesZ(K_INVERSE, backX, backZ) - qz;
  const clothX = along - ridgeX;
  const clothZ = up - ridgeZ;
  slopes.alongN[cause] = along;
  slopes.upN[cause] = up;
  slopes.ridgeAlongN[cause] = ridgeX;
  slopes.ridgeUpN[cause] = ridgeZ;
  slopes.nodeX[cause] = at(NODE_X, cause) + timesX(FIRST, along, up) + timesX(TO_NODE, clothX, clothZ);
  slopes.nodeZ[cause] = at(NODE_Z, cause) + timesZ(FIRST, along, up) + timesZ(TO_NODE, clothX, clothZ);
  slopes.raiseM[cause] = at(CLOTH_Z, cause) + timesZ(CLOTH, clothX, clothZ);
}

function timesX({ xx, xz }: Matrix, x: number, z: number): number {
  return xx * x + xz * z;
}

function timesZ({ xz, zz }: Matrix, x: number, z: number): number {
  return xz * x + zz * z;
}
