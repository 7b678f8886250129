import type { Camp } from "../plan/camp.ts";
import type { Plan } from "../plan/plan.ts";
import { surveyOffM } from "./survey-off.ts";

/**
 * The camp whose places keep room for the error of its survey, where the house asks for it.
 *
 * Shapes   a camp → the same with `ground.offM`; as it is where the rule is silent or no, or the error is already stated
 * Units    metres
 * Source   layout-search (handbook/layout.md: room for the survey)
 */
export function keptForSurvey(camp: Camp): Camp {
  const { ground, rules } = camp;
  if (ground === undefined || ground.offM !== undefined || rules.surveyRoom?.value !== true) return camp;
  const offM = surveyOffM(ground);
  return offM === 0 ? camp : { ...camp, ground: { ...ground, offM } };
}

/** The camp with the rule as a plan of it had it, where the camp itself is silent. */
export function asPlanned(camp: Camp, { robust }: Pick<Plan, "robust">): Camp {
  return camp.rules.surveyRoom === undefined ? withRoom(camp, robust?.asSurveyed !== undefined) : camp;
}

/**
 * Of a camp that says nothing of it, surveyed by GPS or steps: the plan that keeps room for the error, where nobody is
 * worse off by it. Nobody loses a berth, no pin is lost, no more berths are refused, no more is amiss among people.
 */
export function roomWhereFree(camp: Camp, plan: Plan, planned: (camp: Camp) => Plan): Plan {
  const { ground, rules } = camp;
  const { robust } = plan;
  const isOpen = rules.surveyRoom === undefined && ground !== undefined && ground.source !== "taped";
  if (!isOpen || robust === undefined || plan.placed === 0 || robust.placed < plan.placed) return plan;
  const roomy = planned(withRoom(camp, true));
  return isAsGood(roomy, plan) ? roomy : plan;
}

function isAsGood(roomy: Plan, plan: Plan): boolean {
  const pins = (of: Plan): number => of.pinsRefused?.length ?? 0;
  const amiss = ({ findings }: Plan): number => findings.filter(({ verdict }) => verdict !== "clear").length;
  const refused = ({ berths }: Plan): number =>
    berths.filter(({ verdict }) => verdict === "do-not-hang").length;
  return (
    roomy.placed >= plan.placed &&
    pins(roomy) <= pins(plan) &&
    amiss(roomy) <= amiss(plan) &&
    refused(roomy) <= refused(plan)
  );
}

function withRoom(camp: Camp, value: boolean): Camp {
  return { ...camp, rules: { ...camp.rules, surveyRoom: { value, source: "house-convention" } } };
}
