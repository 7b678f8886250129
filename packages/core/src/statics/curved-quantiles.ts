import { at } from "../numeric/at.ts";
import { normalShare } from "../numeric/normal-share.ts";

/** Places along the main direction at which the true map is worked out [standard deviations]. */
export const MAIN_PLACES = [-3, -2.2, -1.6, -1.05, -0.5, 0, 0.5, 1.05, 1.6, 2.2, 3] as const;

/** One quantity along the main direction, entry by entry as MAIN_PLACES. */
export interface CurvedQuantity {
  readonly value: Float64Array;
  /** Derivative along the main direction. */
  readonly slope: Float64Array;
  /** One standard deviation from all other directions. */
  readonly across: Float64Array;
}

export function newCurvedQuantity(): CurvedQuantity {
  const list = () => new Float64Array(MAIN_PLACES.length);
  return { value: list(), slope: list(), across: list() };
}

/**
 * The central 90 % of a quantity that is curved along one direction of normal errors and straight across it.
 *
 *   share below y = Σ w Φ((y − m)/d),   d² = across² + (deviation along the cell)²
 *
 * The main direction is cut into cells with their normal weights w; inside one the quantity is normal about
 * its mean m there. Between places it runs by cubics with the right slopes.
 *
 * Shapes   MAIN_PLACES.length entries → low and high, in the quantity's own unit
 * Error    of the share, about 0.2 % where the quantity bends as a hang does
 * Source   house-convention
 */
export function curvedRange(quantity: CurvedQuantity): readonly [low: number, high: number] {
  fillCells(quantity);
  const { mean, deviation } = momentsOfCells();
  if (!(deviation > SHARP)) return [mean, mean];
  return [
    quantileNear(mean - CENTRAL * deviation, deviation, 0.05),
    quantileNear(mean + CENTRAL * deviation, deviation, 0.95),
  ];
}

/** Standard deviations to either end of the central 90 % of a normal distribution. */
const CENTRAL = 1.645;
const PARTS = 2;
const CELLS = (MAIN_PLACES.length - 1) * PARTS;
/** A cell narrower than this is one value, such as a slack ridgeline's 0. */
const SHARP = 1e-9;
const CLOSING_STEPS = 4;
/** Where a normal distribution ends for good. */
const FAR_OUT = -8;

const MIDDLE = new Float64Array(CELLS);
const SPREAD = new Float64Array(CELLS);
/** Of each cell: its share of the normal distribution, and where in it that share's mean and one deviation lie, 0 to 1. */
const WEIGHT = new Float64Array(CELLS);
const MEAN_AT = new Float64Array(CELLS);
const DEVIATION = new Float64Array(CELLS);

for (let cell = 0; cell < CELLS; cell++) {
  const [from, to] = [edgeAt(cell), edgeAt(cell + 1)];
  const [below, above] = [cell === 0 ? FAR_OUT : from, cell === CELLS - 1 ? -FAR_OUT : to];
  const share = normalShare(above) - normalShare(below);
  const mean = (density(below) - density(above)) / share;
  const square = 1 + (below * density(below) - above * density(above)) / share - mean * mean;
  WEIGHT[cell] = share;
  MEAN_AT[cell] = (mean - from) / (to - from);
  DEVIATION[cell] = Math.sqrt(square) / (to - from);
}

function density(z: number): number {
  return Math.exp(-(z * z) / 2) / Math.sqrt(2 * Math.PI);
}

function edgeAt(edge: number): number {
  const place = Math.min(MAIN_PLACES.length - 2, Math.floor(edge / PARTS));
  const [from = NaN, to = NaN] = [MAIN_PLACES[place], MAIN_PLACES[place + 1]];
  return from + ((to - from) * (edge - place * PARTS)) / PARTS;
}

