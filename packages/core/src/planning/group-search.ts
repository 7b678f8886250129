import type { BerthSearch } from "./berth-search-types.ts";
import { dealAndRecentre, dealRound, type Dealt } from "./group-balls.ts";
import { costOf, isNear, searchAroundHubs, type Hub } from "./group-around-hubs.ts";
import { dealingOf, type Dealing } from "./group-dealing.ts";
import { searchGroupColumns } from "./group-columns.ts";
import { hasFewGroups, searchFewHubs } from "./group-few-hubs.ts";
import { searchHubRounds, type HubRounds } from "./group-hub-rounds.ts";
import { hubKinds, layoutWorth, type GroupLayout } from "./group-layout.ts";
import { searchNeighbourhoods } from "./group-neighbourhood.ts";
import { seededHubs } from "./group-seeds.ts";
import type { GroupSearch, GroupSearchInput, GroupSeat } from "./group-types.ts";
import { walkedHubs } from "./group-walk.ts";
import type { LinearSolver } from "./linear-solver.ts";

export interface GroupSearchOptions {
  readonly solver?: LinearSolver;
  /** Deal only, without looking for other berths: quick, for a layout on the way. */
  readonly quick?: boolean;
  /** Price of one who lies out of reach [units]. */
  readonly farUnits?: number;
  /** Which of the four first ways to cut the wood into groups: from either end of either side. */
  readonly way?: number;
}

/**
 * Gives every group berths within reach of its hub, a berth of a leader where somebody leads.
 *
 *   least Σ cost · x + far · (people out of reach) + spread · (ways to the hubs)   at the number that can be placed
 *   with   |spot − spot of the group's hub| ≤ within
 *
 * The best layout without groups bounds the cost from below. Its berths are dealt to the groups; where everybody
 * comes within reach, and no way has a price, that is the optimum. Else hubs are walked about, berths are searched anew around the hubs, and hubs
 * are bettered by the hub program, which may also raise the bound; without a solver single hubs are moved by chance.
 *
 * Shapes   the layout without groups → one (place, kind) for each that it placed
 * Units    metres; costs in whole units
 * Holds    any groups; who cannot be within reach still has a berth, and counts as outside
 * Error    none where `proven`; else the cost lies above `lowerBoundUnits` by no more than their difference
 * Source   layout-search (handbook/layout.md: groups)
 */
export function searchGroups(input: GroupSearchInput, options: GroupSearchOptions = {}): GroupSearch {
  const dealing = dealingOf(input);
  const farUnits = options.farUnits ?? FAR_UNITS;
  const way = options.way ?? 0;
  const order = [...input.groups.keys()];
  if (way % 2 === 1) order.reverse();
  const first = dealAndRecentre(dealing, seededHubs(dealing, order, way >= 2));
  if (first === undefined) return resultOf(input, anyhow(input, farUnits), "groups dealt");
  const walks = options.quick === true ? 1 : WALKS;
  const layouts: GroupLayout[] = [];
  let early: HubRounds | undefined;
  for (let seed = 1; seed <= walks; seed++) {
    const dealt =
      seed === 1 && first.beyond.length === 0 ? first : better(first, walked(dealing, first, seed));
    const layout = layoutOf(input, dealing, dealt, farUnits);
    const isBest = dealt.beyond.length === 0 && (input.spreadUnitsPerM ?? 0) === 0;
    if (isBest || options.quick === true) return resultOf(input, layout, "groups dealt");
    layouts.push(layout);
    if (seed > 1 || hasFewGroups(input)) continue;
    const whole = byColumns(input, layout, { ...options, farUnits });
    if (whole === undefined) continue;
    if (isCloseEnough(whole))
      return resultOf(input, whole.layout, "groups searched", lowerBoundOf(input, whole, farUnits));
    early = whole;
    layouts.push(whole.layout);
  }
  const found = searched(input, layouts, { ...options, farUnits }, early);
  return resultOf(input, found.layout, "groups searched", lowerBoundOf(input, found, farUnits));
}

/** Somebody out of reach may cost less than any bound for everybody within it. */
function lowerBoundOf({ base }: GroupSearchInput, { bound, ofAll = 0 }: HubRounds, farUnits: number): number {
  return Math.max(ofAll, Math.min(bound, base.lowerBoundUnits + farUnits));
}

function byColumns(
  input: GroupSearchInput,
  known: GroupLayout,
  { solver, farUnits }: Priced,
): HubRounds | undefined {
  if (solver === undefined) return undefined;
  return searchGroupColumns(input, known, { solver, farUnits, goal: input.base.lowerBoundUnits });
}

/** Whether nothing more is looked for after columns. */
function isCloseEnough({ layout, bound }: HubRounds): boolean {
  return layout.worth - bound <= ENOUGH * layout.worth;
}

/** Share of its cost by which a layout may be off its bound for that. */
const ENOUGH = 0.02;

/** How often hubs are walked about from the same start, each time by other chances, and in how many steps. */
const WALKS = 6;
const STEPS = 2500;

/** Price of one who lies out of reach where none is named [units]. */
export const FAR_UNITS = 100_000;

/** Steps in which single hubs are moved with the groups beside them, for each group and at most. */
const STEPS_A_GROUP = 50;
const MOST_STEPS = 400;
const STEPS_AFTER_PROGRAM = 80;
const STEPS_WHILE_OUTSIDE = 200;

function walked(dealing: Dealing, start: Dealt, seed: number): Dealt | undefined {
  return dealRound(dealing, walkedHubs(dealing, start, { mostSteps: STEPS, seed }));
}

function better(a: Dealt, b: Dealt | undefined): Dealt {
  return b !== undefined && b.beyond.length < a.beyond.length ? b : a;
}

