import { DEFAULTS, type Refusal } from "@nightspan/core";
import { chainChecks } from "./wish-chains.ts";
import { listAt, numberAt, textAt, textsAt } from "./raw.ts";

/**
 * Wishes that cannot be met together wherever people lie, each told with the least set of lines that contradict one
 * another: two say near and apart of the same two; or one says apart of somebody in the same group, whose people lie
 * nearer to each other than that; or a chain of them brings together whom the house has lie apart by age.
 *
 * Two of one group lie within its radius of the hub each, so no farther apart than twice that.
 */
export function wishChecks(document: unknown): readonly Refusal[] {
  const sleepers = listAt(document, "sleepers");
  return [
    ...nearAndApart(sleepers),
    ...apartInGroup(document, sleepers),
    ...chainChecks(document, DEFAULTS["people.near_m"].value),
  ];
}

interface Wish {
  readonly who: string;
  readonly other: string;
  /** "sleepers[2].near[0]". */
  readonly at: string;
}

function wishesOf(sleepers: readonly unknown[], key: "near" | "apart"): readonly Wish[] {
  return sleepers.flatMap((sleeper, index) => {
    const who = textAt(sleeper, "id") ?? "";
    return textsAt(sleeper, key).map((other, place) => ({
      who,
      other,
      at: `sleepers[${index}].${key}[${place}]`,
    }));
  });
}

function isAbout({ who, other }: Wish, one: string, another: string): boolean {
  return (who === one && other === another) || (who === another && other === one);
}

/** Told once, where "near" is said. */
function nearAndApart(sleepers: readonly unknown[]): Refusal[] {
  const apart = wishesOf(sleepers, "apart");
  return wishesOf(sleepers, "near").flatMap(({ who, other, at }) => {
    const against = apart.find((wish) => isAbout(wish, who, other));
    if (against === undefined) return [];
    return [
      {
        field: at,
        got: other,
        need: `somebody who is not to be kept apart: not both this and ${against.at}`,
      },
    ];
  });
}

/** Told once for two people. */
function apartInGroup(document: unknown, sleepers: readonly unknown[]): Refusal[] {
  const groupOf = new Map(sleepers.map((sleeper) => [textAt(sleeper, "id"), textAt(sleeper, "group")]));
  const indexOf = new Map(sleepers.map((sleeper, index) => [textAt(sleeper, "id"), index]));
  const told: Wish[] = [];
  return wishesOf(sleepers, "apart").flatMap((wish) => {
    const { who, other, at } = wish;
    const group = groupOf.get(who);
    if (group === undefined || groupOf.get(other) !== group || who === other) return [];
    const place = listAt(document, "groups").findIndex((one) => textAt(one, "id") === group);
    const withinM = numberAt(listAt(document, "groups")[place], "within_m");
    if (withinM === undefined || 2 * withinM >= LEAST_APART_M) return [];
    if (told.some((one) => isAbout(one, who, other))) return [];
    told.push(wish);
    const set = [
      at,
      ...[who, other].map((id) => `sleepers[${indexOf.get(id) ?? 0}].group`),
      `groups[${place}].within_m`,
    ];
    const need = `at most three of these four lines, as who is apart lies ${LEAST_APART_M} m off: ${set.join(", ")}`;
    return [{ field: at, got: other, need }];
  });
}

const LEAST_APART_M = DEFAULTS["people.apart_m"].value;