function fillCells({ value, slope, across }: CurvedQuantity): void {
  for (let place = 0; place + 1 < MAIN_PLACES.length; place++) {
    const width = (MAIN_PLACES[place + 1] ?? NaN) - (MAIN_PLACES[place] ?? NaN);
    const a = at(value, place);
    const b = at(value, place + 1);
    const da = held(width * at(slope, place), b - a);
    const db = held(width * at(slope, place + 1), b - a);
    let before = a;
    for (let part = 0; part < PARTS; part++) {
      const cell = place * PARTS + part;
      const middle = (part + at(MEAN_AT, cell)) / PARTS;
      const next = cubic(a, da, b, db, (part + 1) / PARTS);
      const aside = at(across, place) + (at(across, place + 1) - at(across, place)) * middle;
      const along = (next - before) * at(DEVIATION, cell);
      MIDDLE[cell] = cubic(a, da, b, db, middle);
      SPREAD[cell] = Math.sqrt(aside * aside + along * along) + SHARP / 1000;
      before = next;
    }
  }
}

/** A slope at a cell's end, held to three times the rise over the cell, so that a corner makes no overshoot. */
function held(slope: number, rise: number): number {
  if (slope * rise <= 0) return 0;
  return Math.abs(slope) > 3 * Math.abs(rise) ? 3 * rise : slope;
}

function cubic(a: number, da: number, b: number, db: number, t: number): number {
  const u = 1 - t;
  return a * u * u * (1 + 2 * t) + b * t * t * (3 - 2 * t) + da * t * u * u - db * t * t * u;
}

function momentsOfCells(): { mean: number; deviation: number } {
  let mean = 0;
  for (let cell = 0; cell < CELLS; cell++) mean += at(WEIGHT, cell) * at(MIDDLE, cell);
  let square = 0;
  for (let cell = 0; cell < CELLS; cell++) {
    const [off, spread] = [at(MIDDLE, cell) - mean, at(SPREAD, cell)];
    square += at(WEIGHT, cell) * (off * off + spread * spread);
  }
  return { mean, deviation: Math.sqrt(square) };
}

/** The value below which a share lies: a bracket grown about a guess, then closed by the Illinois form of false position. */
function quantileNear(guess: number, deviation: number, share: number): number {
  const sharp = sharpValue();
  if (shareBelow(sharp + SHARP) >= share) return sharp;
  let [low, high] = [guess, guess];
  let lowOver = shareBelow(guess) - share;
  let highOver = lowOver;
  for (let step = deviation / 4; lowOver > 0; step *= 2) {
    [high, highOver] = [low, lowOver];
    low -= step;
    lowOver = shareBelow(low) - share;
  }
  for (let step = deviation / 4; highOver < 0; step *= 2) {
    [low, lowOver] = [high, highOver];
    high += step;
    highOver = shareBelow(high) - share;
  }
  let lastSide = 0;
  for (let turn = 0; turn < CLOSING_STEPS && highOver > lowOver; turn++) {
    const y = low + ((high - low) * lowOver) / (lowOver - highOver);
    const over = shareBelow(y) - share;
    if (over < 0) {
      [low, lowOver] = [y, over];
      if (lastSide < 0) highOver /= 2;
      lastSide = -1;
    } else {
      [high, highOver] = [y, over];
      if (lastSide > 0) lowOver /= 2;
      lastSide = 1;
    }
  }
  return highOver > lowOver ? low + ((high - low) * lowOver) / (lowOver - highOver) : low;
}

/** The value of the cells that are one value; −Infinity where there are none. */
function sharpValue(): number {
  let value = -Infinity;
  for (let cell = 0; cell < CELLS; cell++)
    if (at(SPREAD, cell) < SHARP) value = Math.max(value, at(MIDDLE, cell));
  return value;
}

function shareBelow(y: number): number {
  let share = 0;
  for (let cell = 0; cell < CELLS; cell++) {
    share += at(WEIGHT, cell) * normalShare((y - at(MIDDLE, cell)) / at(SPREAD, cell));
  }
  return share;
}
