import type { Bottleneck, Camp, Knot } from "@nightspan/core";
import { namesOf, type Names } from "./names.ts";

/**
 * What limits how many have a berth: the trees that decide it, why they do, and each of them with its pairs, those
 * with most pairs for each berth first.
 */
export function sayBottleneck({ knots, trees, most }: Bottleneck, camp: Camp): readonly string[] {
  const names = namesOf(camp);
  const crowded = knots.filter((knot) => knot.pairs.length > knot.most);
  const list = trees.map((id) => names.tree(id)).join(", ");
  const head =
    trees.length === 1 ? `One tree decides it: ${list}.` : `These ${trees.length} trees decide it: ${list}.`;
  const all = knots.length === crowded.length ? "at one of them" : "at one of them, or is taken";
  const people = most === 1 ? "1 person has a berth there" : `${most} people have a berth there`;
  return [
    `${head} Every pair that would serve somebody without a berth is ${all}; ${people}, and no more can have.`,
    ...crowded.slice(0, KNOTS_TOLD).map((knot) => sayKnot(knot, names)),
    ...(crowded.length > KNOTS_TOLD ? [`And ${crowded.length - KNOTS_TOLD} more like these.`] : []),
  ];
}

/** No more than a person reads. */
const KNOTS_TOLD = 8;

function sayKnot({ trees, pairs, most, why }: Knot, names: Names): string {
  const held = trees.map((id) => names.tree(id)).join(", ");
  if (why === "tree")
    return `${held}: ${pairs.length} pairs, ${most === 1 ? "1 hammock" : `${most} hammocks`}.`;
  const what = pairs.map(([a, b]) => `${names.tree(a)} to ${names.tree(b)}`).join("; ");
  if (why === "strips") return `Each in the way of the others, one at a time: ${what}.`;
  return `Among ${held}: ${pairs.length} pairs, at most ${most} at a time.`;
}
