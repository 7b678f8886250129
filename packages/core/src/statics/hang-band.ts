import { at } from "../numeric/at.ts";
import { curvedRange, MAIN_PLACES, newCurvedQuantity, type CurvedQuantity } from "./curved-quantiles.ts";
import { BAND_SCALES } from "./hang-band-scales.ts";
import type { ChainRest } from "./chain-slopes.ts";
import {
  COME_QUANTITIES,
  comeOfFigures,
  deviated,
  deviatedRig,
  ERROR_NAMES,
  errorSizes,
  NO_DEVIATION,
  type BandInput,
  type Come,
  type ComeQuantity,
  type HangDeviation,
} from "./hang-deviation.ts";
import { hangFigures, type HangStart } from "./hang-figures.ts";
import { hangRig, PLAIN_RIG } from "./hang-rig.ts";
import { hangSlopes, SLOPE_QUANTITIES, startOff, type SlopesInto, type SolvedHang } from "./hang-slopes.ts";
import { startOf } from "./hang-trial.ts";
import type { BandRange } from "./hang-types.ts";

export {
  COME_QUANTITIES,
  comeOf,
  ERROR_NAMES,
  errorSizes,
  type BandInput,
  type ComeQuantity,
  type ErrorName,
  type HangDeviation,
} from "./hang-deviation.ts";

export type HangBand = Readonly<Partial<Record<ComeQuantity, BandRange>>>;

/**
 * How unsure we are of what comes of a hang before anybody sits and corrects: the central 90 % of errors in what
 * was set and measured, and on top, at full width, what the lying body might be instead: all its weight in one
 * point (a V), or spread evenly (an arc).
 *
 * The errors that make a hang flatter or steeper bend everything; they are gathered into one direction, along
 * which the true forward map is solved. Across it quantities run straight, by the exact slopes at each place.
 *
 *   low = quantile 5 % + least body difference ≤ 0,   high = quantile 95 % + greatest body difference ≥ 0
 *
 * Error    the part from input errors covers 88 to 92 % of sampled ones, short straps and taut ridgelines among them
 * Source   hang-chain; errors common-practice
 */
export function hangBand(input: BandInput): HangBand {
  solveAlong(input);
  addBodies(input);
  const band: Partial<Record<ComeQuantity, BandRange>> = {};
  for (const quantity of toldOf(input)) {
    const [low, high] = curvedRange(ALONG[quantity].curve);
    const { lower, higher, least, greatest } = ALONG[quantity];
    band[quantity] = inPlainUnits(
      input,
      quantity,
      Math.min(low + lower, least),
      Math.max(high + higher, greatest),
    );
  }
  return band;
}

/** The central 90 % of input errors alone, the lying body as modelled. */
export function inputBand(input: BandInput): HangBand {
  solveAlong(input);
  const band: Partial<Record<ComeQuantity, BandRange>> = {};
  for (const quantity of toldOf(input)) {
    const [low, high] = curvedRange(ALONG[quantity].curve);
    band[quantity] = inPlainUnits(input, quantity, low, high);
  }
  return band;
}

/** One standard deviation of each quantity from input errors, as straight lines through the plan. */
export function inputSpread(input: BandInput): Readonly<Record<ComeQuantity, number>> {
  const { rig, site, trial } = input;
  const figures = hangFigures(rig, site, trial.setting, startOf(trial.straps));
  const slopes = hangSlopes({ rig, site, setting: trial.setting, figures, letOut: false });
  readSlopes(slopes, errorSizes(input.errors));
  const spread = { ...NOTHING };
  COME_QUANTITIES.forEach((quantity, index) => {
    const square = BY_ERROR.reduce((sum, list) => sum + at(list, index) ** 2, 0);
    spread[quantity] = Math.sqrt(square);
  });
  return spread;
}

/** Slopes of everything by each error, per standard deviation of it. */
const BY_ERROR = ERROR_NAMES.map(() => new Float64Array(SLOPE_QUANTITIES.length));

function readSlopes(slopes: SlopesInto, sizes: HangDeviation): void {
  ERROR_NAMES.forEach((name, error) => {
    const list = BY_ERROR[error];
    if (list === undefined) return;
    slopes(name, list);
    for (let index = 0; index < list.length; index++) list[index] = at(list, index) * sizes[name];
  });
}

interface Along {
  readonly curve: CurvedQuantity;
  /** What other bodies take off at the low end, and add at the high one. */
  lower: number;
  higher: number;
  /** Where all three bodies lie at the plan. */
  least: number;
  greatest: number;
}

