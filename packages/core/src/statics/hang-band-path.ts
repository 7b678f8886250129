import { at } from "../numeric/at.ts";
import { MAIN_PLACES, newCurvedQuantity, type CurvedQuantity } from "./curved-quantiles.ts";
import { BAND_SCALES } from "./hang-band-scales.ts";
import {
  COME_QUANTITIES,
  comeOfFigures,
  deviated,
  deviatedRig,
  ERROR_NAMES,
  errorSizes,
  NO_DEVIATION,
  type BandInput,
  type ComeQuantity,
  type HangDeviation,
} from "./hang-deviation.ts";
import { hangFigures, type HangStart } from "./hang-figures.ts";
import { hangSlopes, SLOPE_QUANTITIES, startOff, type SlopesInto, type SolvedHang } from "./hang-slopes.ts";
import { startOf } from "./hang-trial.ts";

/** A hang along the one direction of errors that makes it flatter or steeper. */
export interface BandPath {
  /** One standard deviation along it, in the errors' own units. */
  readonly direction: HangDeviation;
  /** Every quantity on its own scale, entry by entry as MAIN_PLACES. */
  readonly curves: Readonly<Record<ComeQuantity, CurvedQuantity>>;
  /** Where the hang came to rest at each place. */
  readonly rests: readonly HangStart[];
}

/** The place of the plan itself. */
export const AT_PLAN = MAIN_PLACES.indexOf(0);

/**
 * The true forward map along the direction of errors in which the straps' mean angle changes most, with the
 * exact slopes across it.
 *
 * Shapes   nine errors → one direction, MAIN_PLACES.length solves, outwards from the plan on both sides
 * Error    each solve to 1e-8 of the chain's length
 * Source   hang-chain
 */
export function bandPath(input: BandInput): BandPath {
  const sizes = errorSizes(input.errors);
  const planned = plannedHang(input);
  const slopes = newErrorSlopes();
  readSlopes(hangSlopes(planned), sizes, slopes);
  const shares = mainShares(slopes);
  const direction = { ...NO_DEVIATION };
  ERROR_NAMES.forEach((name, error) => (direction[name] = at(shares, error) * sizes[name]));
  const curves = newCurves();
  const rests: HangStart[] = [];
  const note = (solved: SolvedHang, place: number) => {
    noteCurves(curves, solved, place, slopes, shares);
    const { lying, sitting } = solved.figures;
    rests[place] = { ...lying, sitting };
  };
  note(planned, AT_PLAN);
  for (const side of [1, -1]) {
    let last = planned;
    if (side < 0) hangSlopes(planned);
    for (let place = AT_PLAN + side; place >= 0 && place < MAIN_PLACES.length; place += side) {
      const start = startOff(last, times(direction, placeOf(place) - placeOf(place - side)));
      last = hangOff(input, times(direction, placeOf(place)), start);
      readSlopes(hangSlopes(last), sizes, slopes);
      note(last, place);
    }
  }
  return { direction, curves, rests };
}

/** One standard deviation of each quantity from input errors, as straight lines through the plan. */
export function inputSpread(input: BandInput): Readonly<Record<ComeQuantity, number>> {
  const slopes = newErrorSlopes();
  readSlopes(hangSlopes(plannedHang(input)), errorSizes(input.errors), slopes);
  const spread: Record<ComeQuantity, number> = { ...NOTHING };
  COME_QUANTITIES.forEach((quantity, index) => {
    spread[quantity] = Math.sqrt(slopes.reduce((sum, list) => sum + at(list, index) ** 2, 0));
  });
  return spread;
}

/** A hang off the plan, from where a solve may start. */
export function hangOff(input: BandInput, off: HangDeviation, start: HangStart): SolvedHang {
  const { setting, site, letOut } = deviated(input, off);
  const rig = deviatedRig(input, off);
  return { rig, site, setting, figures: hangFigures(rig, site, setting, start, CLOSE_ENOUGH), letOut };
}

