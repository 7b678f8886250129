import type { Finding } from "../../outcome/finding.ts";
import type { Camp } from "../../plan/camp.ts";
import type { Plan, PlannedBerth } from "../../plan/plan.ts";
import { planCamp } from "../plan-camp.ts";

/** The plan of a test camp. */
export function planned(camp: Camp): Plan {
  const outcome = planCamp(camp, { engine: "test" });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.refusals));
  return outcome.value;
}

/** The only berth of a plan. */
export function onlyBerth(plan: Plan): PlannedBerth {
  const [berth, ...others] = plan.berths;
  if (berth === undefined || others.length > 0) throw new Error(`${plan.berths.length} berths, one expected`);
  return berth;
}

/** The rules of the findings that are not clear, each once, sorted. */
export function troubles(findings: readonly Finding[]): string[] {
  return [...new Set(findings.filter(({ verdict }) => verdict !== "clear").map(({ rule }) => rule))].sort();
}
