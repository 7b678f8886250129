import type { Lists } from "./berth-search-lists.ts";
import { searchHubs } from "./group-hub-search.ts";
import { layoutWorth, nearestGroups, type GroupLayout } from "./group-layout.ts";
import { conflictLists, freePart } from "./group-part.ts";
import type { GroupSearchInput, GroupSeat } from "./group-types.ts";
import type { LinearSolver } from "./linear-solver.ts";

export interface HubRoundsOptions {
  readonly solver: LinearSolver;
  readonly farUnits: number;
  /** Where to stop: nothing can be better. */
  readonly goal: number;
}

/** A layout, and a bound below which no layout lies. */
export interface HubRounds {
  readonly layout: GroupLayout;
  /** Of layouts with everybody within reach. */
  readonly bound: number;
  /** Of layouts with somebody out of reach too, where it is known. */
  readonly ofAll?: number;
}

/**
 * Betters hubs by the hub program: of all groups at once where it is small enough, else of each group with those beside
 * it, round after round, as long as something is gained.
 *
 * Holds    limited by counts, never by a clock
 * Source   layout-search (handbook/layout.md: groups)
 */
export function searchHubRounds(
  input: GroupSearchInput,
  start: GroupLayout,
  options: HubRoundsOptions,
): HubRounds {
  const budget = { left: MOST_WORK };
  let { layout, bound } = ofAll(input, { layout: start, bound: options.goal }, options, budget);
  const links = conflictLists(input);
  for (let gained = true; gained && layout.worth > bound && budget.left > 0;) {
    gained = false;
    for (const { group } of layout.hubs) {
      if (budget.left <= 0 || layout.worth <= bound) break;
      const next = ofSome(input, layout, { ...options, group, links, budget });
      gained ||= next.worth < layout.worth;
      layout = next;
    }
    // What was gained may have made the whole small enough.
    if (gained) ({ layout, bound } = ofAll(input, { layout, bound }, options, budget));
  }
  return { layout, bound };
}

/** Columns over all hub programs that are solved: a few seconds. */
const MOST_WORK = 80_000;

/** Groups that look anew beside one: fewer where these are too many. */
const BESIDE = [3, 2, 1];

/** Columns of a hub program up to which it is tried. */
const MOST_COLUMNS = 5000;
const MOST_COLUMNS_OF_SOME = 3000;

interface Budget {
  left: number;
}

function ofAll(
  input: GroupSearchInput,
  { layout, bound }: HubRounds,
  options: HubRoundsOptions,
  budget: Budget,
): HubRounds {
  const part = { search: input.search, places: undefined, kinds: [...input.kinds.keys()] };
  const groups = layout.hubs.map(({ group }) => group);
  const found = searchHubs(
    input,
    { part, groups, worth: layout.worth },
    { ...options, mostColumns: MOST_COLUMNS, mostWork: budget.left, wholeToo: true },
  );
  budget.left -= found.columns;
  const better = Math.max(bound, Math.min(found.bound, layout.worth));
  if (found.better === undefined) return { layout, bound: better };
  const { hubs, seats } = found.better;
  return { layout: { hubs, seats, worth: layoutWorth(input, hubs, seats, options.farUnits) }, bound: better };
}

function ofSome(
  input: GroupSearchInput,
  layout: GroupLayout,
  options: HubRoundsOptions & { readonly group: number; readonly links: Lists; readonly budget: Budget },
): GroupLayout {
  const hub = layout.hubs.find((one) => one.group === options.group);
  if (hub === undefined) return layout;
  for (const beside of BESIDE) {
    const groups = nearestGroups(input, layout.hubs, hub, beside);
    const freed = new Set(groups);
    const isFreed = ({ kind }: GroupSeat): boolean => freed.has(input.kinds[kind]?.group ?? -1);
    const stay = layout.seats.filter((seat) => !isFreed(seat));
    const part = freePart(input, options.links, freed, layout.hubs, stay);
    const worth = layoutWorth(input, layout.hubs, layout.seats.filter(isFreed), options.farUnits);
    const found = searchHubs(
      input,
      { part, groups, worth },
      { ...options, mostColumns: MOST_COLUMNS_OF_SOME, mostWork: options.budget.left },
    );
    options.budget.left -= found.columns;
    if (found.isTooLarge) continue;
    if (found.better === undefined) return layout;
    const { better } = found;
    const hubs = layout.hubs.map((one) => better.hubs.find(({ group }) => group === one.group) ?? one);
    const seats = [...stay, ...better.seats];
    return { hubs, seats, worth: layoutWorth(input, hubs, seats, options.farUnits) };
  }
  return layout;
}
