import type { GroundXY } from "../site/obstacle.ts";
import { LENGTH_SLACK_M } from "../quantity/constants.ts";

/** People by index, and what they wish of each other. */
export interface WishPeople {
  /** Group of each person, −1 for none. */
  readonly groupOf: Int32Array;
  readonly groups: readonly WishGroup[];
  readonly near: readonly (readonly [number, number])[];
  readonly apart: readonly (readonly [number, number])[];
  /** What keeps people apart by kind: zones, and age. */
  readonly walls: readonly Wall[];
}

/** People of different sides lie at least so far apart. */
export interface Wall {
  /** Side of each person, −1 for none. */
  readonly sideOf: Int32Array;
  readonly apartM: number;
}

export interface WishGroup {
  readonly withinM: number;
  readonly members: readonly number[];
  /** Whose berth may be the hub. */
  readonly hubs: readonly number[];
}

/** What each thing amiss costs, in units. */
export interface WishPrices {
  readonly farUnits: number;
  readonly wishUnits: number;
  /** For each metre between a person and the hub of their group. */
  readonly spreadUnitsPerM: number;
  readonly nearM: number;
  readonly apartM: number;
}

export interface WishScore {
  /** All that some people have to do with, as they lie now [units]. */
  readonly around: (people: readonly number[]) => number;
  /** Whether a person, or one they have to do with, has something to wish for. */
  readonly isAmiss: (person: number) => boolean;
  /** The same, but for those whom they wish near. */
  readonly isAmissElse: (person: number) => boolean;
  /** Those wished near, either way, who lie too far. */
  readonly missedNear: (person: number) => readonly number[];
}

/** Counts what is amiss; `placeOf` is looked at anew each time. */
export function wishScore(
  people: WishPeople,
  prices: WishPrices,
  placeOf: Int32Array,
  spots: readonly (GroundXY | undefined)[],
): WishScore {
  const apartM = (a: number, b: number): number => {
    const one = spots[placeOf[a] ?? -1];
    const other = spots[placeOf[b] ?? -1];
    if (one === undefined || other === undefined) return NaN;
    const east = one[0] - other[0];
    const north = one[1] - other[1];
    return Math.sqrt(east * east + north * north);
  };
  const wishes = wishesOf(people, prices);
  const ofPerson: number[][] = Array.from(people.groupOf, () => []);
  wishes.forEach(({ pair }, index) => pair.forEach((person) => ofPerson[person]?.push(index)));
  const isMissed = ({ pair, isMet }: Wish): boolean => !isMet(apartM(...pair));
  const groupUnits = (group: number): number => groupCost(people.groups[group], prices, apartM);
  const missedBy = (person: number): Wish[] =>
    (ofPerson[person] ?? []).flatMap((index) => wishes[index] ?? []).filter(isMissed);
  const isAmissInAll = (person: number): boolean =>
    groupUnits(people.groupOf[person] ?? -1) > 0 ||
    across.some(({ of, tooNear }) => of(person).some((other) => tooNear(person, other)));
  const across = people.walls.map(({ sideOf, apartM: leastM }) => ({
    of: beyondWall(sideOf),
    tooNear: (a: number, b: number): boolean => apartM(a, b) < leastM - LENGTH_SLACK_M,
  }));
  return {
    around: (moved) => {
      let units = 0;
      for (let at = 0; at < moved.length; at++) {
        const person = moved[at] ?? -1;
        const group = people.groupOf[person] ?? -1;
        // What two of those moved share counts with the first of them.
        const isFirst = (other: number): boolean => !comesBefore(moved, at, other);
        if (isFirstOfGroup(people.groupOf, moved, at)) units += groupUnits(group);
        for (const index of ofPerson[person] ?? []) {
          const wish = wishes[index];
          if (wish === undefined || !isMissed(wish)) continue;
          const [one, other] = wish.pair;
          if (isFirst(one === person ? other : one)) units += prices.wishUnits;
        }
        for (const { of, tooNear } of across) {
          for (const other of of(person)) {
            if (tooNear(person, other) && isFirst(other)) units += prices.wishUnits;
          }
        }
      }
      return units;
    },
    isAmiss: (person) => missedBy(person).length > 0 || isAmissInAll(person),
    isAmissElse: (person) => missedBy(person).some(({ isNear }) => !isNear) || isAmissInAll(person),
    missedNear: (person) =>
      missedBy(person)
        .filter(({ isNear }) => isNear)
        .map(({ pair: [one, other] }) => (one === person ? other : one)),
  };
}

interface Wish {
  readonly pair: readonly [number, number];
  readonly isNear: boolean;
  /** True too where nobody knows how far they lie apart. */
  readonly isMet: (apartM: number) => boolean;
}

function wishesOf({ near, apart }: WishPeople, { nearM, apartM: leastM }: WishPrices): Wish[] {
  return [
    ...near.map((pair) => ({
      pair,
      isNear: true,
      isMet: (apartM: number) => !(apartM > nearM + LENGTH_SLACK_M),
    })),
    ...apart.map((pair) => ({
      pair,
      isNear: false,
      isMet: (apartM: number) => !(apartM < leastM - LENGTH_SLACK_M),
    })),
  ];
}

/** For each person all of other sides, listed once a side. */
function beyondWall(sideOf: Int32Array): (person: number) => readonly number[] {
  const bySide = new Map<number, readonly number[]>();
  return (person) => {
    const own = sideOf[person] ?? -1;
    if (own < 0) return [];
    const known = bySide.get(own);
    if (known !== undefined) return known;
    const others = [...sideOf.keys()].filter((other) => (sideOf[other] ?? -1) >= 0 && sideOf[other] !== own);
    bySide.set(own, others);
    return others;
  };
}

function comesBefore(moved: readonly number[], end: number, person: number): boolean {
  for (let at = 0; at < end; at++) if (moved[at] === person) return true;
  return false;
}

function isFirstOfGroup(groupOf: Int32Array, moved: readonly number[], end: number): boolean {
  const group = groupOf[moved[end] ?? -1];
  for (let at = 0; at < end; at++) if (groupOf[moved[at] ?? -1] === group) return false;
  return true;
}

/** With the hub that makes it least. */
function groupCost(
  group: WishGroup | undefined,
  { farUnits, spreadUnitsPerM }: WishPrices,
  apartM: (a: number, b: number) => number,
): number {
  if (group === undefined) return 0;
  let least = Infinity;
  for (const hub of group.hubs) {
    let units = 0;
    for (const member of group.members) {
      const away = member === hub ? 0 : apartM(member, hub);
      if (away > group.withinM + LENGTH_SLACK_M) units += farUnits;
      if (away > 0) units += Math.round(spreadUnitsPerM * away);
    }
    least = Math.min(least, units);
  }
  return least === Infinity ? 0 : least;
}