type Priced = GroupSearchOptions & { readonly farUnits: number };

/** The best that berths searched anew round any of the hubs come to, then bettered hub by hub. */
function searched(
  input: GroupSearchInput,
  dealt: readonly GroupLayout[],
  options: Priced,
  early: HubRounds | undefined,
): HubRounds {
  const { solver, farUnits } = options;
  const goal = Math.max(input.base.lowerBoundUnits, early?.bound ?? 0);
  const all = [...dealt, ...dealt.flatMap((layout) => roundHubs(input, layout, options))];
  const found = all.reduce((best, layout) => (layout.worth < best.worth ? layout : best));
  const few = searchFewHubs(input, found, { ...options, goal });
  const start = few?.layout ?? found;
  if (few !== undefined && few.bound >= start.worth) return few;
  const least = Math.max(goal, few?.bound ?? goal);
  if (solver === undefined) {
    const steps = Math.min(MOST_STEPS, STEPS_A_GROUP * input.groups.length);
    return { layout: searchNeighbourhoods(input, start, { steps, farUnits, goal: least }), bound: least };
  }
  const { layout, bound } = searchHubRounds(input, start, { solver, farUnits, goal: least });
  const steps = layout.worth < goal + farUnits ? STEPS_AFTER_PROGRAM : STEPS_WHILE_OUTSIDE;
  const ofAll = early?.ofAll === undefined ? {} : { ofAll: early.ofAll };
  return {
    layout: searchNeighbourhoods(input, layout, { steps, farUnits, goal: bound, solver }),
    bound,
    ...ofAll,
  };
}

function roundHubs(
  input: GroupSearchInput,
  { hubs, seats }: GroupLayout,
  { solver, farUnits }: Priced,
): GroupLayout[] {
  const tools = solver === undefined ? {} : { solver };
  const near = searchAroundHubs(input, hubs, tools);
  const isFull = near.seats.length === seats.length;
  const found = isFull ? near : searchAroundHubs(input, hubs, { ...tools, farUnits });
  if (found.seats.length < seats.length) return [];
  return [{ hubs, seats: found.seats, worth: layoutWorth(input, hubs, found.seats, farUnits) }];
}

/** Berths as the search without groups gave them out, the first of each group as its hub. */
function anyhow(input: GroupSearchInput, farUnits: number): GroupLayout {
  const left = input.kinds.map(({ people }) => people);
  const seats = input.base.chosen.map(({ place, classIndex }): GroupSeat => {
    const kind = input.kinds.findIndex(
      (one, index) => one.classIndex === classIndex && (left[index] ?? 0) > 0,
    );
    left[kind] = (left[kind] ?? 0) - 1;
    return { place, kind };
  });
  const hubs = input.groups.flatMap((_, group): Hub[] => {
    const kinds = hubKinds(input, group);
    const seat = seats.find(({ kind }) => kinds.includes(kind));
    return seat === undefined ? [] : [{ ...seat, group }];
  });
  return { hubs, seats, worth: layoutWorth(input, hubs, seats, farUnits) };
}

function layoutOf(
  input: GroupSearchInput,
  dealing: Dealing,
  { hubs, columnOf }: Dealt,
  farUnits: number,
): GroupLayout {
  const left = input.kinds.map(({ people }) => people);
  const take = (kinds: readonly number[]): number => {
    const kind = kinds.find((one) => (left[one] ?? 0) > 0) ?? -1;
    left[kind] = (left[kind] ?? 0) - 1;
    return kind;
  };
  const kindAt = new Int32Array(columnOf.length).fill(-1);
  const found = [...hubs].flatMap((at, group): Hub[] => {
    const place = dealing.places[at];
    if (place === undefined) return [];
    const hubbing = new Set(hubKinds(input, group));
    const column = columnOf[at] ?? -1;
    const kind = take((dealing.columns[column]?.kinds ?? []).filter((one) => hubbing.has(one)));
    kindAt[at] = kind;
    return [{ group, place, kind }];
  });
  columnOf.forEach((column, at) => {
    if (kindAt[at] === -1) kindAt[at] = take(dealing.columns[column]?.kinds ?? []);
  });
  const seats = dealing.places.map((place, at) => ({ place, kind: kindAt[at] ?? -1 }));
  return { hubs: found, seats, worth: layoutWorth(input, found, seats, farUnits) };
}

function resultOf(
  input: GroupSearchInput,
  { hubs, seats, worth }: GroupLayout,
  how: string,
  bound = input.base.lowerBoundUnits,
): GroupSearch {
  const sorted = [...seats].sort((a, b) => a.place - b.place);
  const costUnits = sorted.reduce((sum, { kind, place }) => sum + costOf(input, kind, place), 0);
  const hubOf = new Map(hubs.map((hub) => [hub.group, hub.place]));
  const outside = sorted.filter(({ kind, place }) => {
    const group = input.kinds[kind]?.group ?? -1;
    const hub = hubOf.get(group);
    return hub !== undefined && !isNear(input, group, place, hub);
  }).length;
  const { base } = input;
  const lowerBoundUnits = Math.min(bound, costUnits);
  const search: BerthSearch = {
    ...base,
    costUnits,
    lowerBoundUnits,
    proven: base.placed === base.bound && costUnits === lowerBoundUnits && worth === costUnits,
    method: `${base.method}, ${how}`,
    chosen: sorted.map(({ place, kind }) => ({ place, classIndex: input.kinds[kind]?.classIndex ?? -1 })),
  };
  return { search, seats: sorted, hubs: input.groups.map((_, group) => hubOf.get(group) ?? -1), outside };
}
