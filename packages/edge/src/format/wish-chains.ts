import type { Refusal } from "@nightspan/core";
import { field, listAt, numberAt, textAt, textsAt } from "./raw.ts";

/**
 * Chains of wishes that bring a grown person nearer to one under 18 than the house has them lie: who is near somebody
 * lies within calling distance, who is of a group within its radius of the hub, and so on from one to the next.
 *
 * Each is told with the least set of lines that contradict one another: without any of them the others can be kept.
 * One chain is told for each person under 18.
 */
export function chainChecks(document: unknown, nearM: number): readonly Refusal[] {
  const rule = field(field(document, "rules"), "adult_youth_m");
  const leastM = typeof rule === "number" ? rule : numberAt(rule, "value");
  if (leastM === undefined) return [];
  const sleepers = listAt(document, "sleepers");
  const ties = tiesOf(document, sleepers, nearM);
  return sleepers.flatMap((young, index) => {
    const age = numberAt(young, "age");
    const id = textAt(young, "id");
    if (age === undefined || age >= OF_AGE || id === undefined) return [];
    const chain = shortestToAdult(id, ties, adultsOf(sleepers), leastM);
    if (chain === undefined) return [];
    const own = [`sleepers[${index}].age`, `sleepers[${sleepers.indexOf(chain.adult)}].age`];
    const lines = [...new Set([...chain.lines, ...own, "rules.adult_youth_m"])];
    const need = `at most ${lines.length - 1} of these ${lines.length} lines, as together they ask for less than ${leastM} m: ${lines.join(", ")}`;
    return [{ field: chain.lines[0] ?? "rules.adult_youth_m", got: id, need }];
  });
}

const OF_AGE = 18;

/** Two who lie no farther from each other than so far, and the lines that say so. A group is its hub. */
interface Tie {
  readonly to: string;
  readonly mostM: number;
  readonly lines: readonly string[];
}

function tiesOf(
  document: unknown,
  sleepers: readonly unknown[],
  nearM: number,
): ReadonlyMap<string, readonly Tie[]> {
  const ties = new Map<string, Tie[]>();
  const tie = (a: string, b: string, mostM: number, lines: readonly string[]): void => {
    for (const [from, to] of [[a, b] as const, [b, a] as const]) {
      ties.set(from, [...(ties.get(from) ?? []), { to, mostM, lines }]);
    }
  };
  const groups = listAt(document, "groups");
  sleepers.forEach((sleeper, index) => {
    const id = textAt(sleeper, "id") ?? "";
    textsAt(sleeper, "near").forEach((other, at) =>
      tie(id, other, nearM, [`sleepers[${index}].near[${at}]`]),
    );
    const place = groups.findIndex((one) => textAt(one, "id") === textAt(sleeper, "group"));
    const withinM = numberAt(groups[place], "within_m");
    if (withinM === undefined) return;
    tie(id, `hub of ${place}`, withinM, [`sleepers[${index}].group`, `groups[${place}].within_m`]);
  });
  return ties;
}

function adultsOf(sleepers: readonly unknown[]): ReadonlyMap<string, unknown> {
  return new Map(
    sleepers.flatMap((sleeper) => {
      const id = textAt(sleeper, "id");
      return id !== undefined && (numberAt(sleeper, "age") ?? 0) >= OF_AGE ? [[id, sleeper] as const] : [];
    }),
  );
}

interface Reached {
  readonly mostM: number;
  readonly lines: readonly string[];
}

/** Nearest first along the ties, as long as it is nearer than allowed. */
function shortestToAdult(
  young: string,
  ties: ReadonlyMap<string, readonly Tie[]>,
  adults: ReadonlyMap<string, unknown>,
  leastM: number,
): { readonly adult: unknown; readonly lines: readonly string[] } | undefined {
  const open = new Map<string, Reached>([[young, { mostM: 0, lines: [] }]]);
  const done = new Set<string>();
  for (;;) {
    const [next] = [...open].sort(([, a], [, b]) => a.mostM - b.mostM);
    if (next === undefined) return undefined;
    const [who, { mostM, lines }] = next;
    if (adults.has(who)) return { adult: adults.get(who), lines };
    open.delete(who);
    done.add(who);
    for (const { to, mostM: step, lines: more } of ties.get(who) ?? []) {
      const reach = mostM + step;
      if (done.has(to) || reach >= leastM || reach >= (open.get(to)?.mostM ?? Infinity)) continue;
      open.set(to, { mostM: reach, lines: [...lines, ...more] });
    }
  }
}
