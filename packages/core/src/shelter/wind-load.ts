import type { Basis } from "../outcome/basis.ts";
import { refuseAll, succeed, type Outcome, type Refusal } from "../outcome/outcome.ts";
import { inDegrees, type Radians } from "../quantity/angle.ts";

export type Roof = "mono" | "duo";

export interface WindLoadInput {
  readonly windMS: number;
  readonly areaM2: number;
  /** Of the roof above level; a duopitch that sinks to its middle has a negative one. */
  readonly pitch: Radians;
  /** How far the space under the roof is closed: 0 open all round, 1 closed on one side. */
  readonly blockageRatio: number;
  readonly roof: Roof;
}

export interface WindLoad {
  readonly pressurePa: number;
  /** Greatest force onto and off the roof, square to it; both ≥ 0. */
  readonly downN: number;
  readonly upN: number;
  readonly basis: Basis;
}

/**
 * Wind on an open roof.
 *
 *   q = ½ ρ v²,  F = c q A;  c by pitch and blockage, straight lines between the rows
 *
 * Shapes   scalars in, scalars out
 * Units    windMS [m/s], areaM2 [m²], pitch [rad] → Pa, N
 * Holds    monopitch 0 to 30°, duopitch −20 to 30°; blockage 0 to 1; v and A ≥ 0. Between −5 and 5° a duopitch runs
 *          through the level roof of the monopitch table
 * Error    the table is for stiff roofs; cloth that flaps may take more
 * Source   en-1991-1-4, tables 7.6 and 7.7 (handbook/shelter.md)
 */
export function windLoad(input: WindLoadInput): Outcome<WindLoad> {
  const failure = refuseAll(faults(input));
  if (failure !== undefined) return failure;
  const { windMS, areaM2, pitch, blockageRatio, roof } = input;
  const { down, up } = canopyCoefficients(roof, inDegrees(pitch), blockageRatio);
  const pressurePa = dynamicPressurePa(windMS);
  const force = pressurePa * areaM2;
  return succeed({ pressurePa, downN: down * force, upN: up * force, basis: BASIS });
}

/** ½ ρ v² [Pa]. */
export function dynamicPressurePa(windMS: number): number {
  return 0.5 * AIR_KG_M3 * windMS * windMS;
}

/** Air density [kg/m³]. Source: en-1991-1-4, 4.5. */
const AIR_KG_M3 = 1.25;

export interface CanopyCoefficients {
  /** Onto the roof, ≥ 0. */
  readonly down: number;
  /** Off the roof, ≥ 0. */
  readonly up: number;
}

/** Overall force coefficients at a pitch in degrees; pitches beyond the table take its last row. */
export function canopyCoefficients(roof: Roof, pitchDeg: number, blockageRatio: number): CanopyCoefficients {
  const rows = roof === "mono" ? MONO : DUO;
  let [low, high] = [rows[0], rows[0]];
  for (const row of rows) {
    if (row[0] <= pitchDeg + SLACK) low = row;
    high = row;
    if (row[0] >= pitchDeg - SLACK) break;
  }
  const share = high[0] > low[0] ? (pitchDeg - low[0]) / (high[0] - low[0]) : 0;
  const mixed = (column: 1 | 2 | 3) => low[column] + share * (high[column] - low[column]);
  return { down: mixed(1), up: -(mixed(2) + blockageRatio * (mixed(3) - mixed(2))) };
}

const SLACK = 1e-9;

type Row = readonly [pitchDeg: number, most: number, leastOpen: number, leastBlocked: number];

/** Source: en-1991-1-4, table 7.6. */
const MONO: readonly [Row, ...Row[]] = [
  [0, 0.2, -0.5, -1.3],
  [5, 0.4, -0.7, -1.4],
  [10, 0.5, -0.9, -1.4],
  [15, 0.7, -1.1, -1.4],
  [20, 0.8, -1.3, -1.4],
  [25, 1, -1.6, -1.4],
  [30, 1.2, -1.8, -1.4],
];

/** Source: en-1991-1-4, table 7.7; the level row from table 7.6. */
const DUO: readonly [Row, ...Row[]] = [
  [-20, 0.7, -0.7, -1.3],
  [-15, 0.5, -0.6, -1.4],
  [-10, 0.4, -0.6, -1.4],
  [-5, 0.3, -0.5, -1.3],
  [0, 0.2, -0.5, -1.3],
  [5, 0.3, -0.6, -1.3],
  [10, 0.4, -0.7, -1.3],
  [15, 0.4, -0.8, -1.3],
  [20, 0.6, -0.9, -1.4],
  [25, 0.7, -1, -1.3],
  [30, 0.9, -1, -1.3],
];

function faults({ windMS, areaM2, pitch, blockageRatio, roof }: WindLoadInput): Refusal[] {
  const least = roof === "mono" ? 0 : -20;
  const pitchDeg = inDegrees(pitch);
  const checks: readonly (readonly [boolean, string, unknown, string])[] = [
    [windMS >= 0 && windMS < Infinity, "windMS", windMS, "a wind of 0 or more, in m/s"],
    [areaM2 >= 0 && areaM2 < Infinity, "areaM2", areaM2, "an area of 0 or more, in square metres"],
    [pitchDeg >= least - SLACK && pitchDeg <= 30 + SLACK, "pitch", pitchDeg, `${least} to 30 degrees`],
    [blockageRatio >= 0 && blockageRatio <= 1, "blockageRatio", blockageRatio, "0 to 1"],
  ];
  return checks.flatMap(([met, field, got, need]) => (met ? [] : [{ field, got, need }]));
}

const BASIS: Basis = {
  rule: "wind-load",
  source: "en-1991-1-4",
  assumes: [
    "overall force coefficients of a stiff canopy roof",
    "air of 1.25 kg/m³",
    "the speed given is the gust that acts on the whole roof",
  ],
};
