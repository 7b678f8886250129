import type { Layout } from "./berth-search-layout.ts";

/** The dearest chosen column of each class, kept ready while a layout changes. */
export interface Dearest {
  /** To be told of each column added to the layout. */
  readonly added: (column: number) => void;
  /** Dearest chosen column of a class, lowest number first; −1 for none. */
  readonly ofClass: (group: number) => number;
}

/** One heap a class; columns that were dropped stay in it until they come to the top. */
export function dearestOf(layout: Layout): Dearest {
  const { model, columnAt } = layout;
  const heaps: number[][] = Array.from(model.people, () => []);
  const inHeap = new Uint8Array(model.columns);
  const isAbove = (a: number, b: number): boolean => {
    const over = (model.columnCost[a] ?? 0) - (model.columnCost[b] ?? 0);
    return over > 0 || (over === 0 && a < b);
  };
  const added = (column: number): void => {
    if (inHeap[column] === 1) return;
    inHeap[column] = 1;
    push(heaps[model.columnClass[column] ?? 0] ?? [], column, isAbove);
  };
  const ofClass = (group: number): number => {
    const heap = heaps[group] ?? [];
    for (;;) {
      const top = heap[0];
      if (top === undefined) return -1;
      if (columnAt[model.columnPlace[top] ?? 0] === top) return top;
      inHeap[top] = 0;
      pop(heap, isAbove);
    }
  };
  for (const column of columnAt) if (column >= 0) added(column);
  return { added, ofClass };
}

type IsAbove = (a: number, b: number) => boolean;

function push(heap: number[], item: number, isAbove: IsAbove): void {
  let at = heap.length;
  heap.push(item);
  while (at > 0) {
    const parent = (at - 1) >> 1;
    const other = heap[parent] ?? item;
    if (!isAbove(item, other)) break;
    heap[at] = other;
    at = parent;
  }
  heap[at] = item;
}

function pop(heap: number[], isAbove: IsAbove): void {
  const item = heap.pop();
  if (item === undefined || heap.length === 0) return;
  let at = 0;
  for (;;) {
    let child = 2 * at + 1;
    if (child >= heap.length) break;
    if (child + 1 < heap.length && isAbove(heap[child + 1] ?? 0, heap[child] ?? 0)) child++;
    const other = heap[child] ?? item;
    if (!isAbove(other, item)) break;
    heap[at] = other;
    at = child;
  }
  heap[at] = item;
}
