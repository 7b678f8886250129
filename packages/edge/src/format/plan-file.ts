import {
  inDegrees,
  radians,
  type DealtAnew,
  type OkRange,
  type Plan,
  type PlanCostTerm,
  type PlannedBerth,
  type PlanRepair,
  type RobustCount,
} from "@nightspan/core";
import { alternativesFile } from "./alternatives-file.ts";
import { explanationFile, repairFile, unplacedFile } from "./explanation-file.ts";
import { findingFile } from "./finding-file.ts";
import { hangFile } from "./hang-file.ts";
import { berthParts, planParts } from "./night-file.ts";
import { convert, present } from "./optional.ts";
import { PLAN_FORMAT, type PlanFile } from "./plan-schema.ts";
import { requestFile } from "./request-file.ts";
import { tidy } from "./tidy.ts";

/** The plan in the form of its file, with what it mends where it is a repair. What was not computed is left out and stands in `not_checked`. */
export function planFile(plan: Plan, repair?: PlanRepair): PlanFile {
  return {
    format: PLAN_FORMAT,
    camp: plan.campName,
    engine: plan.engine,
    verdict: plan.verdict,
    trees_looked_at: present({ ...plan.treesLookedAt, by: [...plan.treesLookedAt.by] }),
    checked: [...plan.checked],
    not_checked: [...plan.notChecked],
    asked: plan.asked,
    placed: plan.placed,
    bound: plan.bound,
    cost: tidy(plan.cost),
    lower_bound: tidy(plan.lowerBound),
    gap: tidy(plan.gap),
    method: plan.method,
    ...present({
      cost_terms: plan.costTerms?.map(termFile),
      dealt_anew: plan.dealtAnew === undefined ? undefined : dealtAnewFile(plan.dealtAnew),
      robust: plan.robust === undefined ? undefined : robustFile(plan.robust),
      kept_half_width_m: plan.keptHalfWidthM === undefined ? undefined : tidy(plan.keptHalfWidthM),
    }),
    berths: plan.berths.map(berthFile),
    unplaced: plan.unplaced.map(unplacedFile),
    ...explanationFile(plan),
    ...planParts(plan),
    ...(repair === undefined ? {} : { repair: repairFile(repair) }),
    supply: supplyFile(plan.supply),
    defaults_used: plan.defaultsUsed.map(({ field, value, for: ids }) =>
      present({ field, value, for: ids.length > 0 ? [...ids] : undefined }),
    ),
    findings: plan.findings.map(findingFile),
  };
}

function dealtAnewFile({ placedBefore, changes }: DealtAnew): PlanFile["dealt_anew"] {
  return {
    placed_before: placedBefore,
    changes: changes.map(({ sleeper, kind, from, to }) => ({ sleeper, kind, ...present({ from }), to })),
  };
}

function robustFile({ errorM, placed, most, asSurveyed }: RobustCount): PlanFile["robust"] {
  return present({ error_m: tidy(errorM), placed, most, as_surveyed: asSurveyed });
}

function termFile({ name, weight, measure, cost }: PlanCostTerm): PlanCostTerm {
  return { name, weight: tidy(weight), measure: tidy(measure), cost: tidy(cost) };
}

/** The text of a saved plan. */
export function writePlan(file: PlanFile): string {
  return `${JSON.stringify(file, null, 2)}\n`;
}

function berthFile(berth: PlannedBerth): PlanFile["berths"][number] {
  return present({
    id: berth.id,
    sleeper: berth.sleeper,
    head_tree: berth.headTree,
    foot_tree: berth.footTree,
    span_m: tidy(berth.spanM),
    bearing_deg: convert(berth.bearingRad, (bearing) => tidy(inDegrees(radians(bearing)))),
    pair: berth.pair,
    ground_known: berth.groundKnown,
    step_it_out: berth.stepItOut,
    hang: hangFile(berth.hang, berth.groundKnown),
    request: berth.request === undefined ? undefined : requestFile(berth.request),
    span_window: berth.spanWindow === undefined ? undefined : windowFile(berth.spanWindow),
    kit: Object.keys(berth.kit).length === 0 ? undefined : { ...berth.kit },
    set_by: berth.setBy,
    ...berthParts(berth),
    alternatives: berth.alternatives === undefined ? undefined : alternativesFile(berth.alternatives),
    verdict: berth.verdict,
    findings: berth.findings.map(findingFile),
  });
}

function windowFile({ low, high, bindsLow, bindsHigh }: OkRange): PlanFile["berths"][number]["span_window"] {
  return { low: tidy(low), high: tidy(high), binds_low: bindsLow, binds_high: bindsHigh };
}

function supplyFile({ blockedBy, trees, usable, pairs, berths }: Plan["supply"]): PlanFile["supply"] {
  return { trees, usable, pairs, blocked_by: { ...blockedBy }, berths };
}
