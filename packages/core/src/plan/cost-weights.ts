import { DEFAULTS } from "./defaults.ts";

/** What each term of the cost counts, in metres of span off the ideal for one unit of its measure. */
export interface CostWeights {
  /** Metres of span off the ideal. */
  readonly span: number;
  /** How far the berth lies along the wind: 0 across it, 1 along it. */
  readonly wind: number;
  /** Rise for each metre, along the berth and across it. */
  readonly slope: number;
  /** Metres from the meeting point. */
  readonly walk: number;
  /** Metres from the hub of the own group, each person. */
  readonly spread: number;
  /** People beyond the radius of their group. */
  readonly far: number;
  /** Wishes not met, and pairs of different zones too near each other. */
  readonly wish: number;
}

/** The weights where the camp file is silent: the span alone, and what belongs together stays together. */
export const COST_WEIGHTS: CostWeights = {
  span: DEFAULTS["rules.weights.span"].value,
  wind: DEFAULTS["rules.weights.wind"].value,
  slope: DEFAULTS["rules.weights.slope"].value,
  walk: DEFAULTS["rules.weights.walk"].value,
  spread: DEFAULTS["rules.weights.spread"].value,
  far: DEFAULTS["rules.weights.far"].value,
  wish: DEFAULTS["rules.weights.wish"].value,
};
