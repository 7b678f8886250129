import { LENGTH_SLACK_M } from "../quantity/constants.ts";
import type { GroupSearchInput, SearchKind } from "./group-types.ts";

/** Places of one layout to be dealt to groups. Positions are indices into `places`. */
export interface Dealing {
  readonly places: readonly number[];
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly columns: readonly DealColumn[];
  /** Room in each column. */
  readonly room: Int32Array;
  /** positions × columns: 1 where the column's people may lie there at the cost the layout has there. */
  readonly suits: Uint8Array;
  readonly groups: readonly DealGroup[];
}

/** Kinds of one group that suit the same places of the layout. */
export interface DealColumn {
  readonly group: number;
  readonly kinds: readonly number[];
}

export interface DealGroup {
  /** Square of the radius, with a hair's breadth more [m²]. */
  readonly reach: number;
  readonly columns: readonly number[];
  /** Columns that may hold the hub. */
  readonly hubColumns: readonly number[];
}

/** The berths that are chosen, made ready to be dealt out. */
export function dealingOf({ search, base, kinds, groups, spots }: GroupSearchInput): Dealing {
  const places = base.chosen.map(({ place }) => place);
  const paid = base.chosen.map(({ place, classIndex }) => search.classes[classIndex]?.costUnits[place] ?? -1);
  const suitsAt = (classIndex: number): Uint8Array =>
    Uint8Array.from(places, (place, at) =>
      search.classes[classIndex]?.costUnits[place] === paid[at] ? 1 : 0,
    );
  const ofClass = search.classes.map((_, index) => suitsAt(index));
  const columns = columnsOf(kinds, ofClass);
  const suits = new Uint8Array(places.length * columns.length);
  columns.forEach(({ kinds: [head = -1] }, column) =>
    ofClass[kinds[head]?.classIndex ?? -1]?.forEach(
      (suit, at) => (suits[at * columns.length + column] = suit),
    ),
  );
  return {
    places,
    x: Float64Array.from(places, (place) => spots[place]?.[0] ?? NaN),
    y: Float64Array.from(places, (place) => spots[place]?.[1] ?? NaN),
    columns,
    room: Int32Array.from(columns, (column) =>
      column.kinds.reduce((sum, kind) => sum + (kinds[kind]?.people ?? 0), 0),
    ),
    suits,
    groups: groups.map(({ withinM }, group) => dealGroup(withinM, group, columns, kinds)),
  };
}

function dealGroup(
  withinM: number,
  group: number,
  columns: readonly DealColumn[],
  kinds: readonly SearchKind[],
): DealGroup {
  const reachM = withinM + LENGTH_SLACK_M;
  const own = [...columns.keys()].filter((column) => columns[column]?.group === group);
  const leading = own.filter((column) => columns[column]?.kinds.some((kind) => kinds[kind]?.leads));
  return { reach: reachM * reachM, columns: own, hubColumns: leading.length > 0 ? leading : own };
}

function columnsOf(kinds: readonly SearchKind[], ofClass: readonly Uint8Array[]): DealColumn[] {
  const byKey = new Map<string, { readonly group: number; readonly kinds: number[] }>();
  for (const [kind, { classIndex, group, people }] of kinds.entries()) {
    if (people === 0) continue;
    const key = `${group} ${ofClass[classIndex]?.join("") ?? ""}`;
    const column = byKey.get(key);
    if (column === undefined) byKey.set(key, { group, kinds: [kind] });
    else column.kinds.push(kind);
  }
  return [...byKey.values()];
}

/** Square of the distance between two positions [m²]; 0 where one is not known. */
export function apart({ x, y }: Dealing, a: number, b: number): number {
  const east = (x[a] ?? NaN) - (x[b] ?? NaN);
  const north = (y[a] ?? NaN) - (y[b] ?? NaN);
  const squared = east * east + north * north;
  return squared >= 0 ? squared : 0;
}

export function suitsColumn({ suits, columns }: Dealing, at: number, column: number): boolean {
  return suits[at * columns.length + column] === 1;
}

/** Whether the hub of a group could be at a position. */
export function mayBeHub(dealing: Dealing, at: number, group: number): boolean {
  return dealing.groups[group]?.hubColumns.some((column) => suitsColumn(dealing, at, column)) ?? false;
}

/**
 * The position of those offered from which fewest of the others are out of reach, and of these the one whose
 * farthest is nearest; −1 where none may be the hub.
 */
export function centreOf(
  dealing: Dealing,
  group: number,
  offered: Iterable<number>,
  members: readonly number[],
): number {
  const reach = dealing.groups[group]?.reach ?? 0;
  let best = -1;
  let least = Infinity;
  for (const at of offered) {
    if (!mayBeHub(dealing, at, group)) continue;
    let farthest = 0;
    let beyond = 0;
    for (const member of members) {
      const squared = apart(dealing, at, member);
      if (squared > reach) beyond++;
      farthest = Math.max(farthest, squared);
    }
    const worth = beyond * FARTHER_THAN_ANY + farthest;
    if (worth < least) {
      least = worth;
      best = at;
    }
  }
  return best;
}

/** More than the square of any distance in a camp [m²]. */
const FARTHER_THAN_ANY = 1e12;
