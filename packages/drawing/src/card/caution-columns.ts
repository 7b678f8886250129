import { DEFER_KEYS, type CautionKey } from "@nightspan/core";
import { TYPE_MM } from "../colour/tokens.ts";
import { word } from "../scene/names.ts";
import type { Item, XY } from "../scene/scene.ts";
import type { TextItem, Words } from "../scene/text-item.ts";
import { wrapped } from "../scene/wrapped.ts";
import { CARD, EDGE } from "./card-size.ts";
import { listed, sentences } from "./card-words.ts";

/** Two columns within the edges of an upright card [mm]. */
export const COLUMN = (CARD.width - 2 * EDGE - 4) / 2;
export const COLUMN_LEFT = [EDGE, EDGE + COLUMN + 4] as const;

const LEADING = TYPE_MM.note * 1.13;

/** Every caution, and whose word goes first. */
export function cautionTexts(): TextItem[] {
  return [
    ...CAUTION_GROUPS.map((keys) => sentences(keys.map((key) => word(`caution.${key}`)))),
    word("defer.all", { who: listed(DEFER_KEYS.map((key) => word(`defer.${key}`))) }),
  ];
}

/** The cautions by what they are about, so that the short ones share a line. */
const CAUTION_GROUPS: readonly (readonly CautionKey[])[] = [
  ["look-up", "dead-or-doubtful-tree", "never-on-vehicle-or-masonry"],
  ["lowest-hang", "soft-clear-ground", "not-over-water"],
  ["no-stacking-swinging-standing", "check-every-entry", "lowest-rated-part"],
  ["children-supervised"],
  ["thunder-leave-trees", "stop-wind-and-cold", "flame-clear-of-synthetics"],
  ["static-numbers"],
];

export interface CautionColumns {
  readonly items: readonly Item[];
  /** Lines of the longer column. */
  readonly lines: number;
  /** Height that the columns ask for, from the rule above them to the last base line [mm]. */
  readonly height: number;
}

/** Texts in two columns, each text whole in one of them, from a rule at `top` down; drawn closer rather than past `bottom`. */
export function cautionColumns(
  texts: readonly TextItem[],
  top: number,
  bottom: number,
  words: Words,
): CautionColumns {
  const blocks = texts.map(
    (item) =>
      wrapped(item, [0, 0], { size: TYPE_MM.note, weight: 500, leading: LEADING, width: COLUMN }, words)
        .items,
  );
  const first = evenSplit(blocks.map(({ length }) => length));
  const columns = [blocks.slice(0, first).flat(), blocks.slice(first).flat()] as const;
  const lines = Math.max(...columns.map(({ length }) => length));
  const leading = Math.min(LEADING, (bottom - top - 4) / (lines - 1));
  const items = columns.flatMap((column, index) =>
    column.flatMap((item, row): Item[] => {
      if (item.kind !== "text") return [];
      const at: XY = [COLUMN_LEFT[index === 0 ? 0 : 1], top + 4 + row * leading];
      return [{ ...item, class: "ns-caution", at }];
    }),
  );
  return { items, lines, height: 4 + (lines - 1) * LEADING };
}

/** How many blocks go into the first of two columns, each block whole, so that the longer column is shortest. */
function evenSplit(lengths: readonly number[]): number {
  const all = lengths.reduce((sum, length) => sum + length, 0);
  let best = { count: 0, longer: all };
  let first = 0;
  lengths.forEach((length, index) => {
    first += length;
    const longer = Math.max(first, all - first);
    if (longer < best.longer) best = { count: index + 1, longer };
  });
  return best.count;
}
