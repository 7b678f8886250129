import { chance } from "./berth-search-chance.ts";
import type { Dealt } from "./group-balls.ts";
import { apart, mayBeHub, suitsColumn, type Dealing } from "./group-dealing.ts";

/**
 * Moves hubs about until everybody has a berth within reach of theirs, or the steps are used up.
 *
 * In each step the hub of a group near one who is left out moves to another berth near it; who is now out of reach,
 * and who was left out before, look for room in any group that reaches them, moving others on where needed
 * (augmenting paths). The step stays unless more are left out than before; now and then one more is borne.
 *
 * Shapes   → the hubs with which fewest were left out
 * Holds    seeded and limited by steps, so the same input gives the same hubs; proves nothing
 * Source   layout-search (handbook/layout.md: groups)
 */
export function walkedHubs(
  dealing: Dealing,
  start: Dealt,
  { mostSteps, seed }: { readonly mostSteps: number; readonly seed: number },
): Int32Array {
  const walk = walkOf(dealing, start);
  const { below } = chance(seed);
  let best = { left: walk.left.length, hubs: walk.hubs.slice() };
  for (let step = 0; step < mostSteps && best.left > 0; step++) {
    const lost = walk.left[below(walk.left.length)] ?? 0;
    const group = nearGroup(walk, lost, below);
    if (group < 0) continue;
    const to = nearPosition(walk, group, below);
    if (to < 0) continue;
    const before = snapshot(walk);
    moveHub(walk, group, to);
    const more = walk.left.length - before.left.length;
    if (more > 1 || (more === 1 && below(ONE_IN) > 0)) restore(walk, before);
    if (walk.left.length < best.left) best = { left: walk.left.length, hubs: walk.hubs.slice() };
  }
  return best.hubs;
}

/** One step in so many may leave one more out. */
const ONE_IN = 20;

/** Hubs are moved that lie within so many radii of who is left out. */
const RADII = 3;

/** How often a group or a berth is drawn before the step is given up. */
const DRAWS = 40;

interface Walk {
  readonly dealing: Dealing;
  readonly hubs: Int32Array;
  /** Group whose hub is at a position, −1 for none. */
  readonly hubAt: Int32Array;
  /** Column of each position, −1 while it is left out. */
  readonly columnOf: Int32Array;
  readonly members: number[][];
  left: number[];
}

function walkOf(dealing: Dealing, { hubs, columnOf, beyond }: Dealt): Walk {
  const hubAt = new Int32Array(dealing.places.length).fill(-1);
  hubs.forEach((hub, group) => {
    if (hub >= 0) hubAt[hub] = group;
  });
  const members: number[][] = dealing.columns.map(() => []);
  const walk: Walk = {
    dealing,
    hubs: hubs.slice(),
    hubAt,
    columnOf: columnOf.slice(),
    members,
    left: [],
  };
  for (const at of beyond) walk.columnOf[at] = -1;
  walk.columnOf.forEach((column, at) => members[column]?.push(at));
  walk.left = beyond.filter((at) => !findRoom(walk, at));
  return walk;
}

function nearGroup({ dealing, hubs }: Walk, at: number, below: (n: number) => number): number {
  for (let draw = 0; draw < DRAWS; draw++) {
    const group = below(hubs.length);
    const hub = hubs[group] ?? -1;
    if (hub < 0) continue;
    const reach = dealing.groups[group]?.reach ?? 0;
    if (apart(dealing, hub, at) <= RADII * RADII * reach) return group;
  }
  return -1;
}

/** A berth within reach of the hub of a group that might be its hub. */
function nearPosition({ dealing, hubs, hubAt }: Walk, group: number, below: (n: number) => number): number {
  const hub = hubs[group] ?? -1;
  const reach = dealing.groups[group]?.reach ?? 0;
  for (let draw = 0; draw < DRAWS; draw++) {
    const at = below(dealing.places.length);
    if (hubAt[at] !== -1 || apart(dealing, hub, at) > reach) continue;
    if (mayBeHub(dealing, at, group)) return at;
  }
  return -1;
}

