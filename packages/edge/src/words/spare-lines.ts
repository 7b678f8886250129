import type { Camp, Plan, SpareBerth } from "@nightspan/core";
import type { Names } from "./names.ts";
import { length } from "./quantities.ts";
import { sayVerdict } from "./say-verdict.ts";
import { capital } from "./summary-line.ts";

/** One line for each berth that is kept free: its trees, whom it would not serve, and what is said of it. */
export function spareLines(
  { spares = [] }: Pick<Plan, "spares">,
  camp: Camp,
  names: Names,
): readonly string[] {
  return spares.map((spare) => {
    const between = `${names.tree(spare.headTree)} to ${names.tree(spare.footTree)}, ${length(spare.spanM)}`;
    const words = [`${spare.id}: ${between}${spare.stepItOut ? ", step it out" : ""}.`];
    return [...words, serving(spare, camp, names), `${capital(sayVerdict(spare.verdict))}.`].join(" ");
  });
}

/** Who could lie there in their own kit: everybody, or by name the fewer of the two. */
function serving({ serves }: SpareBerth, { sleepers }: Camp, names: Names): string {
  const others = sleepers.map(({ id }) => id).filter((id) => !serves.includes(id));
  if (others.length === 0) return "Serves everybody.";
  const [lead, ids] = others.length < serves.length ? ["Does not serve", others] : ["Serves", serves];
  return `${lead} ${ids.map((id) => names.sleeper(id)).join(", ")}.`;
}
