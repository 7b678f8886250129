import type { Limit } from "@nightspan/core";
import { levelWay, limitText, markHeightM, markText } from "../berth/berth-words.ts";
import { TYPE_MM } from "../colour/tokens.ts";
import { name, quantity, word } from "../scene/names.ts";
import type { Item, Scene, TextRun } from "../scene/scene.ts";
import { line, text } from "../scene/shapes.ts";
import type { TextItem, Words } from "../scene/text-item.ts";
import { wrapped } from "../scene/wrapped.ts";
import { CARD, EDGE, HOLE, RULE } from "./card-size.ts";
import { cautionColumns, cautionTexts } from "./caution-columns.ts";
import { ruler } from "./ruler.ts";
import type { WordKey } from "../words/english.ts";

/** One line of the table: so many steps, and where both straps go, or what stands in the way. */
export interface PocketLine {
  readonly steps: number;
  readonly hung?: { readonly head: PocketStrap; readonly foot: PocketStrap };
  readonly binds?: Limit;
}

interface PocketStrap {
  /** Above level ground [m]. */
  readonly strapHeightM: number;
  /** Bark to hammock [m]. */
  readonly strapLengthM: number;
}

export interface PocketTable {
  readonly rows: readonly PocketLine[];
  /** Who steps and hangs. */
  readonly name: string;
  /** Whose body the marks are on [m]. */
  readonly setterStatureM: number;
  readonly stepM: number;
}

const LEFT = EDGE;
const RIGHT = CARD.width - EDGE;
const WIDTH = RIGHT - LEFT;
/** Base lines of the columns: steps, head, foot and bark. */
const X = { steps: LEFT + 10, head: LEFT + 13, foot: LEFT + 70, bark: RIGHT } as const;
const TABLE_TOP = 29;
/** Room of a column's heading, in two lines at most. */
const HEAD_WIDTH = 28;
/** Kept below the cautions for the ruler. */
const SCALE = 5.4;
const TALLEST = 9;
/** The most rows that stay legible; half steps go first where there would be more. */
const MOST_ROWS = 10;

/** A table to carry in a pocket, A6: steps of one's own from tree to tree, and where both straps go. No map, no phone. */
export function pocketTableScene(table: PocketTable, words: Words): Scene {
  const cautions = cautionColumns(cautionTexts(), 0, Infinity, words);
  const lowest = CARD.height - EDGE - SCALE;
  const bottom = lowest - cautions.height;
  const below = useText(bottom, words);
  const set = cautionColumns(cautionTexts(), bottom, lowest, words);
  const oneWay = table.rows.every(({ hung }) => hung === undefined || levelWay(overOf(hung)) !== "lower");
  return {
    name: "pocket-table",
    size: CARD,
    title: word("pocket.title", { name: name(table.name) }),
    desc: word("pocket.desc"),
    ground: "paper",
    theme: "one-ink",
    items: [
      ...header(table),
      ...tableHead(oneWay, words),
      ...tableRows(table, below.top, oneWay, words),
      ...below.items,
      rule(bottom, RULE.thin),
      ...set.items,
      ...scaleCheck(),
    ],
  };
}

/** Along the lower edge, where a finger covers nothing else. */
function scaleCheck(): Item[] {
  const y = CARD.height - EDGE - 3.6;
  return [
    ...ruler(LEFT, y, 5),
    text(word("pocket.scale"), [LEFT + 52, y + 3.2], { size: TYPE_MM.note, weight: 500 }),
  ];
}

function rule(y: number, width: number): Item {
  return line(
    [
      [LEFT, y],
      [RIGHT, y],
    ],
    { stroke: "ink", width, cap: "butt" },
  );
}

function header({ name: written, stepM }: PocketTable): Item[] {
  const step = quantity("length", stepM, 2);
  return [
    text(word("pocket.name"), [LEFT, EDGE + 6], { size: TYPE_MM.name, weight: 700, maxWidth: WIDTH - HOLE }),
    text(word("pocket.for", { name: name(written), step }), [LEFT, EDGE + 12.4], {
      size: TYPE_MM.body,
      weight: 500,
      maxWidth: WIDTH - HOLE,
    }),
  ];
}

function tableHead(oneWay: boolean, words: Words): Item[] {
  const head = (key: WordKey, x: number, anchor: "start" | "end"): readonly Item[] => {
    const style = {
      size: TYPE_MM.note,
      weight: 600,
      anchor,
      width: HEAD_WIDTH,
      leading: TYPE_MM.note * 1.08,
    } as const;
    const { bottom } = wrapped(word(key), [x, 0], style, words);
    return wrapped(word(key), [x, TABLE_TOP - 1.8 - bottom], style, words).items;
  };
  return [
    ...head("pocket.steps", X.steps, "end"),
    ...head("pocket.head", X.head, "start"),
    ...head(oneWay ? "pocket.foot-higher" : "pocket.foot", X.foot, "end"),
    ...head("pocket.bark", X.bark, "end"),
    rule(TABLE_TOP, RULE.thick),
  ];
}

