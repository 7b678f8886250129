import type { LoggedNight, FirstPairs, Outcome, Plan, PlanRepair } from "@nightspan/core";
import type { CampDocument } from "@nightspan/edge";

/** How nights were, as far as the log of this device tells. */
interface FromLog {
  readonly nights?: readonly LoggedNight[];
}

/** What the page asks of the planning worker. `id` tells answers apart; a newer one replaces an older. */
export type PlannerRequest =
  | ({ readonly kind: "plan"; readonly id: number; readonly document: CampDocument } & FromLog)
  /** What would change a plan where not everybody has a berth. */
  | ({
      readonly kind: "explain";
      readonly id: number;
      readonly document: CampDocument;
      readonly plan: Plan;
    } & FromLog)
  /** Mends a plan after the camp has changed, beside the camp planned anew. */
  | ({
      readonly kind: "repair";
      readonly id: number;
      readonly document: unknown;
      readonly before: Plan;
    } & FromLog)
  /** Solves a small program of known optimum through the solver that plans use. */
  | { readonly kind: "prove"; readonly id: number };

/** What the worker answers. Pairs are spoken for before any hang is worked out there. An incumbent is a whole plan whose proof is still under way. */
export type PlannerReply =
  | { readonly kind: "pairs"; readonly id: number; readonly found: FirstPairs }
  | { readonly kind: "incumbent"; readonly id: number; readonly plan: Plan }
  | { readonly kind: "plan"; readonly id: number; readonly outcome: Outcome<Plan>; readonly solved: boolean }
  | { readonly kind: "explained"; readonly id: number; readonly plan: Plan }
  | { readonly kind: "repaired"; readonly id: number; readonly outcome: Outcome<PlanRepair> }
  | { readonly kind: "proof"; readonly id: number; readonly solver: string; readonly objective: number }
  | { readonly kind: "mistake"; readonly id: number; readonly details: string };
