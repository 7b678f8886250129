import { at } from "../numeric/at.ts";

/**
 * A chain of straight links between two supports, with weights at its nodes. Node i follows i links;
 * node 0 and the last node are the supports. A ridgeline may join two nodes.
 *
 * Shapes   lengthM, stretchPerN: links; weightN: links + 1 (the entry of node 0 must be 0)
 * Units    lengthM unstretched [m], stretchPerN = 1/EA [1/N], weightN [N]
 */
export interface Chain {
  readonly lengthM: Float64Array;
  readonly stretchPerN: Float64Array;
  readonly weightN: Float64Array;
  readonly ridgeFromNode: number;
  readonly ridgeToNode: number;
}

/** What a march along the chain carries. Mutable and reused, so that no step allocates. */
export interface March {
  /** Tension in the last link passed: along x, and up z [N]. */
  alongN: number;
  upN: number;
  /** Where the march stands, from its start [m]. */
  xM: number;
  zM: number;
  /** Derivative of (x, z) by the tension at the start; symmetric [m/N]. */
  xPerAlong: number;
  xPerUp: number;
  zPerUp: number;
}

export function newMarch(): March {
  return { alongN: 0, upN: 0, xM: 0, zM: 0, xPerAlong: 0, xPerUp: 0, zPerUp: 0 };
}

export function startMarch(march: March, alongN: number, upN: number): void {
  march.alongN = alongN;
  march.upN = upN;
  march.xM = 0;
  march.zM = 0;
  march.xPerAlong = 0;
  march.xPerUp = 0;
  march.zPerUp = 0;
}

/**
 * Marches over links `first` up to but not including `end`.
 *
 *   t += (0, w) at each node passed;  p += (l/|t| + l/EA) t;  dp/dt += (l/|t| + l/EA) I − l t tᵀ/|t|³
 *
 * Since every t differs from the first by a constant, the sum of dp/dt is the derivative of the end by
 * the starting tension: a symmetric 2 × 2 matrix, positive definite unless all links lie in one line.
 */
export function marchLinks(chain: Chain, march: March, first: number, end: number): void {
  const { lengthM, stretchPerN, weightN } = chain;
  const along = march.alongN;
  const along2 = along * along;
  let { upN, zM } = march;
  // Sums of l/|t| + l/EA, and of l/|t|³ times 1, up and up²: what is common to all links is put in afterwards.
  let steps = 0;
  let bends = 0;
  let bendsUp = 0;
  let bendsUp2 = 0;
  for (let link = first; link < end; link++) {
    upN += at(weightN, link);
    const length = at(lengthM, link);
    const up2 = upN * upN;
    const inverse = 1 / Math.sqrt(along2 + up2);
    const slope = length * inverse;
    const step = slope + length * at(stretchPerN, link);
    const bend = slope * inverse * inverse;
    steps += step;
    zM += step * upN;
    bends += bend;
    bendsUp += bend * upN;
    bendsUp2 += bend * up2;
  }
  march.upN = upN;
  march.xM += steps * along;
  march.zM = zM;
  march.xPerAlong += steps - along2 * bends;
  march.xPerUp -= along * bendsUp;
  march.zPerUp += steps - bendsUp2;
}
