import type { Camp, Plan } from "@nightspan/core";
import { berthFacts, type BerthFacts } from "../berth/berth-facts.ts";
import { TYPE_MM } from "../colour/tokens.ts";
import { verdictPlateItem } from "../figure/verdict-plate.ts";
import { name, word } from "../scene/names.ts";
import type { Item, Scene, XY } from "../scene/scene.ts";
import { line, text } from "../scene/shapes.ts";
import type { TextItem, Words } from "../scene/text-item.ts";
import { cutToWidth } from "../svg/cut-to-width.ts";
import { wrapped } from "../scene/wrapped.ts";
import type { CardOptions } from "./card-scene.ts";
import { CARD, EDGE, RULE } from "./card-size.ts";
import { cardSideView } from "./card-side-view.ts";
import { cautionColumns, cautionTexts, COLUMN, COLUMN_LEFT } from "./caution-columns.ts";
import { entryPictures } from "./entry-pictures.ts";

const [LEFT, SECOND] = COLUMN_LEFT;
const RIGHT = CARD.width - EDGE;
const NOTE = { size: TYPE_MM.note, leading: TYPE_MM.note * 1.13 } as const;

/** The back of a berth card: side view without forces, orders, knots, getting in, and every caution. */
export function cardBackScene(plan: Plan, camp: Camp, berthId: string, options: CardOptions): Scene {
  const facts = berthFacts(plan, camp, berthId);
  const orders = ordersAt(45.5, options);
  const knots = knotsAt(orders.bottom + 2.2, facts, camp, options);
  const cautions = cautionsAt(knots.bottom + 2, camp, options);
  return {
    name: "card-back",
    size: CARD,
    title: word("card.back-title", { berth: name(berthId), sleeper: name(facts.sleeper.name) }),
    desc: word("card.back-desc"),
    ground: "paper",
    theme: "one-ink",
    items: [...above(facts, options), ...orders.items, ...knots.items, ...cautions],
  };
}

/** The side view; in its place a refusal, where nobody may hang. */
function above(facts: BerthFacts, words: Words): readonly Item[] {
  if (facts.berth.verdict !== "do-not-hang") return cardSideView(facts, [LEFT, 3.4], RIGHT - LEFT, 40, words);
  return [
    verdictPlateItem("do-not-hang", [CARD.width / 2, 17], 13),
    text(word("card.do-not-hang"), [CARD.width / 2, 34], {
      size: TYPE_MM.head,
      weight: 700,
      anchor: "middle",
    }),
  ];
}

interface Block {
  readonly items: readonly Item[];
  readonly bottom: number;
}

function rule(y: number): Item {
  return line(
    [
      [LEFT, y],
      [RIGHT, y],
    ],
    { stroke: "ink", width: RULE.thin, cap: "butt" },
  );
}

/** A bold first word, then the text, in one column. */
function paragraph(title: TextItem, body: TextItem, at: XY, words: Words): Block {
  const head = text(title, at, { size: TYPE_MM.note, weight: 700 });
  const set = wrapped(body, [at[0], at[1] + NOTE.leading], { ...NOTE, weight: 500, width: COLUMN }, words);
  return { items: [head, ...set.items], bottom: set.bottom };
}

function ordersAt(top: number, words: Words): Block {
  const y = top + 4.1;
  const fair = paragraph(word("back.fair"), word("back.fair-order"), [LEFT, y], words);
  const foul = paragraph(word("back.foul"), word("back.foul-order"), [SECOND, y], words);
  return { items: [rule(top), ...fair.items, ...foul.items], bottom: Math.max(fair.bottom, foul.bottom) };
}

/** Knots by place on the left, three pictures of getting in on the right. */
function knotsAt(top: number, facts: BerthFacts, camp: Camp, words: Words): Block {
  const sling = camp.kit.some(
    (item) =>
      item.id === facts.berth.kit.suspension && item.kind === "suspension" && item.type === "whoopie-sling",
  );
  const knots = paragraph(
    word("back.knots"),
    word(sling ? "back.knots-sling" : "back.knots-webbing"),
    [LEFT, top + 4.1],
    words,
  );
  const pictures = entryPictures([SECOND - 1, top + 2.9], COLUMN + 2, words);
  return {
    items: [rule(top), ...knots.items, ...pictures],
    bottom: Math.max(knots.bottom, top + 2.9 + 11.6),
  };
}

/** Every caution, whose word goes first, and where to sleep on the ground; in two columns. */
function cautionsAt(top: number, camp: Camp, words: Words): readonly Item[] {
  const fallback = camp.ground?.fallback;
  const where =
    fallback?.note !== undefined
      ? word("back.fallback", {
          where: name(
            cutToWidth(fallback.note, 3 * COLUMN - 30, (said) => words.measure(said, TYPE_MM.note, 500)),
          ),
        })
      : word(fallback?.at === undefined ? "back.fallback-none" : "back.fallback-map");
  // A long way to the ground fallback draws the lines closer, never off the card.
  const columns = cautionColumns([...cautionTexts(), where], top, CARD.height - EDGE, words);
  return [rule(top), ...columns.items];
}
