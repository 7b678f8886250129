import { LENGTH_SLACK_M } from "../quantity/constants.ts";
import type { GroundXY } from "../site/obstacle.ts";
import { squareBetween } from "./group-around-hubs.ts";
import type { WishSearchInput } from "./wish-state.ts";

/**
 * Groups that are alike change all their places with each other, so that those of whom somebody wishes somebody of
 * another group near come to lie beside that group. Within the groups nothing changes, so the cost of places stays.
 *
 *   least Σ over near wishes between groups  max(0, least way between places of the two that they could have − near)
 *
 * Alike are groups of one radius, size, number of leaders and side of each wall.
 *
 * Shapes   → place of each person; undefined where nobody wishes so, or somebody could not lie there
 * Holds    steps down, one exchange after the other, the best first; proves nothing
 * Source   layout-search (handbook/layout.md: people)
 */
export function exchangedGroups(input: WishSearchInput, barred: Barred = new Set()): Exchanged | undefined {
  const links = linksOf(input.people);
  if (links.length === 0 || input.people.groups.length < 2) return undefined;
  const ordered = orderedMembers(input);
  const blocks = ordered.map((members, group) => blockOfPlaces(input, group, members));
  const lacking = lackingOnce(input, blocks);
  const blockOf = Int32Array.from(ordered, (_, group) => group);
  const keys = ordered.map((_, group) => likeness(input, group));
  const total = (): number =>
    links.reduce((sum, { key, groups: [one, other], isHub }) => {
      const [from = -1, to = -1] = [blockOf[one], blockOf[other]];
      return sum + (barred.has(`${key} ${from} ${to}`) ? BARRED_M : lacking([from, to], isHub));
    }, 0);
  let least = total();
  for (let pass = 0; pass < MOST_PASSES && least > 0; pass++) {
    const best = bestExchange(
      links.flatMap(({ groups }) => groups),
      keys,
      blockOf,
      total,
    );
    if (best === undefined || best.units >= least - SAVED) break;
    least = best.units;
    exchange(blockOf, best.pair);
  }
  const placeOf = placesAfter(input, ordered, blockOf);
  if (placeOf === undefined) return undefined;
  const sides = links.map(({ pair, key, groups: [one, other] }) => ({
    pair,
    side: `${key} ${blockOf[one] ?? -1} ${blockOf[other] ?? -1}`,
  }));
  return { placeOf, sides };
}

/** Of two who wish each other near, the places of which groups theirs have. */
export type Barred = ReadonlySet<string>;

export interface Exchanged {
  readonly placeOf: Int32Array;
  readonly sides: readonly { readonly pair: readonly [number, number]; readonly side: string }[];
}

/** What it counts where two come to lie again where it came to nothing before [m]. */
const BARRED_M = 30;

const MOST_PASSES = 100;

/** An exchange must save so much [m]. */
const SAVED = 1e-6;

interface Exchange {
  readonly pair: readonly [number, number];
  readonly units: number;
}

function bestExchange(
  wishing: readonly number[],
  keys: readonly string[],
  blockOf: Int32Array,
  total: () => number,
): Exchange | undefined {
  let best: Exchange | undefined;
  for (const one of new Set(wishing)) {
    for (const other of keys.keys()) {
      if (other === one || keys[other] !== keys[one]) continue;
      exchange(blockOf, [one, other]);
      const units = total();
      exchange(blockOf, [one, other]);
      if (best === undefined || units < best.units) best = { pair: [one, other], units };
    }
  }
  return best;
}

function exchange(blockOf: Int32Array, [one, other]: readonly [number, number]): void {
  const block = blockOf[one] ?? -1;
  blockOf[one] = blockOf[other] ?? -1;
  blockOf[other] = block;
}

/** Those whose berth may be the hub first, then the others. */
function orderedMembers({ people }: WishSearchInput): number[][] {
  return people.groups.map(({ members, hubs }) =>
    hubs.length === members.length
      ? [...members]
      : [...hubs, ...members.filter((person) => !hubs.includes(person))],
  );
}

