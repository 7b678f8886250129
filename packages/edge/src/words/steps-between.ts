import type { Camp, PlannedBerth } from "@nightspan/core";
import { berthSteps } from "@nightspan/drawing";
import { steps } from "./quantities.ts";

/** How a count of steps is meant, wherever one is asked for or told. */
export const HOW_TO_COUNT = "counted from beside the middle of one trunk to beside the middle of the other";

/** How many of the sleeper's own steps lie between the middles of the two trunks, to the half. */
export function stepsBetween(berth: PlannedBerth, camp: Camp): string {
  return steps(berthSteps(berth, camp).steps, 1);
}
