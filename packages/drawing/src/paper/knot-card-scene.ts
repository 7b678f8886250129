import { CARD, EDGE, HOLE, RULE } from "../card/card-size.ts";
import { TYPE_MM } from "../colour/tokens.ts";
import { word } from "../scene/names.ts";
import type { Item, Scene } from "../scene/scene.ts";
import { stroke, text } from "../scene/shapes.ts";
import type { Words } from "../scene/text-item.ts";
import { wrapped } from "../scene/wrapped.ts";
import { KNOT_SIZE, knotPicture, type Knot } from "./knot-pictures.ts";

const KNOTS: readonly Knot[] = [
  "strap-through-eye",
  "slipped-half-hitch",
  "sling-bury",
  "friction-loop",
  "sheet-bend",
];
const TOP = 17.5;
const ROW = 22.6;
const SCALE = 0.52;
const RIGHT = CARD.width - EDGE;

/** The knots of a berth on one card, A6: each by where it is tied, drawn over and under, with what to look for. */
export function knotCardScene(words: Words): Scene {
  const x = EDGE + KNOT_SIZE.width * SCALE + 4;
  const rows = KNOTS.flatMap((knot, index): Item[] => {
    const y = TOP + index * ROW;
    const style = {
      size: TYPE_MM.note,
      weight: 500,
      width: RIGHT - x,
      leading: TYPE_MM.note * 1.16,
    } as const;
    return [
      knotPicture(knot, [EDGE, y + 0.6], SCALE),
      text(word(`knots.${knot}`), [x, y + 4.4], { size: TYPE_MM.body, weight: 700, maxWidth: RIGHT - x }),
      ...wrapped(word(`knots.${knot}.how`), [x, y + 9.4], style, words).items,
      stroke([EDGE, y + ROW - 0.6, RIGHT, y + ROW - 0.6], { stroke: "ink", width: RULE.thin, cap: "butt" }),
    ];
  });
  const after = {
    size: TYPE_MM.note,
    weight: 600,
    width: RIGHT - EDGE,
    leading: TYPE_MM.note * 1.2,
  } as const;
  return {
    name: "knot-card",
    size: CARD,
    title: word("knots.title"),
    desc: word("knots.desc"),
    ground: "paper",
    theme: "one-ink",
    items: [
      text(word("knots.title"), [EDGE, EDGE + 6], {
        size: TYPE_MM.name,
        weight: 700,
        maxWidth: RIGHT - EDGE - HOLE,
      }),
      ...rows,
      ...wrapped(word("knots.after"), [EDGE, TOP + KNOTS.length * ROW + 4.4], after, words).items,
    ],
  };
}
