import { at } from "../numeric/at.ts";
import { marchLinks, newMarch, startMarch, type Chain } from "./chain.ts";
import type { ChainRest } from "./chain-slopes.ts";
import { CLOTH_CELLS } from "./hang-constants.ts";
import type { HangRig } from "./hang-rig.ts";
import { newChainState, solveSlack, solveTaut, type ChainEnds, type ChainState } from "./solve-chain.ts";

/** The ground and the trunks of one pair. */
export interface HangSite {
  readonly headRadiusM: number;
  readonly footRadiusM: number;
  /** Ground at the foot tree above the ground at the head tree [m]. */
  readonly footGroundM: number;
}

/** What a person sets. Heights from each tree's own ground; straps as long as they are without load [m]. */
export interface HangSetting {
  readonly spanM: number;
  readonly headHeightM: number;
  readonly footHeightM: number;
  readonly headStrapM: number;
  readonly footStrapM: number;
}

/** What comes of a setting: the forward solve, lying and sitting. */
export interface HangFigures {
  readonly alongN: number;
  readonly headDownN: number;
  readonly footDownN: number;
  readonly ridgeN: number;
  readonly seatHeightM: number;
  readonly lowPointM: number;
  readonly footRaiseM: number;
  /** Where both solves came to rest, and the node that is lowest lying. */
  readonly lying: ChainRest;
  readonly sitting: ChainRest;
  readonly lowNode: number;
  /** How far seat and low point lie from the head tree's centre [m]. */
  readonly seatXM: number;
  readonly lowXM: number;
  readonly residual: number;
  readonly iterations: number;
  readonly converged: boolean;
}

/** Places of all nodes of a chain, x from the head tree's centre, z above the head tree's ground [m]. */
export interface NodePlaces {
  readonly xM: Float64Array;
  readonly zM: Float64Array;
}

/** Where the forward solve may start from; left unchanged. Sitting starts at the lying's rest unless told. */
export interface HangStart extends ChainRest {
  readonly sitting?: ChainRest;
}

export const LYING_PLACES: NodePlaces = newPlaces();
export const SITTING_PLACES: NodePlaces = newPlaces();

/**
 * Solves a setting as it hangs: lying, then sitting across the middle with the same straps.
 *
 * Slack first; the ridgeline joins only where the gathers would come further apart than it is long.
 * Heights of seat and low point are from the straight line between the grounds at the two trees.
 * The places of the last call's nodes stay readable in LYING_PLACES and SITTING_PLACES.
 * Ends at the given residual over the chain's length, by default where rounding ends it.
 */
export function hangFigures(
  rig: HangRig,
  site: HangSite,
  setting: HangSetting,
  start?: HangStart,
  residual?: number,
): HangFigures {
  const ends = {
    firstLink: 0,
    endLink: CLOTH_CELLS + 2,
    dxM: setting.spanM - site.headRadiusM - site.footRadiusM,
    dzM: site.footGroundM + setting.footHeightM - setting.headHeightM,
  };
  rig.lying.lengthM[0] = setting.headStrapM;
  rig.lying.lengthM[CLOTH_CELLS + 1] = setting.footStrapM;
  setStart(LYING, rig, start);
  hungBetween(rig, rig.lying, ends, LYING, residual);
  setStart(SITTING, rig, start?.sitting ?? LYING);
  hungBetween(rig, rig.sitting, ends, SITTING, residual);
  placeNodes(rig.lying, LYING, site.headRadiusM, setting.headHeightM, LYING_PLACES);
  placeNodes(rig.sitting, SITTING, site.headRadiusM, setting.headHeightM, SITTING_PLACES);
  const slope = site.footGroundM / setting.spanM;
  const { xM, zM } = SITTING_PLACES;
  const lowNode = lowestNode(LYING_PLACES, slope);
  return {
    alongN: LYING.alongN,
    headDownN: -LYING.upN,
    footDownN: rig.weightN + LYING.upN,
    ridgeN: Math.sqrt(LYING.ridgeAlongN * LYING.ridgeAlongN + LYING.ridgeUpN * LYING.ridgeUpN),
    seatHeightM: at(zM, MIDDLE_NODE) - slope * at(xM, MIDDLE_NODE),
    lowPointM: at(LYING_PLACES.zM, lowNode) - slope * at(LYING_PLACES.xM, lowNode),
    footRaiseM: at(LYING_PLACES.zM, CLOTH_CELLS + 1) - at(LYING_PLACES.zM, 1),
    lying: restOf(LYING),
    sitting: restOf(SITTING),
    lowNode,
    seatXM: at(xM, MIDDLE_NODE),
    lowXM: at(LYING_PLACES.xM, lowNode),
    residual: Math.max(LYING.residual, SITTING.residual),
    iterations: LYING.iterations + SITTING.iterations,
    converged: LYING.converged && SITTING.converged,
  };
}