function likeness({ people }: WishSearchInput, group: number): string {
  const { withinM, members = [], hubs = [] } = people.groups[group] ?? {};
  const sides = people.walls.map(({ sideOf }) =>
    members.map((person) => sideOf[person] ?? -1).sort((a, b) => a - b),
  );
  return JSON.stringify([withinM, members.length, hubs.length, sides]);
}

/** Two who have groups, one or different ones, of whom one wishes the other near. */
interface Link {
  readonly pair: readonly [number, number];
  readonly key: string;
  readonly groups: readonly [number, number];
  /** Whether the only leader of the group is meant, whose berth is the hub. */
  readonly isHub: readonly [boolean, boolean];
}

function linksOf({ groupOf, groups, near }: WishSearchInput["people"]): Link[] {
  const isHub = (person: number): boolean => {
    const { hubs = [], members = [] } = groups[groupOf[person] ?? -1] ?? {};
    return hubs.length === 1 && members.length > 1 && hubs[0] === person;
  };
  return near
    .filter(([one, other]) => (groupOf[one] ?? -1) >= 0 && (groupOf[other] ?? -1) >= 0)
    .map(([one, other]) => ({
      pair: [one, other],
      key: `${one} ${other}`,
      groups: [groupOf[one] ?? -1, groupOf[other] ?? -1],
      isHub: [isHub(one), isHub(other)],
    }));
}

type Spots = readonly (GroundXY | undefined)[];

/** Where a group lies, and from which of these berths all are within reach, or most as it is. */
interface Block {
  readonly all: Spots;
  readonly asHub: Spots;
}

function blockOfPlaces(
  { start, spots, people }: WishSearchInput,
  group: number,
  members: readonly number[],
): Block {
  const reachM = (people.groups[group]?.withinM ?? Infinity) + LENGTH_SLACK_M;
  const all = members.map((person) => spots[start[person] ?? -1]);
  const beyond = all.map((hub) => all.filter((at) => squareBetween(hub, at) > reachM * reachM).length);
  return { all, asHub: all.filter((_, at) => beyond[at] === Math.min(...beyond)) };
}

/** What two lack whose groups have the places of two blocks, each worked out once. */
function lackingOnce(
  input: WishSearchInput,
  blocks: readonly Block[],
): (sides: readonly [number, number], isHub: readonly [boolean, boolean]) => number {
  const known = new Map<string, number>();
  return ([from, to], isHub) => {
    const key = `${from} ${to} ${isHub.join(" ")}`;
    const kept = known.get(key);
    if (kept !== undefined) return kept;
    const [one, other] = [blocks[from], blocks[to]];
    const own = (isHub[0] ? one?.asHub : one?.all) ?? [];
    const others = (isHub[1] ? other?.asHub : other?.all) ?? [];
    const found = wayLacking(input, own, others);
    known.set(key, found);
    return found;
  };
}

/** By how much the nearest of two groups' places are farther from each other than near [m]. */
function wayLacking({ prices }: WishSearchInput, own: Spots, others: Spots): number {
  let least = Infinity;
  for (const one of own) {
    for (const other of others) {
      if (one !== undefined && one === other) continue;
      const squared = squareBetween(one, other);
      least = Math.min(least, Number.isNaN(squared) ? 0 : squared);
    }
  }
  return Math.max(0, Math.sqrt(least) - prices.nearM);
}

/** Undefined where somebody could not lie where they would come to. */
function placesAfter(
  { start, serves }: WishSearchInput,
  ordered: readonly number[][],
  blockOf: Int32Array,
): Int32Array | undefined {
  const placeOf = start.slice();
  for (const [group, members] of ordered.entries()) {
    const from = ordered[blockOf[group] ?? -1] ?? [];
    for (const [at, person] of members.entries()) {
      const place = start[from[at] ?? -1] ?? -1;
      if (place !== start[person] && !serves(person, place)) return undefined;
      placeOf[person] = place;
    }
  }
  return placeOf;
}
