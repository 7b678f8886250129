import { TYPE_MM } from "../colour/tokens.ts";
import { A4, A4_WIDE } from "../card/card-size.ts";
import { quantity, word } from "../scene/names.ts";
import type { Item, Scene, SceneSize } from "../scene/scene.ts";
import { box, stroke, text } from "../scene/shapes.ts";
import type { TextItem, Words } from "../scene/text-item.ts";
import { brokenLines, wrapped } from "../scene/wrapped.ts";

/** What stands in a cell: words, a box to tick, or room to write. */
export type SheetCell = TextItem | "tick" | "blank";

export interface SheetColumn {
  readonly title: TextItem;
  /** Share of the sheet's width. */
  readonly share: number;
  readonly anchor?: "start" | "middle" | "end";
  readonly strong?: true;
}

/** One row, or a heading over the rows that follow. */
export type SheetRow = readonly SheetCell[] | { readonly heading: TextItem };

/** A paper that is one table: it runs over as many sheets as it needs, its head repeated. */
export interface SheetTable {
  /** Letters, digits and dashes; a file may be called so. */
  readonly name: string;
  readonly title: TextItem;
  /** Camp, day and whose it is, under the title. */
  readonly facts: TextItem;
  readonly wide?: true;
  readonly columns: readonly SheetColumn[];
  readonly rows: readonly SheetRow[];
  /** Least height of a row, for hands that write [mm]. */
  readonly rowMm?: number;
  /** Sentences beneath the last row. */
  readonly after: readonly TextItem[];
  /** What is written by hand beneath those, each with a line to write on. */
  readonly toFill?: readonly TextItem[];
}

const EDGE = 12;
const HEAD = 27;
const NOTE = TYPE_MM.note;
const LEADING = NOTE * 1.16;
const PAD = 1.2;

interface Column extends SheetColumn {
  readonly x: number;
  readonly width: number;
}

interface Laid {
  readonly row: SheetRow;
  readonly height: number;
}

/** The sheets of a table, A4. */
export function tableSheets(table: SheetTable, words: Words): Scene[] {
  const size = table.wide === true ? A4_WIDE : A4;
  const columns = placed(table.columns, size);
  const head = headHeight(columns, words);
  const rows = table.rows.map((row) => ({
    row,
    height: heightOf(row, columns, table.rowMm ?? 7, size, words),
  }));
  const after = afterHeight(table.after, size, words) + fillHeight(table.toFill, size);
  const pages = paged(rows, size.height - HEAD - head - EDGE - 4, after);
  return pages.map((page, index) => ({
    name: pages.length === 1 ? table.name : `${table.name}-${index + 1}`,
    size,
    title: table.title,
    desc: table.facts,
    ground: "paper",
    theme: "one-ink",
    items: [
      ...heading(table, size, words),
      ...(pages.length > 1 ? [pageNumber(index + 1, pages.length, size)] : []),
      ...columnHeads(columns, head, size, words),
      ...drawnRows(page, columns, HEAD + head, size, words),
      ...(index === pages.length - 1 ? lastItems(table, page, HEAD + head, size, words) : []),
    ],
  }));
}

function placed(columns: readonly SheetColumn[], { width }: SceneSize): Column[] {
  const all = columns.reduce((sum, { share }) => sum + share, 0);
  let x = EDGE;
  return columns.map((column) => {
    const wide = (column.share / all) * (width - 2 * EDGE);
    const made = { ...column, x, width: wide };
    x += wide;
    return made;
  });
}

function heading({ title, facts }: SheetTable, { width }: SceneSize, words: Words): Item[] {
  const room = width - 2 * EDGE;
  const named = words.measure(words.labels(title), TYPE_MM.name, 700) <= room ? TYPE_MM.name : TYPE_MM.head;
  return [
    text(title, [EDGE, 16], { size: named, weight: 700, maxWidth: room }),
    text(facts, [EDGE, 22], { size: NOTE, weight: 500, maxWidth: room - 16 }),
    stroke([EDGE, HEAD - 1.6, width - EDGE, HEAD - 1.6], { stroke: "ink", width: 0.8, cap: "butt" }),
  ];
}

