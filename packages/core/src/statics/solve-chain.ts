import { marchLinks, newMarch, startMarch, type Chain, type March } from "./chain.ts";

/**
 * Equilibrium of a chain: the tension at its start, and the ridgeline's pull as a vector from the
 * ridgeline's first node towards its second. `upN` is that of the first link: negative where it falls away.
 */
export interface ChainState {
  alongN: number;
  upN: number;
  ridgeAlongN: number;
  ridgeUpN: number;
  /** Largest miss at the far end or along the ridgeline, over the chain's own length. */
  residual: number;
  iterations: number;
  converged: boolean;
}

/** Links of a chain to solve, and where the far end must come to lie, from the near one [m]. */
export interface ChainEnds {
  readonly firstLink: number;
  readonly endLink: number;
  readonly dxM: number;
  readonly dzM: number;
}

export interface Ridgeline {
  readonly lengthM: number;
  readonly stretchPerN: number;
}

export function newChainState(): ChainState {
  return {
    alongN: 0,
    upN: 0,
    ridgeAlongN: 0,
    ridgeUpN: 0,
    residual: Infinity,
    iterations: 0,
    converged: false,
  };
}

/**
 * Tension at the start of a chain without a ridgeline, from the guess in `state`.
 *
 * Ends at the given residual, by default where rounding ends it.
 * Newton with the derivative carried along the march; the step is halved while the miss grows or the
 * pull along would not stay positive. The miss is the gradient of a convex energy of the starting tension,
 * so there is one equilibrium and every full Newton direction lessens the miss.
 */
export function solveSlack(
  chain: Chain,
  ends: ChainEnds,
  state: ChainState,
  residual = ROUNDING,
): ChainState {
  state.ridgeAlongN = 0;
  state.ridgeUpN = 0;
  const scale = reachOf(chain, ends);
  let miss = missSlack(chain, ends, state.alongN, state.upN);
  let step = 0;
  for (; step < MOST_STEPS && miss > residual * scale; step++) {
    const determinant = ALL.xPerAlong * ALL.zPerUp - ALL.xPerUp * ALL.xPerUp;
    const dAlong = (ALL.zPerUp * MISS.x - ALL.xPerUp * MISS.z) / determinant;
    const dUp = (ALL.xPerAlong * MISS.z - ALL.xPerUp * MISS.x) / determinant;
    const { alongN, upN } = state;
    const halvings = miss <= REACHED * scale ? 1 : MOST_HALVINGS;
    let share = 1;
    let trial = Infinity;
    for (let halving = 0; halving < halvings; halving++, share /= 2) {
      state.alongN = alongN - share * dAlong;
      state.upN = upN - share * dUp;
      if (!(state.alongN > 0)) continue;
      trial = missSlack(chain, ends, state.alongN, state.upN);
      if (trial < miss) break;
    }
    if (!(trial < miss)) {
      state.alongN = alongN;
      state.upN = upN;
      miss = missSlack(chain, ends, alongN, upN);
      break;
    }
    miss = trial;
  }
  return close(state, miss, scale, step, residual);
}

/**
 * Tension at the start and pull of a taut ridgeline, from the guess in `state`; four unknowns.
 *
 *   far end − support = 0;   (G₂ − G₁) − (R/|r| + R/EA) r = 0
 *
 * The same convex energy with the term R |r|: its least is at r = 0 where the ridgeline is slack, so call
 * this only when `solveSlack` left the ridgeline's nodes further apart than R.
 */
export function solveTaut(
  chain: Chain,
  ends: ChainEnds,
  ridge: Ridgeline,
  state: ChainState,
  residual = ROUNDING,
): ChainState {
  const scale = reachOf(chain, ends);
  let miss = missTaut(chain, ends, ridge, state);
  let step = 0;
  for (; step < MOST_STEPS && miss > residual * scale; step++) {
    newtonTaut();
    const { alongN, upN, ridgeAlongN, ridgeUpN } = state;
    const halvings = miss <= REACHED * scale ? 1 : MOST_HALVINGS;
    let share = 1;
    let trial = Infinity;
    for (let halving = 0; halving < halvings; halving++, share /= 2) {
      state.alongN = alongN - share * STEP.along;
      state.upN = upN - share * STEP.up;
      state.ridgeAlongN = ridgeAlongN - share * STEP.ridgeAlong;
      state.ridgeUpN = ridgeUpN - share * STEP.ridgeUp;
      if (!(state.alongN > 0) || !(state.alongN > state.ridgeAlongN) || !(state.ridgeAlongN > 0)) continue;
      trial = missTaut(chain, ends, ridge, state);
      if (trial < miss) break;
    }
    if (!(trial < miss)) {
      state.alongN = alongN;
      state.upN = upN;
      state.ridgeAlongN = ridgeAlongN;
      state.ridgeUpN = ridgeUpN;
      miss = missTaut(chain, ends, ridge, state);
      break;
    }
    miss = trial;
  }
  return close(state, miss, scale, step, residual);
}

const MOST_STEPS = 80;
const MOST_HALVINGS = 40;
/** Where rounding ends the approach, and the residual up to which an end is called reached. */
const ROUNDING = 1e-13;
const REACHED = 1e-10;

// Working stores, reused by every solve so that none allocates.
const ALL = newMarch();
const BEFORE = newMarch();
const CLOTH = { xM: 0, zM: 0, xPerAlong: 0, xPerUp: 0, zPerUp: 0 };
const MISS = { x: 0, z: 0, ridgeX: 0, ridgeZ: 0 };
const RIDGE = { xPerAlong: 0, xPerUp: 0, zPerUp: 0 };
const STEP = { along: 0, up: 0, ridgeAlong: 0, ridgeUp: 0 };

