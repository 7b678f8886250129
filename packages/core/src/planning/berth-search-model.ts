import type { BerthSearchInput, SearchClass } from "./berth-search-types.ts";
import { listsOf, type Lists } from "./berth-search-lists.ts";

/**
 * The search made ready: classes that cannot be told apart are one, and each (place, class) that is
 * allowed is a column, sorted by place, then class.
 */
export interface SearchModel {
  readonly places: number;
  readonly trees: number;
  /** Hammocks that each tree may carry. */
  readonly capacity: Int32Array;
  readonly first: Int32Array;
  readonly second: Int32Array;
  /** Conflicting places of each place. */
  readonly conflicts: Lists;
  /** Places at each tree. */
  readonly atTree: Lists;
  readonly columns: number;
  readonly columnPlace: Int32Array;
  readonly columnClass: Int32Array;
  readonly columnCost: Float64Array;
  /** Columns of each place. */
  readonly ofPlace: Lists;
  /** People in each merged class. */
  readonly people: Int32Array;
  /** For each merged class the classes of the input that it stands for. */
  readonly members: readonly (readonly number[])[];
  readonly asked: number;
}

export function searchModel(input: BerthSearchInput): SearchModel {
  const members = mergeClasses(input.classes);
  const people = Int32Array.from(members, (list) =>
    list.reduce((sum, index) => sum + (input.classes[index]?.people ?? 0), 0),
  );
  const places = input.places.length;
  const capacity =
    input.capacities ?? new Int32Array(input.trees).fill(Math.max(0, Math.floor(input.capacity)));
  const columns = columnsOf(input, members, people, capacity);
  const columnPlace = Int32Array.from(columns, ({ place }) => place);
  return {
    places,
    trees: input.trees,
    capacity,
    first: Int32Array.from(input.places, ({ first }) => first),
    second: Int32Array.from(input.places, ({ second }) => second),
    conflicts: conflictLists(input, places),
    atTree: listsOf(input.trees, (tell) => {
      for (const [index, { first, second }] of input.places.entries()) {
        tell(first, index);
        tell(second, index);
      }
    }),
    columns: columns.length,
    columnPlace,
    columnClass: Int32Array.from(columns, ({ group }) => group),
    columnCost: Float64Array.from(columns, ({ cost }) => cost),
    ofPlace: listsOf(places, (tell) => columnPlace.forEach((place, column) => tell(place, column))),
    people,
    members,
    asked: people.reduce((sum, count) => sum + count, 0),
  };
}

function conflictLists(input: BerthSearchInput, places: number): Lists {
  return listsOf(places, (tell) => {
    for (const [a, b] of input.conflicts) {
      tell(a, b);
      tell(b, a);
    }
  });
}

interface Column {
  readonly place: number;
  readonly group: number;
  readonly cost: number;
}

function columnsOf(
  { places, classes }: BerthSearchInput,
  members: readonly (readonly number[])[],
  people: Int32Array,
  capacity: Int32Array,
): readonly Column[] {
  const columns: Column[] = [];
  for (const [place, { first, second }] of places.entries()) {
    if (!((capacity[first] ?? 0) >= 1 && (capacity[second] ?? 0) >= 1)) continue;
    for (const [group, [head = -1]] of members.entries()) {
      const cost = classes[head]?.costUnits[place] ?? -1;
      if (cost >= 0 && (people[group] ?? 0) > 0) columns.push({ place, group, cost });
    }
  }
  return columns;
}

/** Groups of classes with the same cost at every place, by first member. */
function mergeClasses(classes: readonly SearchClass[]): readonly (readonly number[])[] {
  const byHash = new Map<number, number[][]>();
  const groups: number[][] = [];
  for (const [index, { costUnits }] of classes.entries()) {
    const hash = hashOf(costUnits);
    const alike = byHash.get(hash) ?? [];
    const group = alike.find(([head = -1]) => isEqual(classes[head]?.costUnits, costUnits));
    if (group !== undefined) {
      group.push(index);
      continue;
    }
    const fresh = [index];
    groups.push(fresh);
    byHash.set(hash, [...alike, fresh]);
  }
  return groups;
}

function hashOf(costs: Float64Array): number {
  let hash = 17;
  for (const cost of costs) hash = (Math.imul(hash, 31) + Math.trunc(cost)) | 0;
  return hash;
}

function isEqual(a: Float64Array | undefined, b: Float64Array): boolean {
  return a !== undefined && a.length === b.length && a.every((cost, index) => cost === b[index]);
}
