import { bracketedRoot } from "../numeric/bracketed-root.ts";

export interface RidgePullInput {
  /** Tree to tree. */
  readonly spanM: number;
  /** What hangs on the cord or pulls at it, square to it, spread evenly. */
  readonly loadN: number;
  /** Pull at which the hitches were set, with nothing on the cord. */
  readonly setN: number;
  /** Force per strain of the cord. */
  readonly eaN: number;
}

export interface RidgePull {
  readonly pullN: number;
  /** Dip at the middle, towards the load. */
  readonly sagM: number;
}

/**
 * A ridge cord that was set tight and then loaded evenly along its length.
 *
 *   T² (T − T₀) = EA W²/24,  sag = W d/(8 T)
 *
 * Shapes   scalars in, scalars out
 * Units    spanM [m], loadN, setN, eaN [N] → N, m
 * Holds    span > 0, load ≥ 0, set ≥ 0, EA > 0; sag below a tenth of the span
 * Error    parabola for the catenary: below 1 % there. Knots that slip and nylon that goes slack when wet are not in it
 * Source   tarp-statics (handbook/shelter.md)
 */
export function ridgePull({ spanM, loadN, setN, eaN }: RidgePullInput): RidgePull {
  if (!(loadN > 0)) return { pullN: setN, sagM: 0 };
  const wanted = (eaN * loadN * loadN) / 24;
  const most = (setN + Math.cbrt(wanted)) * (1 + 1e-9);
  const { x } = bracketedRoot((pull) => pull * pull * (pull - setN) - wanted, setN, most);
  return { pullN: x, sagM: (loadN * spanM) / (8 * x) };
}

/**
 * Pull along the cloth at each of the two edges that hold a panel against an even pressure.
 *
 *   F √(1/4 + 1/(8 b)²),  b = billow/width
 *
 * Shapes   scalar in, scalar out
 * Units    newtons on the whole panel → newtons at each edge
 * Holds    a panel that billows by a tenth of its width, whatever way it is pitched
 * Error    flatter cloth pulls harder: 2.5 times the load at a twentieth, 0.8 at a sixth
 * Source   tarp-statics (handbook/shelter.md)
 */
export function clothEdgePullN(loadN: number): number {
  return loadN * Math.hypot(1 / 2, 1 / (8 * BILLOW));
}

const BILLOW = 0.1;
