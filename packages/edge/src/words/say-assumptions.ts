import type { DefaultUsed } from "@nightspan/core";

/**
 * What was taken for granted, in words. Without `all`, only what would change the answer on the ground if it were
 * otherwise; the plan file lists every one.
 */
export function sayAssumptions(used: readonly DefaultUsed[], all: boolean): readonly string[] {
  const told = used.flatMap((entry) => {
    const say = WEIGHTY[entry.field];
    return say === undefined ? [] : [say(entry)];
  });
  const rest = used.filter(({ field }) => WEIGHTY[field] === undefined);
  if (!all)
    return rest.length === 0 ? told : [...told, `${rest.length} more, of less weight: --why lists them.`];
  return [...told, ...rest.map(sayPlainly)];
}

function sayPlainly({ field, value, for: ids }: DefaultUsed): string {
  const whom = ids.length === 0 ? "" : ` (${some(ids)})`;
  return `${field} = ${String(value)}${whom}`;
}

const MOST_NAMED = 8;

function some(ids: readonly string[]): string {
  const named = ids.slice(0, MOST_NAMED).join(", ");
  return ids.length > MOST_NAMED ? `${named} and ${ids.length - MOST_NAMED} more` : named;
}

type Say = (used: DefaultUsed) => string;

/** Fields that decide where and how somebody hangs. */
const WEIGHTY: Readonly<Record<string, Say>> = {
  "sleepers[].mass_kg": ({ for: ids }) =>
    `The weight of ${some(ids)} is not given: a usual grown person is assumed. State it before relying on strengths.`,
  "sleepers[].reach_m": ({ value, for: ids }) =>
    `Reach is taken as ${String(value)} × stature for ${some(ids)}. Measure it where a strap comes high.`,
  "sleepers[].step_m": ({ value, for: ids }) =>
    `A step is taken as ${String(value)} × stature for ${some(ids)}. Calibrate it once.`,
  "ground.trees[].height_m": ({ for: ids }) =>
    `The height of ${some(ids)} is an estimate from the trunk. Measure it: it decides how far to stay away.`,
  "ground.trees[].condition": ({ for: ids }) =>
    `Nothing is said about the health of ${some(ids)}: not looked at.`,
  "ground.pairs[].dbh_cm": ({ value, for: ids }) =>
    `The trunks of ${some(ids)} are not measured: ${String(value)} cm is assumed.`,
  "ground.obstacles[].setback_m": ({ value, for: ids }) =>
    `The reach of ${some(ids)} is not given: ${String(value)} m is assumed.`,
  "rules.preset": ({ value }) =>
    `House rules that the file does not give are the "${String(value)}" preset, our own neutral figures. Ask the land manager.`,
  "kit.default.hammock.length_m": ({ value }) =>
    `The store lists no hammock: a usual one of ${String(value)} m is assumed.`,
  "kit.default.suspension.type": () => "The store lists no suspension: tied webbing of 25 mm is assumed.",
  "kit[].min_m": ({ for: ids }) => `The shortest length of ${some(ids)} is not given: none is assumed.`,
};
