/** Where the square cells of a grid lie. Cells are numbered row by row. */
export interface GridFrame {
  readonly minX: number;
  readonly minY: number;
  readonly cell: number;
  readonly across: number;
  readonly up: number;
}

/** A frame over an extent with cells of about the wished size, but never more than a few cells an item. */
export function gridFrame(
  extent: { readonly minX: number; readonly minY: number; readonly maxX: number; readonly maxY: number },
  wishedCell: number,
  items: number,
): GridFrame {
  const width = Math.max(0, extent.maxX - extent.minX);
  const height = Math.max(0, extent.maxY - extent.minY);
  const most = CELLS_AN_ITEM * items + 1;
  const cell = Math.max(
    wishedCell,
    Math.sqrt((width * height) / most),
    Math.max(width, height) / most,
    LEAST_CELL,
  );
  return {
    minX: items > 0 ? extent.minX : 0,
    minY: items > 0 ? extent.minY : 0,
    cell,
    across: Math.floor(width / cell) + 1,
    up: Math.floor(height / cell) + 1,
  };
}

/** Column of a coordinate, kept inside the frame. */
export function columnOf(frame: GridFrame, x: number): number {
  return within((x - frame.minX) / frame.cell, frame.across);
}

/** Row of a coordinate, kept inside the frame. */
export function rowOf(frame: GridFrame, y: number): number {
  return within((y - frame.minY) / frame.cell, frame.up);
}

function within(at: number, count: number): number {
  return at <= 0 ? 0 : at >= count ? count - 1 : Math.floor(at);
}

const CELLS_AN_ITEM = 4;
const LEAST_CELL = 1e-6;
