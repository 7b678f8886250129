import type { PlannedBerth } from "../plan/plan.ts";
import { hungModel, type HungModel } from "./adjust/hung-model.ts";
import { keepsAll, overLimits } from "./adjust/over-limits.ts";
import { handMarks, type MarkedBerth } from "./hand-marks.ts";
import { stateBy, type FourMarks } from "./marked-state.ts";

/** Lowest and highest that still serves [m]. */
export type HandRange = readonly [number, number];

/** Between which whole centimetres each figure that hands set still serves. */
export type HandRanges = Readonly<Partial<Record<keyof FourMarks, HandRange>>>;

/**
 * How far each of the four marks may be off, the other three as marked: so that a card that says 25 cm also says what
 * serves around 25, whatever the plan had before it was rounded.
 *
 *   from the mark outwards, a centimetre at a time, while every limit of the hang is kept
 *
 * Shapes   one berth → a range for each mark. None where the marks themselves overstep a limit. A berth that does not
 *          say what was asked for gives the ranges of the plan, cut to whole centimetres
 * Units    SI
 * Holds    as handMarks; no further than 30 cm either way
 * Error    up to 1 cm narrower than the true range at either end
 * Source   house-convention; forward model hang-chain
 */
export function handRanges(berth: MarkedBerth): HandRanges {
  const known = told.get(berth.hang);
  if (known !== undefined) return known;
  const { hang, request } = berth;
  const model = request === undefined ? undefined : hungModel(request);
  const ranges = model?.ok === true ? around(model.value, berth) : asPlanned(hang);
  told.set(hang, ranges);
  return ranges;
}

/** Front of the card, and whoever else asks. */
const told = new WeakMap<PlannedBerth["hang"], HandRanges>();

const MARKS = ["headHeightM", "footOverHeadM", "headStrapM", "footStrapM"] as const;
const MOST_CM = 30;

function around(model: HungModel, berth: MarkedBerth): HandRanges {
  const marks = handMarks(berth);
  const { request } = model;
  const by = { ...request, limits: request.okLimits ?? request.limits };
  const keeps = (key: keyof FourMarks, offCm: number): boolean => {
    const state = stateBy(model, berth.hang, { ...marks, [key]: marks[key] + offCm / 100 });
    if (state === undefined) return false;
    const over = overLimits(state, by);
    return keepsAll(over) && over.walls.every((value) => value === 0);
  };
  if (!keeps("headHeightM", 0)) return {};
  const furthest = (key: keyof FourMarks, way: 1 | -1): number => {
    let cm = 0;
    while (cm < MOST_CM && keeps(key, way * (cm + 1))) cm += 1;
    return marks[key] + (way * cm) / 100;
  };
  const ranges: Partial<Record<keyof FourMarks, HandRange>> = {};
  for (const key of MARKS) ranges[key] = [furthest(key, -1), furthest(key, 1)];
  return ranges;
}

function asPlanned({ ok, foot, levelFootOverHeadM }: PlannedBerth["hang"]): HandRanges {
  const levelM = foot.strapHeightM - levelFootOverHeadM;
  const ranges: Partial<Record<keyof FourMarks, HandRange>> = {};
  const keep = (key: keyof FourMarks, of: keyof typeof ok, lessM = 0): void => {
    const range = ok[of];
    if (range !== undefined) ranges[key] = inside(range.low - lessM, range.high - lessM);
  };
  keep("headHeightM", "head.strapHeightM");
  keep("footOverHeadM", "foot.strapHeightM", levelM);
  keep("headStrapM", "head.strapLengthM");
  keep("footStrapM", "foot.strapLengthM");
  return ranges;
}

/** To whole centimetres, never wider than the range itself. */
function inside(low: number, high: number): HandRange {
  return [Math.ceil(low * 100 - 1e-6) / 100, Math.floor(high * 100 + 1e-6) / 100];
}