function close(state: ChainState, miss: number, scale: number, steps: number, residual: number): ChainState {
  state.residual = miss / scale;
  state.iterations = steps;
  state.converged = state.residual <= Math.max(REACHED, residual);
  return state;
}

function reachOf(chain: Chain, { firstLink, endLink }: ChainEnds): number {
  let sum = 0;
  for (let link = firstLink; link < endLink; link++) sum += chain.lengthM[link] ?? Number.NaN;
  return sum;
}

function missSlack(chain: Chain, ends: ChainEnds, alongN: number, upN: number): number {
  startMarch(ALL, alongN, upN);
  marchLinks(chain, ALL, ends.firstLink, ends.endLink);
  MISS.x = ALL.xM - ends.dxM;
  MISS.z = ALL.zM - ends.dzM;
  return Math.sqrt(MISS.x * MISS.x + MISS.z * MISS.z);
}

/** Marches to the ridgeline's first node, on with its pull taken off, and on with it put back. */
function missTaut(chain: Chain, ends: ChainEnds, ridge: Ridgeline, state: ChainState): number {
  startMarch(ALL, state.alongN, state.upN);
  marchLinks(chain, ALL, ends.firstLink, chain.ridgeFromNode);
  keepBefore(ALL);
  ALL.alongN -= state.ridgeAlongN;
  ALL.upN -= state.ridgeUpN;
  marchLinks(chain, ALL, chain.ridgeFromNode, chain.ridgeToNode);
  keepCloth(ALL);
  ALL.alongN += state.ridgeAlongN;
  ALL.upN += state.ridgeUpN;
  marchLinks(chain, ALL, chain.ridgeToNode, ends.endLink);
  MISS.x = ALL.xM - ends.dxM;
  MISS.z = ALL.zM - ends.dzM;
  missRidge(ridge, state.ridgeAlongN, state.ridgeUpN);
  return Math.sqrt(MISS.x * MISS.x + MISS.z * MISS.z + MISS.ridgeX * MISS.ridgeX + MISS.ridgeZ * MISS.ridgeZ);
}

function keepBefore(march: March): void {
  BEFORE.xM = march.xM;
  BEFORE.zM = march.zM;
  BEFORE.xPerAlong = march.xPerAlong;
  BEFORE.xPerUp = march.xPerUp;
  BEFORE.zPerUp = march.zPerUp;
}

function keepCloth(march: March): void {
  CLOTH.xM = march.xM - BEFORE.xM;
  CLOTH.zM = march.zM - BEFORE.zM;
  CLOTH.xPerAlong = march.xPerAlong - BEFORE.xPerAlong;
  CLOTH.xPerUp = march.xPerUp - BEFORE.xPerUp;
  CLOTH.zPerUp = march.zPerUp - BEFORE.zPerUp;
}

function missRidge({ lengthM, stretchPerN }: Ridgeline, alongN: number, upN: number): void {
  const square = alongN * alongN + upN * upN;
  const slope = lengthM / Math.sqrt(square);
  const step = slope + lengthM * stretchPerN;
  const bend = slope / square;
  MISS.ridgeX = CLOTH.xM - step * alongN;
  MISS.ridgeZ = CLOTH.zM - step * upN;
  RIDGE.xPerAlong = step - bend * alongN * alongN;
  RIDGE.xPerUp = -bend * alongN * upN;
  RIDGE.zPerUp = step - bend * upN * upN;
}

/**
 * The Newton step of the four unknowns. With K of the whole chain, C of the cloth and M of the ridgeline
 * the matrix is [K, −C; C, −C − M]; its Schur complement C + M − C K⁻¹ C is symmetric, 2 × 2.
 */
function newtonTaut(): void {
  const detK = ALL.xPerAlong * ALL.zPerUp - ALL.xPerUp * ALL.xPerUp;
  const kxx = ALL.zPerUp / detK;
  const kxz = -ALL.xPerUp / detK;
  const kzz = ALL.xPerAlong / detK;
  const cxx = CLOTH.xPerAlong;
  const cxz = CLOTH.xPerUp;
  const czz = CLOTH.zPerUp;
  // P = K⁻¹ C, q = K⁻¹ miss.
  const pxx = kxx * cxx + kxz * cxz;
  const pxz = kxx * cxz + kxz * czz;
  const pzx = kxz * cxx + kzz * cxz;
  const pzz = kxz * cxz + kzz * czz;
  const qx = kxx * MISS.x + kxz * MISS.z;
  const qz = kxz * MISS.x + kzz * MISS.z;
  const sxx = cxx + RIDGE.xPerAlong - (cxx * pxx + cxz * pzx);
  const sxz = cxz + RIDGE.xPerUp - (cxx * pxz + cxz * pzz);
  const szz = czz + RIDGE.zPerUp - (cxz * pxz + czz * pzz);
  const rx = cxx * qx + cxz * qz - MISS.ridgeX;
  const rz = cxz * qx + czz * qz - MISS.ridgeZ;
  const detS = sxx * szz - sxz * sxz;
  STEP.ridgeAlong = (szz * rx - sxz * rz) / detS;
  STEP.ridgeUp = (sxx * rz - sxz * rx) / detS;
  STEP.along = qx + pxx * STEP.ridgeAlong + pxz * STEP.ridgeUp;
  STEP.up = qz + pzx * STEP.ridgeAlong + pzz * STEP.ridgeUp;
}
