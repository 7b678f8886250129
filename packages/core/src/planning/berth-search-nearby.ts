import { chance } from "./berth-search-chance.ts";
import {
  addColumn,
  chosenColumns,
  dropColumn,
  hasRoom,
  isBetter,
  isFree,
  layoutOf,
  type Layout,
} from "./berth-search-layout.ts";
import { dearestOf, type Dearest } from "./berth-search-dearest.ts";
import { listOf } from "./berth-search-lists.ts";
import type { SearchModel } from "./berth-search-model.ts";

export interface NearbyInput {
  readonly model: SearchModel;
  /** Columns to start from; they must keep every rule. */
  readonly start: Int32Array;
  /** Columns by rising cost. */
  readonly byCost: Int32Array;
  readonly iterations: number;
  readonly seed: number;
  /** Where to stop early: nothing can be better. */
  readonly goal?: { readonly placed: number; readonly cost: number };
}

/**
 * Betters a layout step by step: force a berth in, let go of what it excludes (at most two berths, and
 * one more of its class), fill the holes by cost, and keep the change where it is not worse than a
 * threshold that sinks to zero.
 *
 * Shapes   columns in, columns of the best layout met out, in order of place
 * Holds    seeded and limited by iterations, so the same input gives the same layout; proves nothing
 * Source   layout-search
 */
export function searchNearby({ model, start, byCost, iterations, seed, goal }: NearbyInput): Int32Array {
  const layout = layoutOf(model, start);
  if (model.columns === 0 || model.asked === 0) return chosenColumns(layout);
  const { below } = chance(seed);
  const dearest = dearestOf(layout);
  let best = { placed: layout.placed, cost: layout.cost, columns: chosenColumns(layout) };
  for (let step = 0; step < iterations; step++) {
    const column = byCost[Math.min(below(model.columns), below(model.columns))] ?? 0;
    const before = { placed: layout.placed, cost: layout.cost };
    const undo = forceIn(layout, dearest, column, byCost);
    if (undo === undefined) continue;
    const worseBy = layout.cost - before.cost;
    const threshold = (before.cost / (1 + before.placed)) * (1 - step / iterations) * HEAT;
    const keep = layout.placed > before.placed || (layout.placed === before.placed && worseBy <= threshold);
    if (!keep) undo();
    else if (isBetter(layout, best)) {
      best = { placed: layout.placed, cost: layout.cost, columns: chosenColumns(layout) };
      if (goal !== undefined && !isBetter(goal, best)) break;
    }
  }
  return best.columns;
}

/** Share of the mean cost of a berth by which a step may be worse at the start. */
const HEAT = 0.2;

/** Most berths let go for one forced in, besides one of its class. */
const MOST_EJECTED = 2;

/** How many of the cheapest columns are tried when the holes nearby are filled and somebody is left. */
const REFILL_TRIES = 200;

function forceIn(
  layout: Layout,
  dearest: Dearest,
  column: number,
  byCost: Int32Array,
): (() => void) | undefined {
  const { model } = layout;
  const place = model.columnPlace[column] ?? 0;
  if (layout.columnAt[place] === column) return undefined;
  const dropped: number[] = [];
  const added: number[] = [];
  const drop = (other: number): void => {
    dropColumn(layout, other);
    dropped.push(other);
  };
  const add = (other: number): void => {
    addColumn(layout, other);
    dearest.added(other);
    added.push(other);
  };
  const undo = (): void => {
    for (const other of added) dropColumn(layout, other);
    for (const other of dropped) {
      addColumn(layout, other);
      dearest.added(other);
    }
  };
  makeRoom(layout, place, drop);
  if (dropped.length > MOST_EJECTED) {
    undo();
    return undefined;
  }
  const group = model.columnClass[column] ?? 0;
  if ((layout.left[group] ?? 0) === 0) drop(dearest.ofClass(group));
  add(column);
  refill(layout, dropped, byCost, add);
  return undo;
}

/** Lets go of all that keeps a place from being used. */
function makeRoom(layout: Layout, place: number, drop: (column: number) => void): void {
  const { model, columnAt } = layout;
  const here = columnAt[place] ?? -1;
  if (here >= 0) drop(here);
  for (const other of listOf(model.conflicts, place)) {
    const column = columnAt[other] ?? -1;
    if (column >= 0) drop(column);
  }
  for (const tree of [model.first[place] ?? 0, model.second[place] ?? 0]) {
    if (!hasRoom(layout, tree)) drop(dearestAtTree(layout, tree));
  }
}

function dearestAtTree({ model, columnAt }: Layout, tree: number): number {
  let found = -1;
  for (const place of listOf(model.atTree, tree)) {
    const column = columnAt[place] ?? -1;
    if (column < 0) continue;
    if (found < 0 || (model.columnCost[column] ?? 0) > (model.columnCost[found] ?? 0)) found = column;
  }
  return found;
}

function refill(
  layout: Layout,
  dropped: readonly number[],
  byCost: Int32Array,
  add: (column: number) => void,
): void {
  const { model } = layout;
  if (layout.placed < model.asked && dropped.length > 0) {
    const near = columnsNear(model, dropped);
    near.sort((a, b) => (model.columnCost[a] ?? 0) - (model.columnCost[b] ?? 0) || a - b);
    for (const column of near) if (isFree(layout, column)) add(column);
  }
  const tries = Math.min(REFILL_TRIES, byCost.length);
  for (let at = 0; at < tries && layout.placed < model.asked; at++) {
    const column = byCost[at] ?? 0;
    if (isFree(layout, column)) add(column);
  }
}

/** Columns of the places let go of and of all that they kept out. */
function columnsNear(model: SearchModel, dropped: readonly number[]): number[] {
  const places = new Set<number>();
  for (const column of dropped) {
    const place = model.columnPlace[column] ?? 0;
    places.add(place);
    for (const other of listOf(model.conflicts, place)) places.add(other);
    for (const other of listOf(model.atTree, model.first[place] ?? 0)) places.add(other);
    for (const other of listOf(model.atTree, model.second[place] ?? 0)) places.add(other);
  }
  return [...places].flatMap((place) => [...listOf(model.ofPlace, place)]);
}
