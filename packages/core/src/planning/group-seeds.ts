import { centreOf, mayBeHub, apart, type Dealing } from "./group-dealing.ts";

/**
 * A first hub for each group: the berths are cut in two across their longer side, in proportion to the people of
 * either half of the groups, and so on until each block belongs to one group; its hub is its middle.
 *
 * `turned` cuts across the shorter side first.
 *
 * Shapes   → one position a group, all different; −1 where a group has nobody or nowhere to be
 * Source   layout-search (handbook/layout.md: groups)
 */
export function seededHubs(dealing: Dealing, order: readonly number[], turned = false): Int32Array {
  const people = dealing.groups.map(({ columns }) =>
    columns.reduce((sum, column) => sum + (dealing.room[column] ?? 0), 0),
  );
  const present = order.filter((group) => (people[group] ?? 0) > 0);
  const blocks = cut({ dealing, people }, [...dealing.places.keys()], present, turned);
  const hubs = new Int32Array(dealing.groups.length).fill(-1);
  const taken = new Set<number>();
  for (const { group, block } of blocks) {
    const inBlock = block.filter((at) => !taken.has(at));
    const centre = centreOf(dealing, group, inBlock, block);
    const hub = centre >= 0 ? centre : nearestHub(dealing, group, block[0] ?? 0, taken);
    hubs[group] = hub;
    if (hub >= 0) taken.add(hub);
  }
  return hubs;
}

interface Block {
  readonly group: number;
  readonly block: readonly number[];
}

interface Cutting {
  readonly dealing: Dealing;
  /** People in each group. */
  readonly people: readonly number[];
}

function cut(
  cutting: Cutting,
  positions: readonly number[],
  groups: readonly number[],
  turned: boolean,
): Block[] {
  const [only] = groups;
  if (only === undefined) return [];
  if (groups.length === 1) return [{ group: only, block: positions }];
  const half = groups.length >> 1;
  const sum = (list: readonly number[]): number =>
    list.reduce((total, group) => total + (cutting.people[group] ?? 0), 0);
  const before = groups.slice(0, half);
  const count = Math.round((positions.length * sum(before)) / sum(groups));
  const sorted = alongSide(cutting.dealing, positions, turned);
  return [
    ...cut(cutting, sorted.slice(0, count), before, false),
    ...cut(cutting, sorted.slice(count), groups.slice(half), false),
  ];
}

function alongSide({ x, y }: Dealing, positions: readonly number[], shorter: boolean): number[] {
  const side = (values: Float64Array): number => {
    let [low, high] = [Infinity, -Infinity];
    for (const at of positions) {
      const value = values[at] ?? NaN;
      if (value < low) low = value;
      if (value > high) high = value;
    }
    return high - low;
  };
  const along = side(x) >= side(y) !== shorter ? x : y;
  const key = (at: number): number => {
    const value = along[at] ?? NaN;
    return Number.isNaN(value) ? 0 : value;
  };
  return [...positions].sort((a, b) => key(a) - key(b) || a - b);
}

function nearestHub(dealing: Dealing, group: number, from: number, taken: ReadonlySet<number>): number {
  let best = -1;
  let least = Infinity;
  for (const at of dealing.places.keys()) {
    if (taken.has(at) || !mayBeHub(dealing, at, group)) continue;
    const squared = apart(dealing, from, at);
    if (squared >= least) continue;
    least = squared;
    best = at;
  }
  return best;
}
