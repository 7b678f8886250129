import { succeed, type Outcome, type PlanBefore } from "@nightspan/core";
import { readPlan } from "@nightspan/edge";
import { readInput } from "./read-input.ts";

/** Who lay between which trees by a saved plan. */
export function readPlanBefore(cwd: string, path: string): Outcome<PlanBefore> {
  const text = readInput(cwd, path);
  const read = text.ok ? readPlan(text.value) : text;
  if (!read.ok) return read;
  return succeed({
    berths: read.value.berths.map(({ sleeper, head_tree: headTree, foot_tree: footTree, pair }) => {
      return { sleeper, headTree, footTree, ...(pair === undefined ? {} : { pair }) };
    }),
  });
}
