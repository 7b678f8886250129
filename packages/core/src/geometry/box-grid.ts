import { columnOf, gridFrame, rowOf, type GridFrame } from "./grid-frame.ts";
import type { Box } from "./point.ts";

export interface BoxGrid {
  /** Calls back once with each box that meets the given one, edges included, in no order that means anything. */
  readonly each: (box: Box, visit: (index: number) => void) => void;
}

/**
 * Boxes sorted into square cells about as large as the mean box.
 *
 * A box that lies in several cells is told once: in the first cell that it shares with the question.
 *
 * Holds    finite corners, min ≤ max
 */
export function boxGrid(boxes: readonly Box[]): BoxGrid {
  const frame = gridFrame(extentOf(boxes), meanSize(boxes), boxes.length);
  const { starts, items } = filled(boxes, frame);

  function each(box: Box, visit: (index: number) => void): void {
    const left = columnOf(frame, box.minX);
    const right = columnOf(frame, box.maxX);
    const bottom = rowOf(frame, box.minY);
    const top = rowOf(frame, box.maxY);
    for (let row = bottom; row <= top; row++) {
      for (let column = left; column <= right; column++) {
        const cell = row * frame.across + column;
        const end = starts[cell + 1] ?? 0;
        for (let at = starts[cell] ?? 0; at < end; at++) {
          const index = items[at] ?? 0;
          const other = boxes[index];
          if (other === undefined || !meet(box, other)) continue;
          const home =
            Math.max(left, columnOf(frame, other.minX)) === column &&
            Math.max(bottom, rowOf(frame, other.minY)) === row;
          if (home) visit(index);
        }
      }
    }
  }
  return { each };
}

function filled(boxes: readonly Box[], frame: GridFrame): { starts: Int32Array; items: Int32Array } {
  const starts = new Int32Array(frame.across * frame.up + 1);
  eachCell(boxes, frame, (cell) => (starts[cell + 1] = (starts[cell + 1] ?? 0) + 1));
  for (let cell = 1; cell < starts.length; cell++)
    starts[cell] = (starts[cell] ?? 0) + (starts[cell - 1] ?? 0);
  const next = starts.slice();
  const items = new Int32Array(starts[starts.length - 1] ?? 0);
  eachCell(boxes, frame, (cell, index) => {
    const at = next[cell] ?? 0;
    items[at] = index;
    next[cell] = at + 1;
  });
  return { starts, items };
}

function eachCell(
  boxes: readonly Box[],
  frame: GridFrame,
  visit: (cell: number, index: number) => void,
): void {
  for (let index = 0; index < boxes.length; index++) {
    const box = boxes[index];
    if (box === undefined) continue;
    const right = columnOf(frame, box.maxX);
    const top = rowOf(frame, box.maxY);
    for (let row = rowOf(frame, box.minY); row <= top; row++) {
      for (let column = columnOf(frame, box.minX); column <= right; column++) {
        visit(row * frame.across + column, index);
      }
    }
  }
}

function meet(a: Box, b: Box): boolean {
  return a.minX <= b.maxX && b.minX <= a.maxX && a.minY <= b.maxY && b.minY <= a.maxY;
}

function meanSize(boxes: readonly Box[]): number {
  let sum = 0;
  for (const box of boxes) sum += box.maxX - box.minX + (box.maxY - box.minY);
  return sum / (2 * Math.max(1, boxes.length));
}

function extentOf(boxes: readonly Box[]): Box {
  let minX = Infinity;
  let minY = Infinity;
  let maxX = -Infinity;
  let maxY = -Infinity;
  for (const box of boxes) {
    minX = Math.min(minX, box.minX);
    minY = Math.min(minY, box.minY);
    maxX = Math.max(maxX, box.maxX);
    maxY = Math.max(maxY, box.maxY);
  }
  return { minX, minY, maxX, maxY };
}
