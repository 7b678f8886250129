import { dealPlaces } from "./berth-search-deal.ts";
import { listOf, listsOf } from "./berth-search-lists.ts";
import type { SearchModel } from "./berth-search-model.ts";
import { searchParts } from "./berth-search-parts.ts";
import { FREE, TAKEN } from "./berth-search-program.ts";

/**
 * Settles part by part what is left once most columns are fixed.
 *
 * Returns the columns of the cheapest layout that has all those taken, none of those left out, and
 * `target` berths in all; "none" where there is no such layout; nothing where the rest is still too
 * entangled, or cannot be dealt out to its classes.
 *
 * Source   layout-search
 */
export function settleResidual(
  model: SearchModel,
  fixed: Int8Array,
  target: number,
): Int32Array | "none" | undefined {
  const taken = columnsThat(fixed, TAKEN);
  const rest = residualOf(model, fixed, taken);
  if (rest === undefined) return "none";
  // Only then is placing the most the same as reaching the target.
  if (rest.model.people.length > 1 && rest.model.asked !== target - taken.length) return undefined;
  const asked = target - taken.length;
  const people = rest.model.people.length > 1 ? rest.model.people : Int32Array.of(asked);
  const parts = searchParts({ ...rest.model, people, asked }, STATES_A_PLACE);
  if (parts === undefined) return undefined;
  if (parts.placed < asked) return "none";
  const dealt = dealPlaces({ ...rest.model, people, asked }, parts.places);
  return dealt && Int32Array.from([...taken, ...dealt.map((column) => rest.columns[column] ?? 0)]).sort();
}

const STATES_A_PLACE = 300;

/** The model of the free columns, where the taken ones have used up their share; nothing where they clash. */
function residualOf(
  model: SearchModel,
  fixed: Int8Array,
  taken: readonly number[],
): { readonly model: SearchModel; readonly columns: Int32Array } | undefined {
  const capacity = model.capacity.slice();
  const people = model.people.slice();
  const closed = new Uint8Array(model.places);
  for (const column of taken) {
    const place = model.columnPlace[column] ?? 0;
    if (closed[place] === 1) return undefined;
    closed[place] = 1;
    for (const other of listOf(model.conflicts, place)) closed[other] = 1;
    take(capacity, model.first[place] ?? 0);
    take(capacity, model.second[place] ?? 0);
    take(people, model.columnClass[column] ?? 0);
  }
  if (capacity.some((left) => left < 0) || people.some((left) => left < 0)) return undefined;
  const columns = Int32Array.from(columnsThat(fixed, FREE)).filter((column) => {
    const place = model.columnPlace[column] ?? 0;
    const room = Math.min(capacity[model.first[place] ?? 0] ?? 0, capacity[model.second[place] ?? 0] ?? 0);
    return closed[place] === 0 && room > 0 && (people[model.columnClass[column] ?? 0] ?? 0) > 0;
  });
  const columnPlace = columns.map((column) => model.columnPlace[column] ?? 0);
  const rest: SearchModel = {
    ...model,
    capacity,
    people,
    columns: columns.length,
    columnPlace,
    columnClass: columns.map((column) => model.columnClass[column] ?? 0),
    columnCost: Float64Array.from(columns, (column) => model.columnCost[column] ?? 0),
    ofPlace: listsOf(model.places, (tell) => columnPlace.forEach((place, column) => tell(place, column))),
    asked: people.reduce((sum, count) => sum + count, 0),
  };
  return { model: rest, columns };
}

function take(left: Int32Array, at: number): void {
  left[at] = (left[at] ?? 0) - 1;
}

function columnsThat(fixed: Int8Array, state: number): number[] {
  const columns: number[] = [];
  fixed.forEach((known, column) => {
    if (known === state) columns.push(column);
  });
  return columns;
}
