import { apart, centreOf, suitsColumn, type Dealing } from "./group-dealing.ts";
import { leastTransport } from "./group-transport.ts";

/** Berths dealt round given hubs. */
export interface Dealt {
  readonly hubs: Int32Array;
  /** Column of each position. */
  readonly columnOf: Int32Array;
  /** Positions beyond the reach of the hub of their column's group. */
  readonly beyond: readonly number[];
}

/**
 * Deals all berths round given hubs so that fewest lie out of reach, and those as little as can be; else near the
 * hub rather than far. Nothing where not everybody can have a berth that suits.
 *
 * Source   layout-search (handbook/layout.md: groups)
 */
export function dealRound(dealing: Dealing, hubs: Int32Array): Dealt | undefined {
  const { places, columns, groups, room } = dealing;
  const hubOf = new Int32Array(places.length).fill(-1);
  hubs.forEach((hub, group) => hubOf.fill(group, Math.max(hub, 0), hub + 1));
  const cost = new Float64Array(places.length * columns.length).fill(Infinity);
  for (const at of places.keys()) {
    const hubbed = hubOf[at] ?? -1;
    for (const [column, { group }] of columns.entries()) {
      if (!suitsColumn(dealing, at, column)) continue;
      const isElsewhere = hubbed >= 0 && !groups[hubbed]?.hubColumns.includes(column);
      if (isElsewhere) continue;
      cost[at * columns.length + column] = farCost(dealing, at, group, hubs[group] ?? -1);
    }
  }
  const columnOf = leastTransport({ rows: places.length, room, cost });
  if (columnOf === undefined) return undefined;
  return { hubs, columnOf, beyond: beyondReach(dealing, hubs, columnOf) };
}

/** Whole square metres within reach; a big step and whole square centimetres beyond it. */
function farCost(dealing: Dealing, at: number, group: number, hub: number): number {
  if (group < 0 || hub < 0) return 0;
  const squared = apart(dealing, at, hub);
  const reach = dealing.groups[group]?.reach ?? 0;
  return squared > reach ? BEYOND + Math.min(Math.round(squared - reach), BEYOND) : Math.round(squared);
}

/** One out of reach costs more than all that can be saved within it. */
const BEYOND = 1e9;

function beyondReach(dealing: Dealing, hubs: Int32Array, columnOf: Int32Array): number[] {
  return [...dealing.places.keys()].filter((at) => {
    const group = dealing.columns[columnOf[at] ?? -1]?.group ?? -1;
    const hub = hubs[group] ?? -1;
    return hub >= 0 && apart(dealing, at, hub) > (dealing.groups[group]?.reach ?? 0);
  });
}

/**
 * Deals, moves each hub to the middle of its group, and deals again, for as long as fewer are left out of reach.
 */
export function dealAndRecentre(dealing: Dealing, start: Int32Array): Dealt | undefined {
  let best = dealRound(dealing, start);
  for (let round = 0; best !== undefined && best.beyond.length > 0 && round < ROUNDS; round++) {
    const next = dealRound(dealing, recentred(dealing, best));
    if (next === undefined || next.beyond.length >= best.beyond.length) break;
    best = next;
  }
  return best;
}

const ROUNDS = 8;

function recentred(dealing: Dealing, { hubs, columnOf }: Dealt): Int32Array {
  const members: number[][] = dealing.groups.map(() => []);
  columnOf.forEach((column, at) => members[dealing.columns[column]?.group ?? -1]?.push(at));
  return hubs.map((hub, group) => {
    const own = members[group] ?? [];
    const centre = hub < 0 ? -1 : centreOf(dealing, group, own, own);
    return centre < 0 ? hub : centre;
  });
}
