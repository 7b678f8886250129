import { at } from "../numeric/at.ts";
import { GRAVITY_M_S2 } from "../quantity/constants.ts";
import { loadNodes, lyingBody, type LoadStretch } from "./body-on-cloth.ts";
import type { Chain } from "./chain.ts";
import { CLOTH_CELLS, HIP_BREADTH_RATIO, STRAP_EA_N } from "./hang-constants.ts";
import type { HangInput } from "./hang-types.ts";

/** What hangs: cloth, straps' stretch and sleeper, without the trees. Made once and used for many pairs. */
export interface HangRig {
  readonly clothM: number;
  readonly statureM: number;
  readonly ridgelineM: number | undefined;
  /** Sleeper and hammock [N], and the sleeper's share of it. */
  readonly weightN: number;
  readonly sleeperRatio: number;
  /** 1/EA of a strap [1/N]. */
  readonly strapStretchPerN: number;
  /** Strap, cloth in equal cells, strap. The straps' lengths are set anew for each solve. */
  readonly lying: Chain;
  readonly sitting: Chain;
}

/** How the lying body's weight lies on the cloth. "vee": all at its centre of mass. "arc": even. */
export type BodyModel = "body" | "vee" | "arc";

export interface RigOptions {
  readonly body: BodyModel;
  /** Sleeper's mass and straps' stretch over what the input says. */
  readonly massRatio: number;
  readonly stretchRatio: number;
}

export type RigInput = Pick<HangInput, "hammock" | "suspension" | "sleeper">;

export const PLAIN_RIG: RigOptions = { body: "body", massRatio: 1, stretchRatio: 1 };

export function hangRig(input: RigInput, options: RigOptions = PLAIN_RIG): HangRig {
  const { hammock, suspension, sleeper } = input;
  const massKg = sleeper.massKg * options.massRatio;
  const strapStretchPerN = options.stretchRatio / (suspension.eaN ?? STRAP_EA_N[suspension.type]);
  const lengthM = new Float64Array(CLOTH_CELLS + 2).fill(hammock.lengthM / CLOTH_CELLS);
  const stretchPerN = new Float64Array(CLOTH_CELLS + 2).fill(
    hammock.eaN === undefined ? 0 : options.stretchRatio / hammock.eaN,
  );
  stretchPerN[0] = strapStretchPerN;
  stretchPerN[CLOTH_CELLS + 1] = strapStretchPerN;
  const chainWith = (stretches: readonly LoadStretch[]): Chain => ({
    lengthM,
    stretchPerN,
    weightN: nodeWeights(hammock.lengthM, [cloth(hammock.lengthM, hammock.massKg), ...stretches]),
    ridgeFromNode: 1,
    ridgeToNode: CLOTH_CELLS + 1,
  });
  return {
    clothM: hammock.lengthM,
    statureM: sleeper.statureM,
    ridgelineM: hammock.ridgelineM,
    weightN: (massKg + hammock.massKg) * GRAVITY_M_S2,
    sleeperRatio: massKg / (massKg + hammock.massKg),
    strapStretchPerN,
    lying: chainWith(lyingLoad(options.body, hammock.lengthM, sleeper.statureM, massKg)),
    sitting: chainWith([sittingLoad(options.body, hammock.lengthM, sleeper.statureM, massKg)]),
  };
}

/** The same rig with all that stretches stretching so much more. */
export function stretchedRig(rig: HangRig, stretchRatio: number): HangRig {
  if (stretchRatio === 1) return rig;
  const stretchPerN = rig.lying.stretchPerN.map((perN) => perN * stretchRatio);
  return {
    ...rig,
    strapStretchPerN: rig.strapStretchPerN * stretchRatio,
    lying: { ...rig.lying, stretchPerN },
    sitting: { ...rig.sitting, stretchPerN },
  };
}

function cloth(lengthM: number, massKg: number): LoadStretch {
  return { fromM: 0, toM: lengthM, massKg, comRatio: 0.5 };
}

function lyingLoad(
  body: BodyModel,
  clothM: number,
  statureM: number,
  massKg: number,
): readonly LoadStretch[] {
  const lying = lyingBody(clothM, statureM, massKg);
  if (body === "body") return lying;
  if (body === "arc") return [cloth(clothM, massKg)];
  const moment = lying.reduce(
    (sum, part) => sum + part.massKg * (part.fromM + part.comRatio * (part.toM - part.fromM)),
    0,
  );
  return [around(moment / massKg, POINT_M, massKg)];
}

/** Across the middle on the breadth of the hips, feet not yet taking weight. */
function sittingLoad(body: BodyModel, clothM: number, statureM: number, massKg: number): LoadStretch {
  return around(clothM / 2, body === "vee" ? POINT_M : HIP_BREADTH_RATIO * statureM, massKg);
}

/** Stretch that stands for a point; the cells spread it to their nodes anyway. */
const POINT_M = 0.001;

function around(middleM: number, lengthM: number, massKg: number): LoadStretch {
  return { fromM: middleM - lengthM / 2, toM: middleM + lengthM / 2, massKg, comRatio: 0.5 };
}

/** Weights of the chain's nodes: a strap's end, the cloth's nodes, a strap's end. */
function nodeWeights(clothM: number, stretches: readonly LoadStretch[]): Float64Array {
  const nodesKg = new Float64Array(CLOTH_CELLS + 1);
  loadNodes(nodesKg, clothM, stretches);
  const weightN = new Float64Array(CLOTH_CELLS + 3);
  for (let node = 0; node <= CLOTH_CELLS; node++) weightN[node + 1] = at(nodesKg, node) * GRAVITY_M_S2;
  return weightN;
}
