import type { Lists } from "./berth-search-lists.ts";
import { searchAroundHubs, type Hub } from "./group-around-hubs.ts";
import { hubStream, type HubChoice, type HubStream } from "./group-hub-stream.ts";
import { layoutWorth, type GroupLayout } from "./group-layout.ts";
import { conflictLists, partOf } from "./group-part.ts";
import type { GroupSearchInput } from "./group-types.ts";
import type { LinearSolver } from "./linear-solver.ts";

export interface FewHubsOptions {
  readonly solver?: LinearSolver;
  /** Price of one who lies out of reach. */
  readonly farUnits: number;
  /** No layout costs less. */
  readonly goal: number;
}

export interface FewHubs {
  readonly layout: GroupLayout;
  /** No layout with everybody within reach costs less. */
  readonly bound: number;
}

/**
 * The best hubs of a few groups in a large wood, by what each hub costs its group alone: sets of hubs are taken in
 * order of the sum of that, and the berths of all round them searched together, until the sum of the next set is no
 * less than the best layout.
 *
 *   cost of a layout ≥ Σ over groups (least cost of the group round its hub, as if nobody else were there)
 *
 * Shapes   the best layout known → a better or the same, and a bound
 * Holds    everybody has a group, and groups are few; otherwise it looks for nothing
 * Error    exact unless the sets of hubs that are looked at run out; the bound is then that of the next set
 * Source   layout-search (handbook/layout.md: groups)
 */
export function searchFewHubs(
  input: GroupSearchInput,
  known: GroupLayout,
  options: FewHubsOptions,
): FewHubs | undefined {
  const present = known.hubs.map(({ group }) => group);
  if (!hasFewGroups(input)) return undefined;
  const links = conflictLists(input);
  const streams = present.map((group) => hubStream(input, links, group, options.solver));
  let layout = known;
  let sets = 0;
  for (const { choices, units } of cheapestSets(streams)) {
    if (units >= layout.worth) return { layout, bound: layout.worth };
    if (sets++ === MOST_SETS) return { layout, bound: Math.max(options.goal, units) };
    layout = better(input, links, choices, layout, options);
  }
  return { layout, bound: layout.worth };
}

/** Whether sets of hubs are looked at: few groups, and everybody has one. */
export function hasFewGroups({ kinds }: GroupSearchInput): boolean {
  const present = new Set(kinds.flatMap(({ group, people }) => (people > 0 ? [group] : [])));
  return present.size <= MOST_GROUPS && !present.has(-1);
}

/** Groups up to which sets of hubs are looked at, and how many sets. */
const MOST_GROUPS = 4;
const MOST_SETS = 300;

interface HubSet {
  readonly choices: readonly HubChoice[];
  readonly units: number;
}

/** Sets of one hub a group, by the sum of what each costs alone. */
function* cheapestSets(streams: readonly HubStream[]): Generator<HubSet> {
  const open: { readonly at: readonly number[]; readonly units: number }[] = [];
  const seen = new Set<string>();
  const add = (at: readonly number[]): void => {
    const key = at.join(" ");
    if (seen.has(key)) return;
    seen.add(key);
    const units = at.reduce((sum, index, group) => sum + (streams[group]?.(index)?.units ?? Infinity), 0);
    if (units < Infinity) open.push({ at, units });
  };
  add(streams.map(() => 0));
  for (;;) {
    const next = cheapest(open);
    if (next === undefined) return;
    const choices = next.at.flatMap((index, group) => streams[group]?.(index) ?? []);
    yield { choices, units: next.units };
    next.at.forEach((index, group) => add(next.at.with(group, index + 1)));
  }
}

/** Takes the cheapest out. */
function cheapest<T extends { readonly units: number }>(open: T[]): T | undefined {
  let best = -1;
  open.forEach(({ units }, at) => {
    if (best < 0 || units < (open[best]?.units ?? Infinity)) best = at;
  });
  return best < 0 ? undefined : open.splice(best, 1)[0];
}

/** The best layout round one set of hubs, where it is better than the one known. */
function better(
  input: GroupSearchInput,
  links: Lists,
  choices: readonly HubChoice[],
  known: GroupLayout,
  { solver, farUnits }: FewHubsOptions,
): GroupLayout {
  const hubs = choices.map(({ hub }): Hub => hub);
  if (new Set(hubs.map(({ place }) => place)).size < hubs.length) return known;
  const places = [...new Set(choices.flatMap((one) => [...one.places]))].sort((a, b) => a - b);
  const { search } = input;
  const capacities = search.capacities ?? new Int32Array(search.trees).fill(search.capacity);
  const within = { ...partOf(search, links, places, capacities), places, kinds: input.kinds.keys() };
  const { seats } = searchAroundHubs(input, hubs, {
    within,
    ceilingUnits: known.worth,
    ...(solver === undefined ? {} : { solver }),
  });
  if (seats.length < known.seats.length) return known;
  const worth = layoutWorth(input, hubs, seats, farUnits);
  return worth < known.worth ? { hubs, seats, worth } : known;
}
