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
}

/** Counts what is amiss; `placeOf` is looked at anew each time. */
export function wishScore(
  people: WishPeople,
  prices: WishPrices,
  placeOf: Int32Array,
  spots: readonly (GroundXY | undefined)[],
): WishScore {
  const apartM = (a: number, b: number): number => {
    const [one, other] = [spots[placeOf[a] ?? -1], spots[placeOf[b] ?? -1]];
    if (one === undefined || other === undefined) return NaN;
    const [east, north] = [one[0] - other[0], one[1] - other[1]];
    return Math.sqrt(east * east + north * north);
  };
  const wishes = wishesOf(people, prices);
  const ofPerson: number[][] = Array.from(people.groupOf, () => []);
  wishes.forEach(({ pair }, index) => pair.forEach((person) => ofPerson[person]?.push(index)));
  const isMissed = ({ pair, isMet }: Wish): boolean => !isMet(apartM(...pair));
  const groupUnits = (group: number): number => groupCost(people.groups[group], prices, apartM);
  const across = people.walls.map(({ sideOf, apartM: leastM }) => ({
    of: (person: number): number[] => beyondWall(sideOf, person),
    tooNear: (a: number, b: number): boolean => apartM(a, b) < leastM - LENGTH_SLACK_M,
  }));
  return {
    around: (moved) => {
      const groups = new Set(moved.map((person) => people.groupOf[person] ?? -1));
      const asked = new Set(moved.flatMap((person) => ofPerson[person] ?? []));
      let units = 0;
      for (const group of groups) units += groupUnits(group);
      for (const index of asked) {
        const wish = wishes[index];
        if (wish !== undefined && isMissed(wish)) units += prices.wishUnits;
      }
      moved.forEach((person, at) => {
        const before = moved.slice(0, at);
        for (const { of, tooNear } of across) {
          for (const other of of(person)) {
            if (!before.includes(other) && tooNear(person, other)) units += prices.wishUnits;
          }
        }
      });
      return units;
    },
    isAmiss: (person) =>
      (ofPerson[person] ?? []).some((index) => wishes[index] !== undefined && isMissed(wishes[index])) ||
      groupUnits(people.groupOf[person] ?? -1) > 0 ||
      across.some(({ of, tooNear }) => of(person).some((other) => tooNear(person, other))),
  };
}

interface Wish {
  readonly pair: readonly [number, number];
  /** True too where nobody knows how far they lie apart. */
  readonly isMet: (apartM: number) => boolean;
}

function wishesOf({ near, apart }: WishPeople, { nearM, apartM: leastM }: WishPrices): Wish[] {
  return [
    ...near.map((pair) => ({ pair, isMet: (apartM: number) => !(apartM > nearM + LENGTH_SLACK_M) })),
    ...apart.map((pair) => ({ pair, isMet: (apartM: number) => !(apartM < leastM - LENGTH_SLACK_M) })),
  ];
}

function beyondWall(sideOf: Int32Array, person: number): number[] {
  const own = sideOf[person] ?? -1;
  if (own < 0) return [];
  return [...sideOf.keys()].filter((other) => (sideOf[other] ?? -1) >= 0 && sideOf[other] !== own);
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