function restOf({ alongN, upN, ridgeAlongN, ridgeUpN }: ChainState): ChainRest {
  return { alongN, upN, ridgeAlongN, ridgeUpN };
}

/** The node on which the sleeper sits. */
export const MIDDLE_NODE = 1 + CLOTH_CELLS / 2;
const LYING = newChainState();
const SITTING = newChainState();
const MARCH = newMarch();

function newPlaces(): NodePlaces {
  return { xM: new Float64Array(CLOTH_CELLS + 3), zM: new Float64Array(CLOTH_CELLS + 3) };
}

function setStart(state: ChainState, rig: HangRig, start: ChainRest | undefined): void {
  state.alongN = start !== undefined && start.alongN > 0 ? start.alongN : 0.8 * rig.weightN;
  state.upN = start?.upN ?? -rig.weightN / 2;
  state.ridgeAlongN = Math.max(0, start?.ridgeAlongN ?? 0);
  state.ridgeUpN = start?.ridgeUpN ?? 0;
}

/**
 * A start with the ridgeline taut is tried as such first: there is only one rest, so whichever way it is
 * found it is the same.
 */
function hungBetween(
  rig: HangRig,
  chain: Chain,
  ends: ChainEnds,
  state: ChainState,
  residual: number | undefined,
): void {
  if (rig.ridgelineM === undefined) {
    solveSlack(chain, ends, state, residual);
    return;
  }
  const ridge = { lengthM: rig.ridgelineM, stretchPerN: 0 };
  const { alongN, upN } = state;
  if (state.ridgeAlongN > 0) {
    solveTaut(chain, ends, ridge, state, residual);
    if (state.converged) return;
  }
  state.alongN = alongN;
  state.upN = upN;
  solveSlack(chain, ends, state, residual);
  const iterations = state.iterations;
  startMarch(MARCH, state.alongN, state.upN);
  marchLinks(chain, MARCH, 0, 1);
  const [fromX, fromZ] = [MARCH.xM, MARCH.zM];
  marchLinks(chain, MARCH, 1, CLOTH_CELLS + 1);
  const [dx, dz] = [MARCH.xM - fromX, MARCH.zM - fromZ];
  if (!(dx * dx + dz * dz > rig.ridgelineM * rig.ridgelineM)) return;
  state.ridgeAlongN = RIDGE_GUESS * rig.weightN;
  state.ridgeUpN = (state.ridgeAlongN * dz) / dx;
  state.alongN += state.ridgeAlongN / 2;
  solveTaut(chain, ends, ridge, state, residual);
  state.iterations += iterations;
}

/** First guess of the ridgeline's pull over the weight. */
const RIDGE_GUESS = 0.2;

/** Writes the places of all nodes of a solved chain. */
export function placeNodes(
  { lengthM, stretchPerN, weightN, ridgeFromNode, ridgeToNode }: Chain,
  { alongN, upN, ridgeAlongN, ridgeUpN }: ChainRest,
  startX: number,
  startZ: number,
  { xM, zM }: NodePlaces,
): void {
  let along = alongN;
  let up = upN;
  let x = startX;
  let z = startZ;
  xM[0] = x;
  zM[0] = z;
  for (let link = 0; link < CLOTH_CELLS + 2; link++) {
    if (link === ridgeFromNode) {
      along -= ridgeAlongN;
      up -= ridgeUpN;
    }
    if (link === ridgeToNode) {
      along += ridgeAlongN;
      up += ridgeUpN;
    }
    up += at(weightN, link);
    const length = at(lengthM, link);
    const step = length * (1 / Math.sqrt(along * along + up * up) + at(stretchPerN, link));
    x += step * along;
    z += step * up;
    xM[link + 1] = x;
    zM[link + 1] = z;
  }
}

/** The cloth's node nearest to the straight line between the grounds at the trees. */
function lowestNode({ xM, zM }: NodePlaces, slope: number): number {
  let [lowest, lowNode] = [Infinity, 1];
  for (let node = 1; node <= CLOTH_CELLS + 1; node++) {
    const overM = at(zM, node) - slope * at(xM, node);
    if (overM < lowest) [lowest, lowNode] = [overM, node];
  }
  return lowNode;
}
