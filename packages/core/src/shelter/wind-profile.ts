/** What stands round the camp, for the wind near the ground. */
export type Surrounding = "wood" | "open";

export interface WindProfileInput {
  /** Wind in the open at `fromM` above the ground. */
  readonly windMS: number;
  readonly fromM: number;
  /** Height at which the wind is wanted. */
  readonly heightM: number;
  readonly surrounding: Surrounding;
}

/**
 * Wind at a height near the ground, from the wind over open ground at another.
 *
 *   open: u(z) = u(h) ln(z/z₀) / ln(h/z₀), z₀ = 0.05 m;  wood: 0.2 of the open wind at 10 m, whatever the height
 *
 * Shapes   scalar in, scalar out
 * Units    m/s, metres
 * Holds    heights above 0.1 m and below 200 m; lower ones count as 0.1 m. In a wood below its crowns
 * Error    a wood: 0.1 (dense, in leaf) to 0.3 (bare stems, an edge); the open: 20 % by the ground's roughness
 * Source   log-profile, forest-wind (handbook/shelter.md)
 */
export function windAtHeight({ windMS, fromM, heightM, surrounding }: WindProfileInput): number {
  if (surrounding === "wood") return WOOD_SHARE * openWind(windMS, fromM, STATION_M);
  return openWind(windMS, fromM, heightM);
}

/**
 * The same for a gust, which reaches farther down into a wood: 0.3 of the open gust at 10 m.
 *
 * Shapes, units and range as `windAtHeight`
 * Source   log-profile, forest-wind: the upper end of its spread (handbook/shelter.md)
 */
export function gustAtHeight({ windMS, fromM, heightM, surrounding }: WindProfileInput): number {
  if (surrounding === "wood") return WOOD_GUST_SHARE * openWind(windMS, fromM, STATION_M);
  return openWind(windMS, fromM, heightM);
}

function openWind(windMS: number, fromM: number, heightM: number): number {
  return (windMS * logHeight(heightM)) / logHeight(fromM);
}

function logHeight(heightM: number): number {
  return Math.log(Math.max(heightM, LOWEST_M) / ROUGHNESS_M);
}

/** Roughness length of open country with low plants [m]. Source: en-1991-1-4, table 4.1, category II. */
const ROUGHNESS_M = 0.05;
const LOWEST_M = 0.1;
/** Height of weather services' wind [m]. */
const STATION_M = 10;
/** Source: forest-wind; spread 0.1 to 0.3. */
const WOOD_SHARE = 0.2;
const WOOD_GUST_SHARE = 0.3;

/**
 * Wind at a height as a share of that at 1.5 m, the height that a camp's wind is told for.
 *
 *   ln(z/z₀) / ln(1.5/z₀);  in a wood never above 1, for the trunk space is even
 *
 * Shapes   scalar in, ratio out
 * Units    metres
 * Holds    heights as for `windAtHeight`
 * Error    between trunks the shape near the ground is taken from the open; bushes and slopes change it
 * Source   log-profile; in a wood house-convention (handbook/shelter.md)
 */
export function windRatioAt(heightM: number, surrounding: Surrounding): number {
  const ratio = logHeight(heightM) / logHeight(TOLD_AT_M);
  return surrounding === "wood" ? Math.min(1, ratio) : ratio;
}

/** Height of a tarp's middle, for which the wind at the berth is told [m]. */
export const TOLD_AT_M = 1.5;

export interface WindSpeed {
  readonly windMS: number;
  /** Share of the time. */
  readonly share: number;
}

/**
 * Three speeds that stand for a wind with gusts: mean and spread of a normal one, the gust at three deviations.
 *
 *   u, u ± √3 s with shares ⅔, ⅙, ⅙;  s = (gust − mean)/3
 *
 * Shapes   scalars in, three speeds out (one where there is no gust above the mean)
 * Units    m/s
 * Holds    gust ≥ mean ≥ 0; a lull below nothing counts as calm
 * Error    three-point Gauss-Hermite: exact for fifth powers of the speed
 * Source   gust-spread (handbook/shelter.md)
 */
export function gustySpeeds(windMS: number, gustMS: number): readonly WindSpeed[] {
  const spread = (Math.sqrt(3) * Math.max(0, gustMS - windMS)) / GUST_DEVIATIONS;
  if (spread === 0) return [{ windMS, share: 1 }];
  return [
    { windMS: Math.max(0, windMS - spread), share: 1 / 6 },
    { windMS, share: 2 / 3 },
    { windMS: windMS + spread, share: 1 / 6 },
  ];
}

const GUST_DEVIATIONS = 3;