/** So many standard deviations along the direction. */
export function times(direction: HangDeviation, by: number): HangDeviation {
  return {
    spanM: by * direction.spanM,
    headHeightM: by * direction.headHeightM,
    footHeightM: by * direction.footHeightM,
    headStrapM: by * direction.headStrapM,
    footStrapM: by * direction.footStrapM,
    groundM: by * direction.groundM,
    groundBetweenM: by * direction.groundBetweenM,
    stretchLog: by * direction.stretchLog,
    massRatio: by * direction.massRatio,
  };
}

export function placeOf(place: number): number {
  return MAIN_PLACES[place] ?? Number.NaN;
}

/** Residual of a solve, far closer than anything is known. */
const CLOSE_ENOUGH = 1e-8;

function plannedHang({ rig, site, trial }: BandInput): SolvedHang {
  const { setting } = trial;
  return {
    rig,
    site,
    setting,
    figures: hangFigures(rig, site, setting, startOf(trial.straps)),
    letOut: false,
  };
}

/** Slopes of everything per standard deviation of each error: a list an error, as ERROR_NAMES. */
type ErrorSlopes = readonly Float64Array[];

function newErrorSlopes(): ErrorSlopes {
  return ERROR_NAMES.map(() => new Float64Array(SLOPE_QUANTITIES.length));
}

function readSlopes(slopes: SlopesInto, sizes: HangDeviation, into: ErrorSlopes): void {
  for (let error = 0; error < into.length; error++) {
    const [name, list] = [ERROR_NAMES[error], into[error]];
    if (name === undefined || list === undefined) continue;
    slopes(name, list);
    for (let index = 0; index < list.length; index++) list[index] = at(list, index) * sizes[name];
  }
}

/**
 * How much of each error is in the main direction: their squares sum to 1, or all are 0 where nothing turns the straps.
 * A heavier sleeper is left to the straight lines: it scales the forces and hardly moves the shape. So is stretch where
 * it turns the straps by little.
 */
function mainShares(slopes: ErrorSlopes): Float64Array {
  const turns = Float64Array.from(slopes, (list) => at(list, 0) + at(list, 1));
  turns[ERROR_NAMES.indexOf("massRatio")] = 0;
  const square = turns.reduce((sum, turn) => sum + turn * turn, 0);
  const stretch = ERROR_NAMES.indexOf("stretchLog");
  if (at(turns, stretch) ** 2 < SMALL_STRETCH * square) turns[stretch] = 0;
  const size = Math.sqrt(turns.reduce((sum, turn) => sum + turn * turn, 0));
  return turns.map((turn) => (size > 0 ? turn / size : 0));
}

/** Share of the turn's variance below which stretch is left to the straight lines. */
const SMALL_STRETCH = 0.2;

/** Notes value, slope along and spread across of every quantity at one place, each on its own scale. */
function noteCurves(
  curves: BandPath["curves"],
  { rig, figures }: SolvedHang,
  place: number,
  slopes: ErrorSlopes,
  shares: Float64Array,
): void {
  const come = comeOfFigures(figures, 0);
  COME_QUANTITIES.forEach((quantity, index) => {
    let square = 0;
    let along = 0;
    for (let error = 0; error < slopes.length; error++) {
      const slope = at(slopes[error] ?? shares, index);
      square += slope * slope;
      along += slope * at(shares, error);
    }
    const scale = BAND_SCALES[quantity];
    const steep = scale.slope(come[quantity], rig.weightN);
    const curve = curves[quantity];
    curve.value[place] = scale.to(come[quantity], rig.weightN);
    curve.slope[place] = steep * along;
    curve.across[place] = steep * Math.sqrt(Math.max(0, square - along * along));
  });
}

function newCurves(): BandPath["curves"] {
  return {
    "head.angle": newCurvedQuantity(),
    "foot.angle": newCurvedQuantity(),
    "head.pullN": newCurvedQuantity(),
    "foot.pullN": newCurvedQuantity(),
    seatHeightM: newCurvedQuantity(),
    lowPointM: newCurvedQuantity(),
    footRaiseM: newCurvedQuantity(),
    ridgelinePullN: newCurvedQuantity(),
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
