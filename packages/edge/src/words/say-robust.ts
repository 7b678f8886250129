import type { Plan, RobustCount } from "@nightspan/core";
import { length } from "./quantities.ts";

/** What an error of the survey does to the number who have a berth; nothing where it was taped as well as usual. */
export function robustLine({ robust, asked }: Pick<Plan, "robust" | "asked">): readonly string[] {
  if (robust === undefined) return [];
  const off = `With positions off by up to ${length(robust.errorM, 1)}`;
  if (robust.asSurveyed !== undefined) return [roomKept(robust, robust.asSurveyed, asked)];
  if (robust.placed === 0) return [`${off} no berth is sure before it is stepped out.`];
  return [`${off}, ${robust.placed} of ${asked} still have a berth.`];
}

/** Berths that keep room for the error, beside those there would be without. */
function roomKept({ errorM, placed }: RobustCount, asSurveyed: number, asked: number): string {
  const kept = `Berths keep room for positions off by up to ${length(errorM, 1)}`;
  if (placed >= asSurveyed) return `${kept}; nobody loses a berth by it.`;
  const have = placed === 0 ? "no pair of trees has so much" : `${placed} of ${asked} have one`;
  return `${kept}: ${have}, and without that room ${asSurveyed} would have one.`;
}