function pageNumber(page: number, of: number, { width }: SceneSize): Item {
  const said = word("sheet.page", { page: quantity("count", page, 0), of: quantity("count", of, 0) });
  return text(said, [width - EDGE, 22], { size: NOTE, weight: 500, anchor: "end" });
}

function linesOf(cell: SheetCell, { width, strong }: Column, words: Words): number {
  if (typeof cell === "string") return 1;
  return brokenLines(cell, width - 2 * PAD, NOTE, strong === true ? 700 : 500, words).length;
}

function headHeight(columns: readonly Column[], words: Words): number {
  const lines = columns.map(
    ({ title, width }) => brokenLines(title, width - 2 * PAD, NOTE, 700, words).length,
  );
  return Math.max(...lines) * LEADING + 3.4;
}

function heightOf(
  row: SheetRow,
  columns: readonly Column[],
  least: number,
  { width }: SceneSize,
  words: Words,
): number {
  if ("heading" in row) {
    return (
      brokenLines(row.heading, width - 2 * EDGE, TYPE_MM.body, 700, words).length * TYPE_MM.body * 1.2 + 3.6
    );
  }
  const lines = row.map((cell, index) => {
    const column = columns[index];
    return column === undefined ? 1 : linesOf(cell, column, words);
  });
  return Math.max(least, Math.max(1, ...lines) * LEADING + 2 * PAD);
}

/** Rows by sheets: what stands under one heading stays together where a sheet has room for it. */
function paged(rows: readonly Laid[], room: number, after: number): Laid[][] {
  const pages: Laid[][] = [[]];
  let used = 0;
  rows.forEach((laid, index) => {
    const last = index === rows.length - 1 ? after : 0;
    const together = "heading" in laid.row ? blockHeight(rows, index) : laid.height;
    const needed = together > room ? laid.height + (rows[index + 1]?.height ?? 0) : together;
    if (used > 0 && used + needed + last > room) {
      pages.push([]);
      used = 0;
    }
    pages.at(-1)?.push(laid);
    used += laid.height;
  });
  return withoutWidow(pages);
}

/** A last sheet of one or two rows takes more from the one before, so that no row stands alone. */
function withoutWidow(pages: Laid[][]): Laid[][] {
  const [last, before] = [pages.at(-1) ?? [], pages.at(-2) ?? []];
  const isPlain = [...last, ...before].every(({ row }) => !("heading" in row));
  if (!isPlain || last.length >= FEWEST || before.length < 2 * FEWEST) return pages;
  const moved = before.slice(last.length - FEWEST);
  return [...pages.slice(0, -2), before.slice(0, before.length - moved.length), [...moved, ...last]];
}

/** Rows that a last sheet has at the least. */
const FEWEST = 4;

/** A heading and all rows to the next one. */
function blockHeight(rows: readonly Laid[], first: number): number {
  const next = rows.findIndex(({ row }, index) => index > first && "heading" in row);
  return rows.slice(first, next < 0 ? rows.length : next).reduce((sum, { height }) => sum + height, 0);
}

function columnHeads(columns: readonly Column[], height: number, { width }: SceneSize, words: Words): Item[] {
  const titles = columns.flatMap((column) => {
    const style = {
      size: NOTE,
      weight: 700,
      width: column.width - 2 * PAD,
      leading: LEADING,
      ...anchorOf(column),
    } as const;
    const { lines } = wrapped(column.title, [0, 0], style, words);
    const y = HEAD + height - 2 - (lines - 1) * LEADING;
    return wrapped(column.title, [anchorX(column), y], style, words).items;
  });
  const y = HEAD + height;
  return [...titles, stroke([EDGE, y, width - EDGE, y], { stroke: "ink", width: 0.6, cap: "butt" })];
}

function anchorOf({ anchor = "start" }: SheetColumn): { readonly anchor: "start" | "middle" | "end" } {
  return { anchor };
}

function anchorX({ x, width, anchor = "start" }: Column): number {
  if (anchor === "middle") return x + width / 2;
  return anchor === "end" ? x + width - PAD : x + PAD;
}

