import { TYPE } from "../colour/tokens.ts";
import { word } from "../scene/names.ts";
import type { Item, XY } from "../scene/scene.ts";
import { circle, group, line, path, text } from "../scene/shapes.ts";
import type { Words } from "../scene/text-item.ts";
import type { WordKey } from "../words/english.ts";
import { pinch } from "./bottleneck-marks.ts";
import { GROUP_LINE } from "./group-reach.ts";
import { spareSpan } from "./berth-symbols.ts";
import { keepOutCircle, limbSymbol, refusedPair } from "./hazard-symbols.ts";
import { sign, type SignKind } from "./signs.ts";
import { neededSymbol, treeSymbol } from "./tree-symbols.ts";

export type LegendKey =
  | "looked-at"
  | "not-looked-at"
  | "needed"
  | "doubtful"
  | "dead"
  | "thin"
  | "barred"
  | "head"
  | "feet"
  | "tarp"
  | "spare"
  | "refused"
  | "limits"
  | "knot"
  | "group"
  | "limb"
  | "drop-circle"
  | "unsure"
  | SignKind;

export const LEGEND_ORDER: readonly LegendKey[] = [
  "looked-at",
  "not-looked-at",
  "needed",
  "doubtful",
  "dead",
  "thin",
  "barred",
  "head",
  "feet",
  "tarp",
  "spare",
  "refused",
  "limits",
  "knot",
  "group",
  "limb",
  "drop-circle",
  "unsure",
  "meet",
  "muster",
  "fallback",
];

const ROW = 28;
const SIGN = 30;
const GAP = 18;

export interface Legend {
  readonly items: readonly Item[];
  readonly height: number;
}

/** The symbols that are on the map, and no others, in rows from `top` down. */
export function legend(
  present: ReadonlySet<LegendKey>,
  [left, top]: XY,
  width: number,
  words: Words,
): Legend {
  const items: Item[] = [];
  let [x, row] = [left, 0];
  for (const key of LEGEND_ORDER) {
    if (!present.has(key)) continue;
    const label = word(`legend.${key}` satisfies WordKey);
    const wide = SIGN + words.measure(words.labels(label), TYPE.note, 500);
    if (x > left && x + wide > left + width) [x, row] = [left, row + 1];
    const y = top + row * ROW + ROW / 2;
    items.push(SAMPLES[key]([x + 12, y]), text(label, [x + SIGN, y + 5], { size: TYPE.note }));
    x += wide + GAP;
  }
  const height = present.size === 0 ? 0 : (row + 1) * ROW;
  return { items: [group(items, { class: "ns-legend" })], height };
}

const SAMPLES: Readonly<Record<LegendKey, (at: XY) => Item>> = {
  "looked-at": (at) => treeSymbol("looked-at", at, 7),
  "not-looked-at": (at) => treeSymbol("not-looked-at", at, 7),
  needed: (at) => neededSymbol(at, 5),
  doubtful: (at) => treeSymbol("doubtful", at, 7),
  dead: (at) => treeSymbol("dead", at, 10),
  thin: (at) => treeSymbol("thin", at, 2),
  barred: (at) => treeSymbol("barred", at, 6),
  head: ([x, y]) => path([["M", x + 3, y - 7], ["A", 7, 0, 0, x + 3, y + 7], ["Z"]], { fill: "cloth" }),
  feet: ([x, y]) =>
    group(
      [x - 3, x + 3].map((bar) =>
        line(
          [
            [bar, y - 7],
            [bar, y + 7],
          ],
          { stroke: "cloth", width: 2.5, cap: "butt" },
        ),
      ),
    ),
  tarp: ([x, y]) =>
    line(
      [
        [x - 11, y + 4],
        [x - 3, y - 5],
        [x + 6, y - 5],
        [x + 12, y + 4],
      ],
      { stroke: "ink", width: 1.75, dash: [6, 3], cap: "butt" },
    ),
  spare: ([x, y]) => spareSpan({ head: [x - 13, y], foot: [x + 13, y], cloth: [0, 1] }),
  refused: ([x, y]) => refusedPair([x - 22, y - 2], [x + 22, y - 2]),
  limits: (at) => group([pinch(at, 3), circle(at, 3, { fill: "ink" })]),
  knot: ([x, y]) =>
    line(
      [
        [x - 12, y],
        [x + 12, y],
      ],
      { stroke: "ink", width: 1.5, dash: [1.5, 5], cap: "butt" },
    ),
  group: ([x, y]) =>
    path(
      [
        ["M", x - 13, y + 6],
        ["Q", x, y - 12, x + 13, y + 6],
      ],
      GROUP_LINE,
    ),
  limb: (at) => limbSymbol(at, 22),
  "drop-circle": (at) => keepOutCircle(at, 10, { rim: "no", width: 1.5 }),
  unsure: ([x, y]) =>
    group([
      circle([x, y], 10, { fill: "none", stroke: "ink", width: 0.75 }),
      circle([x, y], 4, { fill: "ink" }),
    ]),
  meet: (at) => sampleSign("meet", at),
  muster: (at) => sampleSign("muster", at),
  fallback: (at) => sampleSign("fallback", at),
};

function sampleSign(kind: SignKind, at: XY): Item {
  return group([sign(kind, [0, 0])], { move: at, scale: 0.85 });
}
