import type { KitItem } from "@nightspan/core";
import { TYPE } from "../colour/tokens.ts";
import { name, quantity, word } from "../scene/names.ts";
import type { Item, Scene, XY } from "../scene/scene.ts";
import { group, hitCircle, stroke, text } from "../scene/shapes.ts";
import type { StoreOptions } from "./cut-list-scene.ts";
import { kitSign, type KitKind } from "./kit-sign.ts";

const EDGE = 16;
const CELL = 119;
const SHELF = 96;
const HEAD = 26;

/** Kinds in the order of the shelves; what is small lies on one. */
const SHELVES = ["hammock", "suspension", "tarp", "under", "over", "cord", "other"] as const;
type Shelf = (typeof SHELVES)[number];

function shelfOf(kind: KitKind): Shelf {
  return kind === "peg" || kind === "connector" || kind === "light" ? "other" : kind;
}

/** The store on its shelves: a sign a line with its count; quarantined lines barred, retired ones dashed. */
export function storeShelfScene(kit: readonly KitItem[], { widthPx }: Pick<StoreOptions, "widthPx">): Scene {
  const columns = widthPx >= TWO_SHELVES_PX ? 2 : 1;
  const width = (widthPx - 2 * EDGE - (columns - 1) * GAP) / columns;
  const blocks = SHELVES.flatMap((shelf) => {
    const own = kit.filter(({ kind }) => shelfOf(kind) === shelf);
    return own.length === 0 ? [] : [{ shelf, own }];
  });
  const items: Item[] = [];
  let y = 8;
  for (let first = 0; first < blocks.length; first += columns) {
    const drawn = blocks
      .slice(first, first + columns)
      .map(({ shelf, own }, column) => boards(shelf, own, [EDGE + column * (width + GAP), y], width));
    items.push(...drawn.flatMap((block) => block.items));
    y += Math.max(...drawn.map(({ height }) => height)) + 4;
  }
  if (kit.length === 0) items.push(text(word("store.empty"), [EDGE, 28], { size: TYPE.body }));
  return {
    name: "store-shelf",
    size: { width: widthPx, height: Math.max(48, Math.ceil(y)), unit: "px" },
    title: word("store.title"),
    desc: word("store.desc", { count: quantity("count", kit.length, 0) }),
    ground: "paper",
    items,
  };
}

/** Wider drawings have two shelves side by side [px]. */
const TWO_SHELVES_PX = 700;
const GAP = 28;

/** One kind on as many boards as it needs. */
function boards(shelf: Shelf, own: readonly KitItem[], [left, top]: XY, width: number) {
  const perRow = Math.max(1, Math.floor(width / CELL));
  const rows = Math.ceil(own.length / perRow);
  const drawn = Array.from({ length: rows }, (_, row) => {
    const y = top + HEAD + row * SHELF + 42;
    const board = stroke([left, y, left + width, y], { stroke: "ink", width: 3, cap: "butt" });
    const cells = own.slice(row * perRow, (row + 1) * perRow);
    return [board, ...cells.flatMap((item, column) => cell(item, [left + (column + 0.5) * CELL, y]))];
  });
  const head = text(word(`store.kind.${shelf}`), [left, top + 17], { size: TYPE.note, weight: 700 });
  return { items: [head, ...drawn.flat()], height: HEAD + rows * SHELF };
}

function cell(item: KitItem, [x, board]: XY): Item[] {
  const { id, kind, count, state } = item;
  const bar =
    state === "quarantined"
      ? [stroke([x - 26, board - 4, x + 26, board - 32], { stroke: "no", width: 3, class: "ns-barred" })]
      : [];
  return [
    group([kitSign(kind, [x, board - 2], state === "retired"), ...bar], { class: `ns-line ns-${state}` }),
    text(name(id), [x, board + 20], { size: TYPE.note, weight: 600, anchor: "middle", maxWidth: CELL - 8 }),
    text(word("store.count", { count: quantity("count", count, 0) }), [x, board + 39], {
      size: TYPE.note,
      anchor: "middle",
    }),
    hitCircle([x, board - 16], 30, `kit/${id}`),
  ];
}
