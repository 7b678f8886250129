import type { Camp, Plan } from "@nightspan/core";
import { berthFacts, type BerthFacts } from "../berth/berth-facts.ts";
import { TYPE_MM } from "../colour/tokens.ts";
import { verdictPlateItem } from "../figure/verdict-plate.ts";
import { name, word } from "../scene/names.ts";
import type { Item, Scene, TextRunItem, XY } from "../scene/scene.ts";
import { box, line, path, text } from "../scene/shapes.ts";
import type { TextItem, Words } from "../scene/text-item.ts";
import { wrapped, type Wrapped } from "../scene/wrapped.ts";
import { cardLines } from "./card-lines.ts";
import { cardRows } from "./card-rows.ts";
import { CARD, EDGE, HOLE } from "./card-size.ts";
import {
  lookedAtText,
  notCheckedText,
  notLookedText,
  partsOfABerth,
  plateText,
  sentences,
  wakeText,
  whereText,
} from "./card-words.ts";
import { lookInTexts } from "./warmth-line.ts";

export interface CardOptions extends Words {
  /** Why the verdict is not clear, in a few words, where something else than an unseen tree is the reason. */
  readonly reason?: string;
}

const RIGHT = CARD.width - EDGE;

/** The front of a berth card, A6: what to do in order, the strap marks largest. One ink, no pulls, no mass. */
export function cardScene(plan: Plan, camp: Camp, berthId: string, options: CardOptions): Scene {
  const facts = berthFacts(plan, camp, berthId);
  const lines = cardLines(facts, plan, camp);
  const top = 34.5;
  const foot = footer(facts, plan, camp, options);
  const rows = cardRows(lines, top, CARD.height - EDGE - foot.height, options);
  return {
    name: "card",
    size: CARD,
    title: word("card.title", { berth: name(berthId), sleeper: name(facts.sleeper.name) }),
    desc: word("card.desc"),
    ground: "paper",
    theme: "one-ink",
    items: [...header(facts, camp, options), ...rows, ...foot.items],
  };
}

function header(facts: BerthFacts, camp: Camp, words: Words): Item[] {
  const side = 13.5;
  return [
    box([EDGE, EDGE], side, side, { fill: "ink" }),
    text(name(facts.berth.id), [EDGE + side / 2, EDGE + side * 0.74], {
      size: facts.berth.id.length > 2 ? 6 : 9.6,
      weight: 700,
      anchor: "middle",
      fill: "on-action",
    }),
    ...whoAndWhere(facts, camp, EDGE + side + 3.2, words),
    ...tags(facts, words),
  ];
}

/** The name, in one line or two, clear of the hole; the camp and the day beneath. */
function whoAndWhere({ sleeper }: BerthFacts, camp: Camp, x: number, words: Words): Item[] {
  const size = TYPE_MM.name;
  const style = { size, weight: 700, width: RIGHT - HOLE - x, leading: size, mostLines: 2 } as const;
  const two = wrapped(name(sleeper.name), [x, 0], style, words).lines > 1;
  const named = wrapped(name(sleeper.name), [x, EDGE + (two ? 4.6 : 6.2)], style, words);
  const where = { size: TYPE_MM.note, weight: 500, maxWidth: RIGHT - x } as const;
  return [...named.items, text(whereText(camp), [x, EDGE + (two ? 15.8 : 11.6)], where)];
}

/** Both tags either side of a little berth; long tags are set smaller, then take its room too, then are cut. */
function tags({ head, foot, berth }: BerthFacts, words: Words): Item[] {
  const y = 30.6;
  const labels = [word("card.head"), word("card.foot")] as const;
  const taken = (label: TextItem): number => words.measure(`${words.labels(label)}\u00a0`, TYPE_MM.body, 700);
  const needs = (label: TextItem, tag: string): number =>
    taken(label) + words.measure(tag, TYPE_MM.note, 700);
  const crowded = Math.max(needs(labels[0], head.tag), needs(labels[1], foot.tag)) > BESIDE_BERTH;
  const width = crowded ? (RIGHT - EDGE) / 2 - 1.5 : BESIDE_BERTH;
  const side = (label: TextItem, tag: string, x: number, anchor: "start" | "end"): TextRunItem => {
    const said = { item: label, size: TYPE_MM.body, weight: 700 } as const;
    const space = { item: { said: "\u00a0" }, size: TYPE_MM.body, weight: 700 } as const;
    const size = fitted(tag, width - taken(label), TYPE_MM.head * 1.2, words);
    const runs = [said, space, { item: name(tag), size, weight: 700 } as const];
    return { kind: "text", at: [x, y], anchor, fill: "ink", maxWidth: width + 0.1, runs };
  };
  return [
    side(labels[0], head.tag, EDGE, "start"),
    side(labels[1], foot.tag, RIGHT, "end"),
    ...(crowded || berth.verdict === "do-not-hang" ? [] : littleBerth([CARD.width / 2, 28])),
  ];
}

