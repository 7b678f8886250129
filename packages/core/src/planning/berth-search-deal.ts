import { listOf } from "./berth-search-lists.ts";
import type { SearchModel } from "./berth-search-model.ts";

/**
 * Gives chosen places to classes so that each costs no more than its cheapest class would there.
 *
 * A place without room in a class that suits it pushes a place of that class on to another one, as long
 * as there is a way (augmenting paths). Nothing is returned where not all can be dealt out so.
 *
 * Shapes   places, as many as there are people at most → one column a place, sorted
 */
export function dealPlaces(model: SearchModel, places: readonly number[]): Int32Array | undefined {
  const columnAt = new Map<number, number>();
  const members: Set<number>[] = Array.from(model.people, () => new Set());
  for (const place of places) {
    if (!settle(model, place, columnAt, members)) return undefined;
  }
  return Int32Array.from(columnAt.values()).sort();
}

/** Least cost at which any class may use each place; ∞ where none may. */
export function cheapestAtPlaces(model: SearchModel): Float64Array {
  const cost = new Float64Array(model.places).fill(Infinity);
  model.columnPlace.forEach((place, column) => {
    cost[place] = Math.min(cost[place] ?? Infinity, model.columnCost[column] ?? Infinity);
  });
  return cost;
}

/** One search in width over classes for a way that ends where somebody is still without a place. */
function settle(
  model: SearchModel,
  place: number,
  columnAt: Map<number, number>,
  members: readonly Set<number>[],
): boolean {
  const cameBy = new Map<number, { readonly place: number; readonly column: number }>();
  const queue: number[] = [];
  const reach = (from: number): void => {
    for (const column of cheapColumns(model, from)) {
      const group = model.columnClass[column] ?? 0;
      if (cameBy.has(group)) continue;
      cameBy.set(group, { place: from, column });
      queue.push(group);
    }
  };
  reach(place);
  for (const group of queue) {
    if ((members[group]?.size ?? 0) < (model.people[group] ?? 0)) {
      shift(model, place, group, cameBy, columnAt, members);
      return true;
    }
    for (const member of members[group] ?? []) reach(member);
  }
  return false;
}

function shift(
  model: SearchModel,
  start: number,
  end: number,
  cameBy: ReadonlyMap<number, { readonly place: number; readonly column: number }>,
  columnAt: Map<number, number>,
  members: readonly Set<number>[],
): void {
  let group = end;
  for (;;) {
    const step = cameBy.get(group);
    if (step === undefined) return;
    const before = columnAt.get(step.place);
    columnAt.set(step.place, step.column);
    members[group]?.add(step.place);
    if (step.place === start || before === undefined) return;
    group = model.columnClass[before] ?? 0;
    members[group]?.delete(step.place);
  }
}

function cheapColumns(model: SearchModel, place: number): number[] {
  const columns = [...listOf(model.ofPlace, place)];
  const least = columns.reduce(
    (cost, column) => Math.min(cost, model.columnCost[column] ?? Infinity),
    Infinity,
  );
  return columns.filter((column) => model.columnCost[column] === least);
}
