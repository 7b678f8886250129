import type { Camp } from "../../plan/camp.ts";
import type { Counterfactual } from "../../plan/explanation.ts";

/** One change to a camp, and the camp with it. */
export interface Change extends Pick<Counterfactual, "change" | "about" | "from" | "to" | "unit" | "advice"> {
  readonly camp: Camp;
}
