import { at } from "../numeric/at.ts";
import type { ChainRest } from "./chain-slopes.ts";
import { AT_PLAN, hangOff, placeOf, times, type BandPath } from "./hang-band-path.ts";
import { BAND_SCALES } from "./hang-band-scales.ts";
import { comeOfFigures, type BandInput, type Come, type ComeQuantity } from "./hang-deviation.ts";
import type { HangStart } from "./hang-figures.ts";
import { hangRig, PLAIN_RIG } from "./hang-rig.ts";
import { startOf } from "./hang-trial.ts";

/** What the lying body might be instead does to one quantity, on its own scale. */
export interface BodyDifference {
  /** Taken off at the low end, ≤ 0, and added at the high one, ≥ 0. */
  readonly lower: number;
  readonly higher: number;
  /** Where all three bodies lie at the plan. */
  readonly least: number;
  readonly greatest: number;
}

/**
 * How far a body that is a point (a V) or even (an arc) hangs below and above the modelled one: at the plan, and near
 * both ends of the central 90 %, so that each end is moved by what is possible there.
 */
export function bodyDifferences(
  input: BandInput,
  path: BandPath,
): (quantity: ComeQuantity) => BodyDifference {
  const others = (["vee", "arc"] as const).map((body) => solveBody(input, path, body));
  return (quantity) => {
    const { value } = path.curves[quantity];
    const scaled = (place: number) =>
      others.map((comes) => BAND_SCALES[quantity].to(comes[place]?.[quantity] ?? NaN, input.rig.weightN));
    const offAt = (place: number) => scaled(place).map((other) => other - at(value, place));
    const rises = at(value, HIGH_PLACE) >= at(value, LOW_PLACE);
    const [lowPlace, highPlace] = rises ? [LOW_PLACE, HIGH_PLACE] : [HIGH_PLACE, LOW_PLACE];
    return {
      lower: Math.min(0, ...offAt(lowPlace)),
      higher: Math.max(0, ...offAt(highPlace)),
      least: Math.min(at(value, AT_PLAN), ...scaled(AT_PLAN)),
      greatest: Math.max(at(value, AT_PLAN), ...scaled(AT_PLAN)),
    };
  };
}

/** Places 1.6 standard deviations either side of the plan. */
const LOW_PLACE = AT_PLAN - 3;
const HIGH_PLACE = AT_PLAN + 3;

/** What comes of another body at the three places; every solve starts as far from the modelled rest as the first ended. */
function solveBody(input: BandInput, path: BandPath, body: "vee" | "arc"): readonly Come[] {
  const other = { ...input, rig: hangRig(input.rigInput, { ...PLAIN_RIG, body }) };
  const comes: Come[] = [];
  let change: HangStart | undefined;
  for (const place of [AT_PLAN, LOW_PLACE, HIGH_PLACE]) {
    const modelled = path.rests[place] ?? startOf(input.trial.straps);
    const start = change === undefined ? modelled : restPlus(modelled, change, 1);
    const { figures } = hangOff(other, times(path.direction, placeOf(place)), start);
    change ??= restPlus({ ...figures.lying, sitting: figures.sitting }, modelled, -1);
    comes[place] = comeOfFigures(figures, 0);
  }
  return comes;
}

function restPlus(rest: HangStart, by: HangStart, sign: 1 | -1): HangStart {
  const lying = chainRestPlus(rest, by, sign);
  if (rest.sitting === undefined || by.sitting === undefined) return lying;
  return { ...lying, sitting: chainRestPlus(rest.sitting, by.sitting, sign) };
}

function chainRestPlus(rest: ChainRest, by: ChainRest, sign: 1 | -1): ChainRest {
  return {
    alongN: rest.alongN + sign * by.alongN,
    upN: rest.upN + sign * by.upN,
    ridgeAlongN: rest.ridgeAlongN + sign * by.ridgeAlongN,
    ridgeUpN: rest.ridgeUpN + sign * by.ridgeUpN,
  };
}
