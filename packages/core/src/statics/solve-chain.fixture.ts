import { marchLinks, newMarch, startMarch, type Chain } from "./chain.ts";
import { newChainState, solveSlack, type ChainState } from "./solve-chain.ts";

export interface ChainGiven {
  readonly lengths: readonly number[];
  /** Weights of the nodes between the links. */
  readonly weights: readonly number[];
  readonly stretchPerN?: number;
  readonly ridge?: readonly [number, number];
}

export function chainOf({ lengths, weights, stretchPerN = 0, ridge = [0, 0] }: ChainGiven): Chain {
  return {
    lengthM: Float64Array.from(lengths),
    stretchPerN: new Float64Array(lengths.length).fill(stretchPerN),
    weightN: Float64Array.from([0, ...weights, 0]),
    ridgeFromNode: ridge[0],
    ridgeToNode: ridge[1],
  };
}

/** A chain of equal links with its own weight; each node carries the halves of its two links. */
export function uniformChain(links: number, lengthM: number, weightNPerM: number, stretchPerN = 0): Chain {
  const lengths = Array.from({ length: links }, () => lengthM / links);
  const weights = Array.from({ length: links - 1 }, () => (weightNPerM * lengthM) / links);
  return chainOf({ lengths, weights, stretchPerN });
}

export function restOf(chain: Chain, dxM: number, dzM: number): ChainState {
  const weightN = chain.weightN.reduce((sum, weight) => sum + weight, 0);
  const state = { ...newChainState(), alongN: 0.8 * weightN, upN: -weightN / 2 };
  return solveSlack(chain, { firstLink: 0, endLink: chain.lengthM.length, dxM, dzM }, state);
}

/** Places of all nodes from the first, x and z. */
export function placesOf(chain: Chain, state: ChainState): (readonly [number, number])[] {
  const march = newMarch();
  startMarch(march, state.alongN, state.upN);
  const places: (readonly [number, number])[] = [[0, 0]];
  for (let link = 0; link < chain.lengthM.length; link++) {
    if (link === chain.ridgeFromNode) turn(march, -state.ridgeAlongN, -state.ridgeUpN);
    if (link === chain.ridgeToNode) turn(march, state.ridgeAlongN, state.ridgeUpN);
    marchLinks(chain, march, link, link + 1);
    places.push([march.xM, march.zM]);
  }
  return places;
}

function turn(march: { alongN: number; upN: number }, alongN: number, upN: number): void {
  march.alongN += alongN;
  march.upN += upN;
}
