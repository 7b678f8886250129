import { addColumn, chosenColumns, emptyLayout, isFree } from "./berth-search-layout.ts";
import type { SearchModel } from "./berth-search-model.ts";

/** Columns by rising cost, then place, then class. */
export function columnsByCost({ columns, columnCost }: SearchModel): Int32Array {
  const order = Int32Array.from({ length: columns }, (_, column) => column);
  return order.sort((a, b) => (columnCost[a] ?? 0) - (columnCost[b] ?? 0) || a - b);
}

/** Takes columns in the order given wherever they are still free. */
export function takeInOrder(model: SearchModel, order: Int32Array): Int32Array {
  const layout = emptyLayout(model);
  for (const column of order) {
    if (layout.placed === model.asked) break;
    if (isFree(layout, column)) addColumn(layout, column);
  }
  return chosenColumns(layout);
}
