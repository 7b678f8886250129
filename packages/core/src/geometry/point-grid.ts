import { columnOf, gridFrame, rowOf } from "./grid-frame.ts";

export interface PointGrid {
  /** Calls back with each point inside or on the edge of the rectangle, in no order that means anything. */
  readonly each: (
    minX: number,
    minY: number,
    maxX: number,
    maxY: number,
    visit: (index: number) => void,
  ) => void;
}

/**
 * Points sorted into square cells, so that those in a small rectangle are found without looking at all.
 *
 * Shapes   xs, ys: one entry a point
 * Holds    finite coordinates; any number of points, also at one spot
 */
export function pointGrid(xs: Float64Array, ys: Float64Array, wishedCell: number): PointGrid {
  const frame = gridFrame(extentOf(xs, ys), wishedCell, xs.length);
  const cells = new Int32Array(xs.length);
  const starts = new Int32Array(frame.across * frame.up + 1);
  for (let i = 0; i < xs.length; i++) {
    const cell = rowOf(frame, ys[i] ?? 0) * frame.across + columnOf(frame, xs[i] ?? 0);
    cells[i] = cell;
    starts[cell + 1] = (starts[cell + 1] ?? 0) + 1;
  }
  for (let cell = 1; cell < starts.length; cell++)
    starts[cell] = (starts[cell] ?? 0) + (starts[cell - 1] ?? 0);
  const items = sortedInto(cells, starts);

  function each(
    minX: number,
    minY: number,
    maxX: number,
    maxY: number,
    visit: (index: number) => void,
  ): void {
    const first = columnOf(frame, minX);
    const last = columnOf(frame, maxX);
    const top = rowOf(frame, maxY);
    for (let row = rowOf(frame, minY); row <= top; row++) {
      const end = starts[row * frame.across + last + 1] ?? 0;
      for (let at = starts[row * frame.across + first] ?? 0; at < end; at++) {
        const index = items[at] ?? 0;
        const x = xs[index] ?? 0;
        const y = ys[index] ?? 0;
        if (x >= minX && x <= maxX && y >= minY && y <= maxY) visit(index);
      }
    }
  }
  return { each };
}

function sortedInto(cells: Int32Array, starts: Int32Array): Int32Array {
  const next = starts.slice();
  const items = new Int32Array(cells.length);
  for (let i = 0; i < cells.length; i++) {
    const cell = cells[i] ?? 0;
    const at = next[cell] ?? 0;
    items[at] = i;
    next[cell] = at + 1;
  }
  return items;
}

function extentOf(xs: Float64Array, ys: Float64Array) {
  let minX = Infinity;
  let minY = Infinity;
  let maxX = -Infinity;
  let maxY = -Infinity;
  for (let i = 0; i < xs.length; i++) {
    minX = Math.min(minX, xs[i] ?? 0);
    maxX = Math.max(maxX, xs[i] ?? 0);
    minY = Math.min(minY, ys[i] ?? 0);
    maxY = Math.max(maxY, ys[i] ?? 0);
  }
  return { minX, minY, maxX, maxY };
}