// Working store, reused by every call.
const ALONG: Readonly<Record<ComeQuantity, Along>> = {
  "head.angle": newAlong(),
  "foot.angle": newAlong(),
  "head.pullN": newAlong(),
  "foot.pullN": newAlong(),
  seatHeightM: newAlong(),
  lowPointM: newAlong(),
  footRaiseM: newAlong(),
  ridgelinePullN: newAlong(),
};

function newAlong(): Along {
  return { curve: newCurvedQuantity(), lower: 0, higher: 0, least: 0, greatest: 0 };
}

const MIDDLE = MAIN_PLACES.indexOf(0);
/** Places at which the other bodies are tried: as planned, and near both ends of the central 90 %. */
const BODY_PLACES = [MIDDLE, MIDDLE - 3, MIDDLE + 3];

function toldOf({ rig }: BandInput): readonly ComeQuantity[] {
  return COME_QUANTITIES.filter((quantity) => quantity !== "ridgelinePullN" || rig.ridgelineM !== undefined);
}

function inPlainUnits({ rig }: BandInput, quantity: ComeQuantity, low: number, high: number): BandRange {
  const { back } = BAND_SCALES[quantity];
  return [back(low, rig.weightN), back(high, rig.weightN)];
}

/** The main direction: how much of each error, in standard deviations; and the same in the errors' own units. */
const MAIN = new Float64Array(ERROR_NAMES.length);
let MAIN_OFF: HangDeviation = NO_DEVIATION;

/** Solves the hang at every place along the main direction, outwards from the plan on both sides. */
function solveAlong(input: BandInput): void {
  const { rig, site, trial, errors } = input;
  const sizes = errorSizes(errors);
  const figures = hangFigures(rig, site, trial.setting, startOf(trial.straps));
  const planned: SolvedHang = { rig, site, setting: trial.setting, figures, letOut: false };
  readSlopes(hangSlopes(planned), sizes);
  MAIN_OFF = mainDirection(sizes);
  note(input, planned, MIDDLE);
  for (const side of [1, -1]) {
    let last = planned;
    if (side < 0) hangSlopes(planned);
    for (let place = MIDDLE + side; place >= 0 && place < MAIN_PLACES.length; place += side) {
      const on = (MAIN_PLACES[place] ?? NaN) - (MAIN_PLACES[place - side] ?? NaN);
      last = solvedAt(input, scaled(MAIN_PLACES[place] ?? NaN), startOff(last, scaled(on)));
      readSlopes(hangSlopes(last), sizes);
      note(input, last, place);
    }
  }
}

function solvedAt(input: BandInput, off: HangDeviation, start: HangStart): SolvedHang {
  const { setting, site, letOut } = deviated(input, off);
  const rig = deviatedRig(input, off);
  return { rig, site, setting, figures: hangFigures(rig, site, setting, start, BAND_RESIDUAL), letOut };
}

/** Far closer than anything is known; over the chain's length. */
const BAND_RESIDUAL = 1e-8;

/** So much of the main direction. */
function scaled(by: number): HangDeviation {
  return {
    spanM: by * MAIN_OFF.spanM,
    headHeightM: by * MAIN_OFF.headHeightM,
    footHeightM: by * MAIN_OFF.footHeightM,
    headStrapM: by * MAIN_OFF.headStrapM,
    footStrapM: by * MAIN_OFF.footStrapM,
    groundM: by * MAIN_OFF.groundM,
    groundBetweenM: 0,
    stretchLog: by * MAIN_OFF.stretchLog,
    massRatio: 0,
  };
}

/**
 * One standard deviation along the direction in which the straps' mean angle changes most. A heavier sleeper is left
 * to the straight lines: it scales the forces and hardly moves the shape. So is stretch where it turns the straps
 * by little.
 */
function mainDirection(sizes: HangDeviation): HangDeviation {
  const turn = (error: number) => at(BY_ERROR[error] ?? MAIN, 0) + at(BY_ERROR[error] ?? MAIN, 1);
  let [square, stretch] = [0, 0];
  ERROR_NAMES.forEach((name, error) => {
    MAIN[error] = name === "massRatio" ? 0 : turn(error);
    square += at(MAIN, error) ** 2;
    if (name === "stretchLog") stretch = at(MAIN, error) ** 2;
  });
  const dropsStretch = stretch < SMALL_STRETCH * square;
  if (dropsStretch) square -= stretch;
  const direction = { ...NO_DEVIATION };
  ERROR_NAMES.forEach((name, error) => {
    const drops = !(square > 0) || (dropsStretch && name === "stretchLog");
    MAIN[error] = drops ? 0 : at(MAIN, error) / Math.sqrt(square);
    direction[name] = at(MAIN, error) * sizes[name];
  });
  return direction;
}

