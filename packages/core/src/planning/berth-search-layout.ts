import type { SearchModel } from "./berth-search-model.ts";
import { listOf } from "./berth-search-lists.ts";

/** A layout in the making: which column each place carries, kept with what it excludes. */
export interface Layout {
  readonly model: SearchModel;
  /** Column chosen at each place, −1 for none. */
  readonly columnAt: Int32Array;
  /** How many chosen places conflict with each place. */
  readonly against: Int32Array;
  /** Hammocks on each tree. */
  readonly load: Int32Array;
  /** People of each class without a berth. */
  readonly left: Int32Array;
  placed: number;
  cost: number;
}

export function emptyLayout(model: SearchModel): Layout {
  return {
    model,
    columnAt: new Int32Array(model.places).fill(-1),
    against: new Int32Array(model.places),
    load: new Int32Array(model.trees),
    left: model.people.slice(),
    placed: 0,
    cost: 0,
  };
}

/** Whether a column can be added as things stand. */
export function isFree(layout: Layout, column: number): boolean {
  const { model } = layout;
  const place = model.columnPlace[column] ?? 0;
  return (
    layout.columnAt[place] === -1 &&
    layout.against[place] === 0 &&
    (layout.left[model.columnClass[column] ?? 0] ?? 0) > 0 &&
    hasRoom(layout, model.first[place] ?? 0) &&
    hasRoom(layout, model.second[place] ?? 0)
  );
}

export function hasRoom({ load, model }: Layout, tree: number): boolean {
  return (load[tree] ?? 0) < (model.capacity[tree] ?? 0);
}

export function addColumn(layout: Layout, column: number): void {
  change(layout, column, 1);
  layout.columnAt[layout.model.columnPlace[column] ?? 0] = column;
}

export function dropColumn(layout: Layout, column: number): void {
  change(layout, column, -1);
  layout.columnAt[layout.model.columnPlace[column] ?? 0] = -1;
}

/** Chosen columns in order of place. */
export function chosenColumns(layout: Layout): Int32Array {
  return layout.columnAt.filter((column) => column >= 0);
}

export function layoutOf(model: SearchModel, columns: Iterable<number>): Layout {
  const layout = emptyLayout(model);
  for (const column of columns) addColumn(layout, column);
  return layout;
}

/** Whether one outcome is better than another: more placed, or as many for less. */
export function isBetter(
  a: { readonly placed: number; readonly cost: number },
  b: { readonly placed: number; readonly cost: number },
): boolean {
  return a.placed > b.placed || (a.placed === b.placed && a.cost < b.cost);
}

function change(layout: Layout, column: number, by: 1 | -1): void {
  const { model, against, load, left } = layout;
  const place = model.columnPlace[column] ?? 0;
  const first = model.first[place] ?? 0;
  const second = model.second[place] ?? 0;
  const group = model.columnClass[column] ?? 0;
  for (const other of listOf(model.conflicts, place)) against[other] = (against[other] ?? 0) + by;
  load[first] = (load[first] ?? 0) + by;
  load[second] = (load[second] ?? 0) + by;
  left[group] = (left[group] ?? 0) - by;
  layout.placed += by;
  layout.cost += by * (model.columnCost[column] ?? 0);
}
