import type { Group } from "../plan/camp.ts";
import { COST_WEIGHTS, type CostWeights } from "../plan/cost-weights.ts";
import { DEFAULTS } from "../plan/defaults.ts";
import type { HouseRules } from "../plan/house-rules.ts";
import { listsOf } from "./berth-search-lists.ts";
import type { BerthSearch } from "./berth-search-types.ts";
import type { CampPlaces } from "./camp-places-types.ts";
import { UNITS_PER_M } from "./cost-terms.ts";
import { berthBurden, MOST_WEIGHED } from "./deal-berths.ts";
import type { DealtKit } from "./dealt-kit.ts";
import { searchExchanged } from "./wish-exchange.ts";
import { changedPlaces } from "./wish-search.ts";
import type { GroupSearch, GroupSearchInput, SearchKind } from "./group-types.ts";
import { leastByTrying } from "./wish-exact.ts";
import type { WishSearchInput } from "./wish-state.ts";
import { isOfAge, type PeopleLimits } from "./wish-measures.ts";

/** Who belongs together, and what it counts. */
export interface PeopleRules {
  readonly groups: readonly Group[];
  readonly weights?: CostWeights;
  readonly limits: PeopleLimits;
}

/** How near is near, and how far is apart. */
export function peopleLimits({ adultYouthM }: Pick<HouseRules, "adultYouthM">): PeopleLimits {
  return {
    nearM: DEFAULTS["people.near_m"].value,
    apartM: DEFAULTS["people.apart_m"].value,
    ...(adultYouthM === undefined ? {} : { adultYouthM: adultYouthM.value }),
  };
}

/** One who is given a berth. */
export interface Claimant {
  readonly classIndex: number;
  readonly kit: DealtKit;
}

/** People who are dealt berths together: those of one group, or all who have none. */
export interface DealBlock {
  /** Indices of claimants. */
  readonly people: readonly number[];
  readonly places: readonly number[];
  /** Place of the hub, where only a leader may lie; −1 for none. */
  readonly hub: number;
}

/** Claimants by class, group and whether they lead. */
export function kindsOf(
  people: readonly Claimant[],
  groups: readonly Group[],
): { readonly kinds: readonly SearchKind[]; readonly members: readonly (readonly number[])[] } {
  const byKey = new Map<string, { readonly kind: Omit<SearchKind, "people">; readonly members: number[] }>();
  for (const [person, { classIndex, kit }] of people.entries()) {
    const group = groups.findIndex(({ id }) => id === kit.sleeper.group);
    const leads = group >= 0 && kit.sleeper.leads;
    const key = `${classIndex} ${group} ${String(leads)}`;
    const found = byKey.get(key);
    if (found === undefined) byKey.set(key, { kind: { classIndex, group, leads }, members: [person] });
    else found.members.push(person);
  }
  const all = [...byKey.values()];
  return {
    kinds: all.map(({ kind, members }) => ({ ...kind, people: members.length })),
    members: all.map(({ members }) => members),
  };
}

/** The blocks of a layout that was dealt to groups. */
export function blocksOf(
  { kinds, groups }: Pick<GroupSearchInput, "kinds" | "groups">,
  { seats, hubs }: GroupSearch,
  members: readonly (readonly number[])[],
): DealBlock[] {
  return [-1, ...groups.keys()].map((group) => {
    const own = [...kinds.keys()].filter((kind) => kinds[kind]?.group === group);
    const leads = own.some((kind) => kinds[kind]?.leads);
    return {
      people: own.flatMap((kind) => members[kind] ?? []).sort((a, b) => a - b),
      places: seats.filter(({ kind }) => own.includes(kind)).map(({ place }) => place),
      hub: leads ? (hubs[group] ?? -1) : -1,
    };
  });
}

export interface WishTask {
  readonly ground: CampPlaces;
  readonly capacity: number;
  readonly costUnits: Float64Array;
  readonly effortM?: Float64Array;
  readonly rules: PeopleRules;
  readonly people: readonly Claimant[];
  readonly serves: (person: number, place: number) => boolean;
  readonly highestStrapM: (person: number, place: number) => number;
  /** What all of them cost at least; where more is left and people are few, every way is tried [units]. Absent: be quick. */
  readonly atLeast?: number;
}

export interface PlacesByWish {
  /** Whether no way for these people to lie costs less. */
  readonly isLeast: boolean;
  readonly placeOf: Int32Array;
  /** Cost of the places, with what is amiss among people [units]. */
  readonly units: number;
}

