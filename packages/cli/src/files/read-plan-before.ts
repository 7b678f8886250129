import { succeed, type Outcome, type PlanBefore, type RobustCount } from "@nightspan/core";
import { readPlan, type PlanFile } from "@nightspan/edge";
import { readInput } from "./read-input.ts";

/** Who lay between which trees by a saved plan, and whether room was kept for the survey. */
export function readPlanBefore(cwd: string, path: string): Outcome<PlanBefore> {
  const text = readInput(cwd, path);
  const read = text.ok ? readPlan(text.value) : text;
  if (!read.ok) return read;
  const { robust } = read.value;
  return succeed({
    ...(robust === undefined ? {} : { robust: robustOf(robust) }),
    berths: read.value.berths.map(({ sleeper, head_tree: headTree, foot_tree: footTree, pair }) => {
      return { sleeper, headTree, footTree, ...(pair === undefined ? {} : { pair }) };
    }),
  });
}

function robustOf({
  error_m: errorM,
  placed,
  most,
  as_surveyed: asSurveyed,
}: NonNullable<PlanFile["robust"]>): RobustCount {
  return { errorM, placed, most, ...(asSurveyed === undefined ? {} : { asSurveyed }) };
}
