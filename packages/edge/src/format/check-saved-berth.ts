import {
  asHungCheck,
  refuse,
  succeed,
  type AsHungCheck,
  type FoundOnTheSpot,
  type HangInput,
  type Outcome,
} from "@nightspan/core";
import type { FindingFile, PlanFile } from "./plan-schema.ts";
import { readRequest } from "./request-file.ts";

/** A berth of a saved plan, checked on the spot. */
export interface SavedCheck {
  readonly berth: PlanFile["berths"][number];
  readonly request: HangInput;
  readonly check: AsHungCheck<FindingFile>;
}

/** The as-hung check of one berth of a saved plan; the camp is not needed. */
export function checkSavedBerth(plan: PlanFile, id: string, found: FoundOnTheSpot): Outcome<SavedCheck> {
  const index = plan.berths.findIndex((berth) => berth.id === id);
  const berth = plan.berths[index];
  if (berth === undefined) return refuse("--berth", id, `one of ${idsOf(plan)}`);
  if (berth.request === undefined) {
    return refuse(
      `berths[${index}].request`,
      undefined,
      "what the hang was asked for: plan again, this plan is older",
    );
  }
  const request = readRequest(berth.request, berth.span_m);
  const hang = { head: { pullN: berth.hang.head.pull_n }, foot: { pullN: berth.hang.foot.pull_n } };
  const check = asHungCheck({ request, hang, findings: berth.findings }, found);
  return check.ok ? succeed({ berth, request, check: check.value }) : check;
}

function idsOf({ berths }: PlanFile): string {
  const ids = berths.map(({ id }) => id);
  if (ids.length === 0) return "no berths: this plan has none";
  return ids.length <= MOST_NAMED ? ids.join(", ") : `${ids.slice(0, MOST_NAMED).join(", ")} …`;
}

const MOST_NAMED = 12;
