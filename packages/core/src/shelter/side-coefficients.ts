import { canopyCoefficients, type CanopyCoefficients, type Roof } from "./wind-load.ts";

/**
 * Force on a side with air beneath it, of any steepness: the canopy tables as far as they go, then straight lines to an
 * upright board clear of the ground at 90°.
 *
 * Shapes   roof, pitch, blockage → coefficients onto and off the side
 * Units    degrees
 * Holds    −20 to 90°
 * Error    between the last row and the board nothing was measured: a guess that joins two tables
 * Source   en-1991-1-4, tables 7.6 and 7.7, and 7.4.3 for the board (handbook/shelter.md)
 */
export function openSide(roof: Roof, pitchDeg: number, blockageRatio: number): CanopyCoefficients {
  const last = canopyCoefficients(roof, Math.min(pitchDeg, LAST_ROW_DEG), blockageRatio);
  const share = Math.max(0, (pitchDeg - LAST_ROW_DEG) / (90 - LAST_ROW_DEG));
  return { down: mixed(last.down, BOARD, share), up: mixed(last.up, BOARD, share) };
}

const LAST_ROW_DEG = 30;
/** Force coefficient of a signboard, either way. Source: en-1991-1-4, 7.4.3. */
const BOARD = 1.8;

/**
 * Force on a side that is pegged to the ground, so that no air flows beneath: the outside of a pitched roof less what the
 * air inside does. The worst of all directions of the wind, as the canopy tables are.
 *
 *   onto: windward (¼ edge strip, ¾ field) + inner suction;  off: the worst of lee and gable wind + inner pressure
 *
 * Shapes   pitch, number of faces left open (ends, the other side) → coefficients onto and off the side
 * Units    degrees
 * Holds    any pitch; flatter than 15° and steeper than 75° take the row there
 * Error    for stiff roofs of houses; one open face works as a dominant opening, more of them as even leaks
 * Source   en-1991-1-4, tables 7.4a and 7.4b; 7.1 and 7.2.9 from memory (handbook/shelter.md)
 */
export function closedSide(pitchDeg: number, openFaces: number): CanopyCoefficients {
  const inner = INNER[Math.min(2, Math.max(0, openFaces))] ?? INNER[2];
  const { onto, lee, gable } = outside(pitchDeg);
  return { down: onto + inner.suction, up: Math.max(lee, gable) + inner.pressure };
}

interface Inner {
  readonly pressure: number;
  readonly suction: number;
}

/** Air inside: all closed; one face open, 0.9 of the wall's 0.8; more open, the upper curve of figure 7.13. */
const INNER: readonly [Inner, Inner, Inner] = [
  { pressure: 0.2, suction: 0.3 },
  { pressure: 0.72, suction: 0.72 },
  { pressure: 0.15, suction: 0.5 },
];

interface Outside {
  readonly onto: number;
  readonly lee: number;
  readonly gable: number;
}

function outside(pitchDeg: number): Outside {
  const within = Math.min(75, Math.max(15, pitchDeg));
  const next = ROWS.findIndex(({ deg }) => deg >= within);
  const high = ROWS[next] ?? ROWS[0];
  const low = ROWS[Math.max(0, next - 1)] ?? high;
  const share = high.deg > low.deg ? (within - low.deg) / (high.deg - low.deg) : 0;
  const of = (value: (row: PitchedRow) => number) => mixed(value(low), value(high), share);
  return {
    onto: of(({ strip, field }) => mixed(field, strip, STRIP)),
    lee: of(({ leeStrip, leeField }) => mixed(leeField, leeStrip, STRIP)),
    gable: of(({ gableEdge, gableNext, gableFar }) => 0.07 * gableEdge + 0.3 * gableNext + 0.63 * gableFar),
  };
}

/** Share of a side within a tenth of twice its height from the windward eave or from the ridge. */
const STRIP = 0.25;

/** Magnitudes: pressure to windward, suction to lee, and with the wind on the gable. */
interface PitchedRow {
  readonly deg: number;
  readonly strip: number;
  readonly field: number;
  readonly leeField: number;
  readonly leeStrip: number;
  readonly gableEdge: number;
  readonly gableNext: number;
  readonly gableFar: number;
}

/** Zones G, H, I, J of table 7.4a; the mean of F and G, H, I of table 7.4b. Source: en-1991-1-4. */
const ROWS: readonly [PitchedRow, ...PitchedRow[]] = [
  row(15, [0.2, 0.2, 0.4, 1], [1.3, 0.6, 0.5]),
  row(30, [0.7, 0.4, 0.4, 0.5], [1.25, 0.8, 0.5]),
  row(45, [0.7, 0.6, 0.2, 0.3], [1.25, 0.9, 0.5]),
  row(60, [0.7, 0.7, 0.2, 0.3], [1.15, 0.8, 0.5]),
  row(75, [0.8, 0.8, 0.2, 0.3], [1.15, 0.8, 0.5]),
];

function row(
  deg: number,
  [strip, field, leeField, leeStrip]: readonly [number, number, number, number],
  [gableEdge, gableNext, gableFar]: readonly [number, number, number],
): PitchedRow {
  return { deg, strip, field, leeField, leeStrip, gableEdge, gableNext, gableFar };
}

function mixed(from: number, to: number, share: number): number {
  return from + share * (to - from);
}