/** Share of the turn's variance below which stretch is left to the straight lines. */
const SMALL_STRETCH = 0.2;

/** Where the hang came to rest at each place: the other bodies' starts. */
const RESTS: HangStart[] = [];

/** Notes value, slope along and spread across of every quantity at one place, each on its own scale. */
function note({ rig }: BandInput, { figures }: SolvedHang, place: number): void {
  const come = comeOfFigures(figures, 0);
  for (let index = 0; index < COME_QUANTITIES.length; index++) {
    let [square, along] = [0, 0];
    for (let error = 0; error < ERROR_NAMES.length; error++) {
      const slope = at(BY_ERROR[error] ?? MAIN, index);
      square += slope * slope;
      along += slope * at(MAIN, error);
    }
    const quantity = COME_QUANTITIES[index];
    if (quantity === undefined) continue;
    const { curve } = ALONG[quantity];
    const scale = BAND_SCALES[quantity];
    const steep = scale.slope(come[quantity], rig.weightN);
    curve.value[place] = scale.to(come[quantity], rig.weightN);
    curve.slope[place] = steep * along;
    curve.across[place] = steep * Math.sqrt(Math.max(0, square - along * along));
  }
  RESTS[place] = { ...figures.lying, sitting: figures.sitting };
}

/** How far the other bodies lie below and above the modelled one, at the plan and near both ends. */
function addBodies(input: BandInput): void {
  for (const quantity of COME_QUANTITIES) {
    const along = ALONG[quantity];
    along.lower = 0;
    along.higher = 0;
    along.least = at(along.curve.value, MIDDLE);
    along.greatest = along.least;
  }
  for (const body of ["vee", "arc"] as const) {
    const rig = hangRig(input.rigInput, { ...PLAIN_RIG, body });
    let change: HangStart | undefined;
    for (const place of BODY_PLACES) {
      const modelled = RESTS[place] ?? startOf(input.trial.straps);
      const start = change === undefined ? modelled : restPlus(modelled, change, 1);
      const { figures } = solvedAt({ ...input, rig }, scaled(MAIN_PLACES[place] ?? NaN), start);
      change ??= restPlus({ ...figures.lying, sitting: figures.sitting }, modelled, -1);
      noteBody(comeOfFigures(figures, 0), place, rig.weightN);
    }
  }
}

function noteBody(come: Come, place: number, weightN: number): void {
  for (const quantity of COME_QUANTITIES) {
    const along = ALONG[quantity];
    const { value } = along.curve;
    const there = BAND_SCALES[quantity].to(come[quantity], weightN);
    if (place === MIDDLE) {
      along.least = Math.min(along.least, there);
      along.greatest = Math.max(along.greatest, there);
      continue;
    }
    const other = there - at(value, place);
    const isHighEnd = at(value, place) >= at(value, 2 * MIDDLE - place);
    if (isHighEnd) along.higher = Math.max(along.higher, other);
    else along.lower = Math.min(along.lower, other);
  }
}

/** A rest moved by so many times another; a ridgeline's pull only where both are taut. */
function restPlus(rest: HangStart, by: HangStart, times: 1 | -1): HangStart {
  const lying = chainRestPlus(rest, by, times);
  if (rest.sitting === undefined || by.sitting === undefined) return lying;
  return { ...lying, sitting: chainRestPlus(rest.sitting, by.sitting, times) };
}

function chainRestPlus(rest: ChainRest, by: ChainRest, times: 1 | -1): ChainRest {
  return {
    alongN: rest.alongN + times * by.alongN,
    upN: rest.upN + times * by.upN,
    ridgeAlongN: rest.ridgeAlongN + times * by.ridgeAlongN,
    ridgeUpN: rest.ridgeUpN + times * by.ridgeUpN,
  };
}

const NOTHING: Readonly<Record<ComeQuantity, number>> = {
  "head.angle": 0,
  "foot.angle": 0,
  "head.pullN": 0,
  "foot.pullN": 0,
  seatHeightM: 0,
  lowPointM: 0,
  footRaiseM: 0,
  ridgelinePullN: 0,
};