function tableRows(table: PocketTable, bottom: number, oneWay: boolean, words: Words): Item[] {
  const rows = shown(table.rows);
  const height = Math.min(TALLEST, (bottom - TABLE_TOP) / Math.max(1, rows.length));
  return rows.flatMap((row, index) => {
    const base = TABLE_TOP + (index + 0.5) * height + TYPE_MM.lead * 0.34;
    const cells =
      row.hung === undefined ? [refused(row, base)] : hungCells(row.hung, base, table, { ...words, oneWay });
    return [
      text(quantity("steps", row.steps, 1), [X.steps, base], {
        size: TYPE_MM.lead,
        weight: 700,
        anchor: "end",
      }),
      ...cells,
      rule(TABLE_TOP + (index + 1) * height, (index + 1) % 3 === 0 ? RULE.thick : RULE.thin),
    ];
  });
}

function shown(rows: readonly PocketLine[]): readonly PocketLine[] {
  return rows.length <= MOST_ROWS ? rows : rows.filter(({ steps }) => Number.isInteger(steps));
}

function refused({ binds }: PocketLine, base: number): Item {
  const said: TextItem =
    binds === undefined ? word("verdict.do-not-hang") : word("pocket.not", { limit: limitText(binds) });
  return text(said, [X.head, base], { size: TYPE_MM.body, weight: 500, maxWidth: RIGHT - X.head });
}

type Hung = NonNullable<PocketLine["hung"]>;

/** The foot strap over the head strap [m]. */
function overOf({ head, foot }: Hung): number {
  return foot.strapHeightM - head.strapHeightM;
}

/** Where the head of the column says that the foot goes higher, the figure is enough. */
function levelCell(hung: Hung, oneWay: boolean): TextItem {
  const over = overOf(hung);
  const way = levelWay(over);
  const by = quantity("short-length", markHeightM(Math.abs(over)), 0);
  if (way === "same") return word("level-same");
  return oneWay ? by : word(`level-${way}`, { by });
}

function hungCells(
  hung: Hung,
  base: number,
  { setterStatureM }: PocketTable,
  words: Words & { readonly oneWay: boolean },
): Item[] {
  const { head, foot } = hung;
  const level = levelCell(hung, words.oneWay);
  const body: TextRun = {
    item: { bodyMarkM: head.strapHeightM, statureM: setterStatureM },
    size: TYPE_MM.note,
    weight: 500,
  };
  const runs = (size: number): readonly TextRun[] => [
    { item: markText(head.strapHeightM), size, weight: 700 },
    { item: { said: "\u00a0 " }, size: TYPE_MM.note, weight: 500 },
    body,
  ];
  const wide = (all: readonly TextRun[]): number =>
    all.reduce((sum, { item, size, weight }) => sum + words.measure(words.labels(item), size, weight), 0);
  const cell = (item: TextItem, x: number, weight: 500 | 700): Item =>
    text(item, [x, base], { size: TYPE_MM.note, weight, anchor: "end" });
  const room = X.foot - words.measure(words.labels(level), TYPE_MM.note, 700) - 1.5 - X.head;
  const large = runs(TYPE_MM.lead);
  return [
    {
      kind: "text",
      at: [X.head, base],
      anchor: "start",
      fill: "ink",
      runs: wide(large) <= room ? large : runs(TYPE_MM.body),
      maxWidth: room,
    },
    cell(level, X.foot, 700),
    cell(barkText(head.strapLengthM, foot.strapLengthM), X.bark, 500),
  ];
}

/** What is let out on either side: one figure where both are the same. */
function barkText(headM: number, footM: number): TextItem {
  const [first, second] = [markHeightM(headM), markHeightM(footM)];
  const last = quantity("short-length", second, 0);
  if (first === second) return last;
  return word("card.two-values", { first: quantity("short-length", first, 0, "number"), second: last });
}

interface Below {
  readonly items: readonly Item[];
  /** Where the table must end. */
  readonly top: number;
}

/** How it is used, between the table and the cautions. */
function useText(bottom: number, words: Words): Below {
  const style = { size: TYPE_MM.note, weight: 500, width: WIDTH, leading: TYPE_MM.note * 1.16 } as const;
  const all = [word("pocket.use"), word("pocket.level")];
  const lines = all.reduce((sum, item) => sum + wrapped(item, [0, 0], style, words).lines, 0);
  const top = bottom - lines * style.leading - 4;
  let y = top + 4;
  const items = all.flatMap((item) => {
    const set = wrapped(item, [LEFT, y], style, words);
    y = set.bottom + style.leading;
    return set.items;
  });
  return { items, top };
}