/** Room for a tag beside the little berth [mm]. */
const BESIDE_BERTH = 33;

function fitted(written: string, width: number, size: number, words: Words): number {
  const wide = words.measure(written, size, 700);
  return wide <= width ? size : Math.max(TYPE_MM.note, (size * width) / wide);
}

/** The mark of the app with head and feet: shows which end is which. */
function littleBerth([x, y]: XY): Item[] {
  const ink = { fill: "none", stroke: "ink", width: 0.75 } as const;
  return [
    line(
      [
        [x - 11, y - 4.6],
        [x - 11, y + 4.2],
      ],
      { stroke: "ink", width: 1.2, cap: "butt" },
    ),
    line(
      [
        [x + 11, y - 4.6],
        [x + 11, y + 4.2],
      ],
      { stroke: "ink", width: 1.2, cap: "butt" },
    ),
    path(
      [
        ["M", x - 11, y - 2.6],
        ["L", x - 6.4, y - 1],
        ["Q", x, y + 7, x + 6.4, y - 1.8],
        ["L", x + 11, y - 3.4],
      ],
      ink,
    ),
    path([["M", x - 5.2, y + 0.5], ["A", 1.5, 0, 1, x - 2.9, y + 2.4], ["Z"]], { fill: "ink" }),
    line(
      [
        [x + 3, y + 1.1],
        [x + 4.2, y + 2.4],
      ],
      { ...ink, width: 0.55 },
    ),
    line(
      [
        [x + 4.2, y],
        [x + 5.4, y + 1.3],
      ],
      { ...ink, width: 0.55 },
    ),
  ];
}

/** Smaller where it would not do in two lines. */
function headlineAt(item: TextItem, [x, y]: XY, words: Words): Wrapped {
  const style = (size: number) => ({ size, weight: 700, width: RIGHT - x, leading: size * 1.1 }) as const;
  const large = wrapped(item, [x, y], style(TYPE_MM.lead), words);
  return large.lines <= 2 ? large : wrapped(item, [x, y - 0.4], style(TYPE_MM.body), words);
}

interface Footer {
  readonly items: readonly Item[];
  readonly height: number;
}

/** Verdict in a word, who looked, what was not checked, whom to wake. */
function footer(facts: BerthFacts, plan: Plan, camp: Camp, words: CardOptions): Footer {
  const { verdict } = facts.berth;
  const unchecked = notCheckedText(partsOfABerth(plan.notChecked));
  const looked = lookedAtText(facts, plan, camp);
  const said: TextItem =
    unchecked === undefined ? looked : word("card.looked-and-not-checked", { looked, unchecked });
  const about = words.reason === undefined ? notLookedText(facts) : { said: words.reason };
  const verdictWord = word(`verdict.${verdict}.capital`);
  const headline =
    about === undefined || verdict === "clear"
      ? verdictWord
      : word("verdict.about", { verdict: verdictWord, about });
  const lookIn = lookInTexts(facts, camp);
  const x = EDGE + 16;
  const note = { size: TYPE_MM.note, leading: TYPE_MM.note * 1.22 } as const;
  const layOut = (top: number) => {
    const head = headlineAt(headline, [x, top + 4.4], words);
    const small = wrapped(said, [x, head.bottom + 4.2], { ...note, weight: 500, width: RIGHT - x }, words);
    const wake = wrapped(
      sentences([wakeText(facts, plan, camp), ...lookIn]),
      [EDGE, Math.max(small.bottom, top + 9) + 4.8],
      { ...note, weight: 700, width: RIGHT - EDGE },
      words,
    );
    const rest = wrapped(
      sentences([plateText(facts), word("card.rest")]),
      [EDGE, wake.bottom + note.leading],
      { ...note, weight: 500, width: RIGHT - EDGE },
      words,
    );
    return {
      items: [...head.items, ...small.items, ...wake.items, ...rest.items],
      bottom: rest.bottom + 0.8,
    };
  };
  const height = layOut(0).bottom + 1.2;
  const top = CARD.height - EDGE - height + 1.2;
  return { items: [verdictPlateItem(verdict, [EDGE + 6.6, top + 5], 7), ...layOut(top).items], height };
}
