import type { Camp, PlannedBerth } from "@nightspan/core";
import { berthSteps } from "@nightspan/drawing";
import { steps } from "./quantities.ts";

/** How many of the sleeper's own steps lie between the two trees, to the half. */
export function stepsBetween(berth: PlannedBerth, camp: Camp): string {
  return steps(berthSteps(berth, camp).steps, 1);
}