function moveHub(walk: Walk, group: number, to: number): void {
  const { dealing, hubs, hubAt } = walk;
  const from = hubs[group] ?? -1;
  hubs[group] = to;
  hubAt[from] = -1;
  hubAt[to] = group;
  const lost = new Set(walk.left);
  lost.delete(to);
  takeOut(walk, to);
  const columns = dealing.groups[group]?.columns ?? [];
  for (const column of columns) {
    for (const at of [...(walk.members[column] ?? [])]) {
      if (isWithin(walk, at, column)) continue;
      takeOut(walk, at);
      lost.add(at);
    }
  }
  const column = (dealing.groups[group]?.hubColumns ?? []).find((one) => suitsColumn(dealing, to, one)) ?? -1;
  if ((walk.members[column]?.length ?? 0) >= (dealing.room[column] ?? 0)) {
    const farthest = farthestOf(walk, column, to);
    takeOut(walk, farthest);
    lost.add(farthest);
  }
  putIn(walk, to, column);
  walk.left = [...lost].filter((at) => !findRoom(walk, at));
}

function farthestOf({ dealing, members }: Walk, column: number, hub: number): number {
  let best = -1;
  for (const at of members[column] ?? []) {
    if (best < 0 || apart(dealing, at, hub) > apart(dealing, best, hub)) best = at;
  }
  return best;
}

function isWithin({ dealing, hubs }: Walk, at: number, column: number): boolean {
  if (!suitsColumn(dealing, at, column)) return false;
  const group = dealing.columns[column]?.group ?? -1;
  const hub = hubs[group] ?? -1;
  return hub < 0 || apart(dealing, at, hub) <= (dealing.groups[group]?.reach ?? 0);
}

/** In width over columns for a way that ends where there is room; hubs stay where they are. */
function findRoom(walk: Walk, lost: number): boolean {
  const { dealing, members, hubAt } = walk;
  const from = new Int32Array(dealing.columns.length).fill(-1);
  const queue: number[] = [];
  const reachFrom = (at: number): void => {
    for (let column = 0; column < from.length; column++) {
      if (from[column] !== -1 || !isWithin(walk, at, column)) continue;
      from[column] = at;
      queue.push(column);
    }
  };
  reachFrom(lost);
  for (const column of queue) {
    if ((members[column]?.length ?? 0) < (dealing.room[column] ?? 0)) {
      moveOn(walk, lost, column, from);
      return true;
    }
    for (const at of members[column] ?? []) if (hubAt[at] === -1) reachFrom(at);
  }
  return false;
}

function moveOn(walk: Walk, lost: number, end: number, from: Int32Array): void {
  let column = end;
  for (;;) {
    const at = from[column] ?? lost;
    const before = walk.columnOf[at] ?? -1;
    takeOut(walk, at);
    putIn(walk, at, column);
    if (at === lost) return;
    column = before;
  }
}

function putIn({ columnOf, members }: Walk, at: number, column: number): void {
  columnOf[at] = column;
  members[column]?.push(at);
}

function takeOut({ columnOf, members }: Walk, at: number): void {
  const list = members[columnOf[at] ?? -1] ?? [];
  const index = list.indexOf(at);
  if (index >= 0) list.splice(index, 1);
  columnOf[at] = -1;
}

interface Snapshot {
  readonly hubs: Int32Array;
  readonly columnOf: Int32Array;
  readonly left: readonly number[];
}

function snapshot({ hubs, columnOf, left }: Walk): Snapshot {
  return { hubs: hubs.slice(), columnOf: columnOf.slice(), left };
}

function restore(walk: Walk, { hubs, columnOf, left }: Snapshot): void {
  walk.hubs.set(hubs);
  walk.columnOf.set(columnOf);
  walk.left = [...left];
  walk.hubAt.fill(-1);
  hubs.forEach((hub, group) => {
    if (hub >= 0) walk.hubAt[hub] = group;
  });
  walk.members.forEach((list) => (list.length = 0));
  columnOf.forEach((column, at) => walk.members[column]?.push(at));
}
