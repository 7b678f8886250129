import type { CostWeights } from "./cost-weights.ts";
import type { ObstacleKind } from "../site/obstacle.ts";

/** One house rule: its value, who says so, and the civil day it was read. */
export interface HouseRule<T = number> {
  readonly value: T;
  readonly source: string;
  readonly readOn?: string;
}

export type PresetName = "cautious" | "usual" | "backcountry";

/** The limits of land manager and organisation, with presets filled in. Lengths in metres. */
export interface HouseRules {
  readonly preset: PresetName;
  readonly spanMinM: HouseRule;
  readonly spanMaxM: HouseRule;
  readonly spanIdealM: HouseRule;
  readonly trunkMinM: HouseRule;
  readonly strapWidthMinM: HouseRule;
  readonly hammocksPerTree: HouseRule;
  /** Absent where nobody caps it. */
  readonly strapHeightMaxM?: HouseRule;
  readonly lowPointMaxM?: HouseRule;
  readonly designFactor: HouseRule;
  readonly angleMinRad: HouseRule;
  readonly angleMaxRad: HouseRule;
  /** Dead trees keep everything away within this many of their own heights. */
  readonly deadTreeHeights: HouseRule;
  /** The same for doubtful trees; absent: as for dead ones. */
  readonly doubtfulTreeHeights?: HouseRule;
  /** Half width of the strip a berth keeps for tarp and guy lines [m]. */
  readonly footprintHalfWidthM: HouseRule;
  /** Half width that the widest tarp dealt takes with its guys [m]; worked out for each plan, never stated; absent: no tarp. */
  readonly tarpHalfWidthM?: HouseRule;
  /** Whether hammocks at one tree must have 120° and more between them; absent: no. */
  readonly noSpokes?: HouseRule<boolean>;
  /** Whether berths keep room for the error of the survey; absent: where GPS or steps give positions and nobody is worse off. */
  readonly surveyRoom?: HouseRule<boolean>;
  /** Species, genera or common names of trees that must not be used. */
  readonly speciesNot?: HouseRule<readonly string[]>;
  /** One spare berth is kept for each so many people; absent: none is. */
  readonly sparePer?: HouseRule;
  /** Grown people and those under 18 lie at least so far apart; absent: nobody asks for it [m]. */
  readonly adultYouthM?: HouseRule;
  /** Most that all hammocks at one tree may pull it sideways, added as vectors; absent: nobody caps it [N]. */
  readonly treePullMaxN?: HouseRule;
  /** What the terms of the cost count; absent: as in the table of defaults. */
  readonly weights?: CostWeights;
  readonly setbacksM: Readonly<Record<Exclude<ObstacleKind, "overhead">, HouseRule>>;
}

/** Half width that a berth keeps from other berths, hazards and set-backs: the house's, or the tarp's where that is more [m]. */
export function keptHalfWidthM({ footprintHalfWidthM, tarpHalfWidthM }: HouseRules): number {
  return Math.max(footprintHalfWidthM.value, tarpHalfWidthM?.value ?? 0);
}
