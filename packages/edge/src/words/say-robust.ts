import type { Plan } from "@nightspan/core";
import { length } from "./quantities.ts";

/** What an error of the survey does to the number who have a berth; nothing where it was taped as well as usual. */
export function robustLine({ robust, asked }: Pick<Plan, "robust" | "asked">): readonly string[] {
  if (robust === undefined) return [];
  const off = `With positions off by up to ${length(robust.errorM, 1)}`;
  if (robust.placed === 0) return [`${off} no berth is sure before it is stepped out.`];
  return [`${off}, ${robust.placed} of ${asked} still have a berth.`];
}