/** Places after people have changed them for the sake of who lies near whom. */
export function placesByWish(task: WishTask, start: Int32Array): PlacesByWish {
  const { ground, people, rules } = task;
  const wishes = wishPeople(people, rules);
  const weights = rules.weights ?? COST_WEIGHTS;
  const { places, anchors, conflicts } = ground;
  const input: WishSearchInput = {
    people: wishes,
    prices: {
      farUnits: Math.round(weights.far * UNITS_PER_M),
      wishUnits: Math.round(weights.wish * UNITS_PER_M),
      spreadUnitsPerM: weights.spread * UNITS_PER_M,
      nearM: rules.limits.nearM,
      apartM: rules.limits.apartM,
    },
    start,
    spots: places.map(({ middle }) => middle),
    costUnits: task.costUnits,
    first: Int32Array.from(places, ({ first }) => first),
    second: Int32Array.from(places, ({ second }) => second),
    conflicts: listsOf(places.length, (tell) => {
      for (const [a, b] of conflicts) {
        tell(a, b);
        tell(b, a);
      }
    }),
    trees: anchors.length,
    capacity: task.capacity,
    serves: task.serves,
    burden: people.length > MOST_WEIGHED ? () => 0 : (person, place) => burdenOf(task, person, place),
  };
  // A layout on the way has no proof: people only change places.
  if (task.atLeast === undefined) return { ...changedPlaces(input), isLeast: false };
  const found = searchExchanged(input, task.atLeast);
  if (found.units <= task.atLeast) return { ...found, isLeast: false };
  const least = leastByTrying(input, found);
  return { ...(least ?? found), isLeast: least !== undefined };
}

function burdenOf(
  { people, ground, highestStrapM, effortM }: WishTask,
  person: number,
  place: number,
): number {
  const sleeper = people[person]?.kit.sleeper;
  const there = ground.places[place];
  if (sleeper === undefined || there === undefined) return 0;
  return berthBurden(sleeper, there, highestStrapM(person, place), effortM?.[place] ?? 0);
}

type Wishes = WishSearchInput["people"];

function wishPeople(people: readonly Claimant[], { groups, limits }: PeopleRules): Wishes {
  const sleepers = people.map(({ kit }) => kit.sleeper);
  const indexOf = new Map(sleepers.map(({ id }, index) => [id, index]));
  const groupOf = Int32Array.from(sleepers, ({ group }) => groups.findIndex(({ id }) => id === group));
  return {
    groupOf,
    groups: groups.map(({ withinM }, group) => {
      const members = [...groupOf.keys()].filter((person) => groupOf[person] === group);
      const leaders = members.filter((person) => sleepers[person]?.leads);
      return { withinM, members, hubs: leaders.length > 0 ? leaders : members };
    }),
    near: pairsOf(sleepers, indexOf, "near"),
    apart: pairsOf(sleepers, indexOf, "apart"),
    walls: wallsBetween(sleepers, groupOf, groups, limits),
  };
}

/** Zones keep apart as who wishes it, ages as the house says; a wall with one side alone is none. */
function wallsBetween(
  sleepers: readonly DealtKit["sleeper"][],
  groupOf: Int32Array,
  groups: readonly Group[],
  { apartM, adultYouthM }: PeopleLimits,
): Wishes["walls"] {
  const zones = [...new Set(groups.flatMap(({ zone }) => zone ?? []))];
  const zone = groupOf.map((group) => zones.indexOf(groups[group]?.zone ?? ""));
  const age = Int32Array.from(sleepers, (sleeper) => {
    const ofAge = isOfAge(sleeper);
    return ofAge === undefined ? -1 : Number(ofAge);
  });
  const walls = [
    { sideOf: zone, apartM },
    ...(adultYouthM === undefined ? [] : [{ sideOf: age, apartM: adultYouthM }]),
  ];
  return walls.filter(({ sideOf }) => new Set(sideOf.filter((side) => side >= 0)).size > 1);
}

function pairsOf(
  sleepers: readonly DealtKit["sleeper"][],
  indexOf: ReadonlyMap<string, number>,
  wish: "near" | "apart",
): (readonly [number, number])[] {
  const found = new Map<string, readonly [number, number]>();
  for (const [person, sleeper] of sleepers.entries()) {
    for (const id of sleeper[wish]) {
      const other = indexOf.get(id);
      if (other === undefined || other === person) continue;
      const pair = [Math.min(person, other), Math.max(person, other)] as const;
      found.set(pair.join(" "), pair);
    }
  }
  return [...found.values()];
}

/** Whether people mind more than lying within reach of their group. */
export function mindsMore(people: readonly Claimant[], rules: PeopleRules | undefined): boolean {
  if (rules === undefined) return false;
  const { near, apart, walls } = wishPeople(people, rules);
  return near.length + apart.length + walls.length > 0;
}

/** A search whose berths are others than those it found. */
export function withPlaces(
  search: BerthSearch,
  chosen: BerthSearch["chosen"],
  costUnits: Float64Array,
): BerthSearch {
  const cost = chosen.reduce((sum, { place }) => sum + (costUnits[place] ?? 0), 0);
  const proven = search.placed === search.bound && cost === search.lowerBoundUnits;
  return { ...search, chosen, costUnits: cost, proven };
}
