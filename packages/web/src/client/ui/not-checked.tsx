import type { Plan } from "@nightspan/core";
import { sayNotChecked } from "@nightspan/edge";
import { asSentence } from "../words.ts";

/** The parts of the work that this plan has not done. */
export function NotChecked({ plan }: { readonly plan: Plan }) {
  const said = sayNotChecked(plan.notChecked);
  return said === undefined ? null : <p class="note soft not-checked">{asSentence(said)}</p>;
}
