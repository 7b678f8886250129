import type { SearchModel } from "./berth-search-model.ts";

/**
 * Counts a layout again from the rules alone, with none of the search's own bookkeeping.
 *
 * Returns how many it places and its cost in whole units; nothing where it breaks a rule: a place
 * used twice, two that conflict, a tree with more hammocks than it may carry, more of a class than
 * there are people.
 */
export function recheckLayout(
  model: SearchModel,
  columns: readonly number[] | Int32Array,
): { readonly placed: number; readonly cost: number } | undefined {
  const used = new Set<number>();
  const load = new Map<number, number>();
  const people = new Map<number, number>();
  let cost = 0;
  for (const column of columns) {
    const place = model.columnPlace[column];
    const group = model.columnClass[column];
    if (place === undefined || group === undefined || used.has(place)) return undefined;
    used.add(place);
    count(load, model.first[place] ?? -1);
    count(load, model.second[place] ?? -1);
    count(people, group);
    cost += model.columnCost[column] ?? 0;
  }
  const tooMany = [...load].some(([tree, hammocks]) => hammocks > (model.capacity[tree] ?? 0));
  const overdrawn = [...people].some(([group, taken]) => taken > (model.people[group] ?? 0));
  return tooMany || overdrawn || hasConflict(model, used) ? undefined : { placed: used.size, cost };
}

function hasConflict({ conflicts }: SearchModel, used: ReadonlySet<number>): boolean {
  for (const place of used) {
    const end = conflicts.starts[place + 1] ?? 0;
    for (let at = conflicts.starts[place] ?? 0; at < end; at++) {
      if (used.has(conflicts.items[at] ?? -1)) return true;
    }
  }
  return false;
}

function count(counts: Map<number, number>, key: number): void {
  counts.set(key, (counts.get(key) ?? 0) + 1);
}