function drawnRows(
  rows: readonly Laid[],
  columns: readonly Column[],
  top: number,
  { width }: SceneSize,
  words: Words,
): Item[] {
  let y = top;
  return rows.flatMap(({ row, height }) => {
    const from = y;
    y += height;
    const rule = stroke([EDGE, y, width - EDGE, y], { stroke: "ink", width: 0.2, cap: "butt" });
    if ("heading" in row) {
      const style = {
        size: TYPE_MM.body,
        weight: 700,
        width: width - 2 * EDGE,
        leading: TYPE_MM.body * 1.2,
      } as const;
      return [...wrapped(row.heading, [EDGE + PAD, from + 5.2], style, words).items, rule];
    }
    const lines = row.map((cell, index) => {
      const column = columns[index];
      return column === undefined ? 1 : linesOf(cell, column, words);
    });
    // The tallest cell stands in the middle of its row, the others begin where it does.
    const base = from + (height - Math.max(1, ...lines) * LEADING) / 2 + NOTE * 0.9;
    const place = { top: from, height, base };
    return [...row.flatMap((cell, index) => cellItems(cell, columns[index], place, words)), rule];
  });
}

interface RowPlace {
  readonly top: number;
  readonly height: number;
  /** First base line of its words. */
  readonly base: number;
}

function cellItems(
  cell: SheetCell,
  column: Column | undefined,
  { top, height, base }: RowPlace,
  words: Words,
): readonly Item[] {
  if (column === undefined) return [];
  if (cell === "tick") {
    const side = Math.min(5, height - 1.6);
    const x = column.x + column.width / 2 - side / 2;
    const ink = { fill: "none", stroke: "ink", width: 0.4, join: "miter", class: "ns-tick" } as const;
    return [box([x, top + (height - side) / 2], side, side, ink)];
  }
  if (cell === "blank") {
    return [
      stroke([column.x, top + 1, column.x, top + height - 1], { stroke: "ink", width: 0.15, cap: "butt" }),
    ];
  }
  const weight = column.strong === true ? 700 : 500;
  const style = {
    size: NOTE,
    weight,
    width: column.width - 2 * PAD,
    leading: LEADING,
    ...anchorOf(column),
  } as const;
  return wrapped(cell, [anchorX(column), base], style, words).items;
}

function afterHeight(after: readonly TextItem[], { width }: SceneSize, words: Words): number {
  const lines = after.map((item) => brokenLines(item, width - 2 * EDGE, NOTE, 500, words).length + 0.4);
  return lines.reduce((sum, count) => sum + count * LEADING, 4);
}

function lastItems(
  { after, toFill = [] }: SheetTable,
  page: readonly Laid[],
  top: number,
  size: SceneSize,
  words: Words,
): Item[] {
  let y = page.reduce((sum, { height }) => sum + height, top) + 6;
  const said = after.flatMap((item) => {
    const style = { size: NOTE, weight: 500, width: size.width - 2 * EDGE, leading: LEADING } as const;
    const set = wrapped(item, [EDGE, y], style, words);
    y = set.bottom + LEADING * 1.4;
    return set.items;
  });
  return [...said, ...toFill.flatMap((item, index) => fillLine(item, index, y, size, words))];
}

/** Lines to write on: so many beside one another, and so far apart for hands [mm]. */
const FILL_ROW = 8;
const FILL_GAP = 8;

function fillsAcross({ width }: SceneSize): number {
  return width > A4.width ? 3 : 2;
}

function fillHeight(toFill: readonly TextItem[] = [], size: SceneSize): number {
  return toFill.length === 0 ? 0 : Math.ceil(toFill.length / fillsAcross(size)) * FILL_ROW + 2;
}

function fillLine(item: TextItem, index: number, top: number, size: SceneSize, words: Words): Item[] {
  const across = fillsAcross(size);
  const width = (size.width - 2 * EDGE - (across - 1) * FILL_GAP) / across;
  const x = EDGE + (index % across) * (width + FILL_GAP);
  const y = top + 4 + Math.floor(index / across) * FILL_ROW;
  const said = words.measure(words.labels(item), NOTE, 700);
  return [
    text(item, [x, y], { size: NOTE, weight: 700, maxWidth: width }),
    stroke([x + said + 2, y + 0.8, x + width, y + 0.8], { stroke: "ink", width: 0.2, cap: "butt" }),
  ];
}
