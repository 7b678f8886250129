import type { DefaultUsed } from "@nightspan/core";
import { YOU } from "../format/camp-of-one.ts";
import type { Names } from "./names.ts";

/** How many assumptions are told: those of weight, those and a count of the rest, or all. */
export type Telling = "weighty" | "counted" | "all";

/**
 * What was taken for granted, in words, first what would change the answer on the ground if it were otherwise.
 * The plan file lists every one.
 */
export function sayAssumptions(
  used: readonly DefaultUsed[],
  names: Names,
  telling: Telling,
): readonly string[] {
  const told = used.flatMap((entry) => {
    const say = WEIGHTY[entry.field];
    return say === undefined ? [] : [say(some(entry, names), String(entry.value))];
  });
  const rest = used.filter(({ field }) => WEIGHTY[field] === undefined);
  if (telling === "all") return [...told, ...rest.map((entry) => sayPlainly(entry, names))];
  if (telling === "weighty" || rest.length === 0) return told;
  return [...told, `${rest.length} more, of less weight: --why lists them.`];
}

function sayPlainly(entry: DefaultUsed, names: Names): string {
  const whom = some(entry, names);
  return `${entry.field} = ${String(entry.value)}${whom === "" ? "" : ` (${whom})`}`;
}

const MOST_NAMED = 4;

/** Whom it is about, by name or tag: all where they are few, else how many. */
function some({ field, for: ids }: DefaultUsed, names: Names): string {
  const people = field.startsWith("sleepers");
  const trees = field.startsWith("ground.trees");
  const named = ids.map((id) => (people ? personOf(id, names) : trees ? names.tree(id) : id));
  if (ids.length <= MOST_NAMED) return named.join(", ");
  if (people) return `${ids.length} sleepers`;
  return trees
    ? `${ids.length} trees`
    : `${named.slice(0, MOST_NAMED).join(", ")} and ${ids.length - MOST_NAMED} more`;
}

/** Inside a sentence the one sleeper of "two trees, tonight" is "you". */
function personOf(id: string, names: Names): string {
  const name = names.sleeper(id);
  return name === YOU ? YOU.toLowerCase() : name;
}

type Say = (whom: string, value: string) => string;

/** Fields that decide where and how somebody hangs. */
const WEIGHTY: Readonly<Record<string, Say>> = {
  "sleepers[].mass_kg": (whom) =>
    `The weight is not given for ${whom}: a usual grown person is assumed. State it before relying on strengths.`,
  "sleepers[].age": (whom) =>
    `The age is not given for ${whom}: for warmth taken as 16 or over. State it: no balance is valid for children.`,
  "sleepers[].reach_m": (whom, value) =>
    `Reach is taken as ${value} × stature for ${whom}. Measure it where a strap comes high.`,
  "sleepers[].step_m": (whom, value) =>
    `A step is taken as ${value} × stature for ${whom}. Calibrate it once.`,
  "ground.trees[].height_m": (whom) =>
    `The height is an estimate from the trunk for ${whom}. Measure it: it decides how far to stay away.`,
  "ground.trees[].condition": (whom) => `Nothing is said about the health of ${whom}: not looked at.`,
  "ground.pairs[].dbh_cm": (_, value) => `The trunks are not measured: ${value} cm is assumed.`,
  "ground.obstacles[].setback_m": (whom, value) =>
    `The reach of ${whom} is not given: ${value} m is assumed.`,
  "rules.preset": (_, value) =>
    `House rules that are not given are the "${value}" preset, our own neutral figures. Ask the land manager.`,
  "kit.default.hammock.length_m": (_, value) => `No hammock is listed: a usual one of ${value} m is assumed.`,
  "kit.default.hammock.ridgeline_ratio": (_, value) =>
    `No hammock is listed: a ridgeline of ${value} of its length is assumed.`,
  "kit.default.suspension.type": () => "No suspension is listed: tied webbing of 25 mm is assumed.",
  "kit[].min_m": (whom) => `The shortest length of ${whom} is not given: none is assumed.`,
};
