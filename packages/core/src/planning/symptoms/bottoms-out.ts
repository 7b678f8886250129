import { BEDDING_IN_M, CREEP_RATIO } from "../../statics/hang-constants.ts";
import type { HangDeviation } from "../../statics/hang-band.ts";
import { AS_PLANNED, plus, type HungModel } from "../adjust/hung-model.ts";
import type { SymptomRule } from "./symptom-case.ts";
import type { AdviceKey, SymptomFigure } from "./symptom-types.ts";

/**
 * Lower in the morning than in the evening: wraps and knots bed in, straps creep. The hang is solved again with both
 * straps longer by what they are likely to have given; in short, settle ≈ stretch of each side / sin θ.
 *
 * Source   hang-chain; creep and bedding-in common-practice
 */
export const BOTTOMS_OUT: SymptomRule = {
  tells: {},
  moved: nightsCreep,
  look({ model, measured }) {
    const { planned, request } = model;
    const morning = model.come(plus(AS_PLANNED, nightsCreep(model))).state;
    const afterTen = model.come(plus(AS_PLANNED, beddedIn(model))).state;
    const settleM = planned.state.lowPointM - morning.lowPointM;
    const low = request.limits.lowPointMinM;
    const figures: SymptomFigure[] = [
      { figure: "creep", value: meanCreep(model), unit: "m" },
      { figure: "settle", value: settleM, unit: "m" },
      { figure: "settle-ten-minutes", value: planned.state.lowPointM - afterTen.lowPointM, unit: "m" },
      { figure: "settle-overnight", value: afterTen.lowPointM - morning.lowPointM, unit: "m" },
      { figure: "low-point-evening", value: planned.state.lowPointM, unit: "m", low },
      { figure: "low-point-morning", value: morning.lowPointM, unit: "m", low },
    ];
    const advice: AdviceKey[] = ["re-set-after-ten-minutes"];
    if (morning.lowPointM < low) advice.push("start-higher");
    if (measured.seatHeightM === undefined) return { figures, advice };
    const droppedM = planned.state.seatHeightM - measured.seatHeightM;
    figures.push({ figure: "drop-found", value: droppedM, unit: "m" });
    if (droppedM > MORE_THAN_CREEP * settleM) advice.unshift("look-at-knots-and-trees");
    return { figures, advice };
  },
};

/** A drop of more than twice the likely settle is no creep: a knot slips, or a tree gives. Spread of the creep. */
const MORE_THAN_CREEP = 2;

/** What each strap gives in the first ten minutes. */
function beddedIn({ request }: HungModel): Partial<HangDeviation> {
  const beddedM = BEDDING_IN_M[request.suspension.type];
  return { headStrapM: beddedM, footStrapM: beddedM };
}

/** What each strap gives in the first night. */
function nightsCreep({ planned, request }: HungModel): Partial<HangDeviation> {
  const { type } = request.suspension;
  const creepM = (strapM: number): number => strapM * CREEP_RATIO[type] + BEDDING_IN_M[type];
  const { head, foot } = planned.state;
  return { headStrapM: creepM(head.strapLengthM), footStrapM: creepM(foot.strapLengthM) };
}

function meanCreep(model: HungModel): number {
  const { headStrapM = 0, footStrapM = 0 } = nightsCreep(model);
  return (headStrapM + footStrapM) / 2;
}
