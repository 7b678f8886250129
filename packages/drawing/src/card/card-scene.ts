import type { Camp, Plan } from "@nightspan/core";
import { berthFacts, type BerthFacts } from "../berth/berth-facts.ts";
import { TYPE_MM } from "../colour/tokens.ts";
import { verdictPlateItem } from "../figure/verdict-plate.ts";
import { name, word } from "../scene/names.ts";
import type { Item, Scene, TextRun, TextRunItem, XY } from "../scene/scene.ts";
import { box, line, path, text } from "../scene/shapes.ts";
import type { TextItem, Words } from "../scene/text-item.ts";
import { wrapped } from "../scene/wrapped.ts";
import { cardLines, type CardLine } from "./card-lines.ts";
import { CARD, EDGE, HOLE, RULE } from "./card-size.ts";
import {
  lookedAtText,
  notCheckedText,
  notLookedText,
  partsOfABerth,
  wakeText,
  whereText,
} from "./card-words.ts";

export interface CardOptions extends Words {
  /** Why the verdict is not clear, in a few words, where something else than an unseen tree is the reason. */
  readonly reason?: string;
}

const RIGHT = CARD.width - EDGE;
const NUMBER_X = EDGE;
const TEXT_X = EDGE + 5;

/** The front of a berth card, A6: what to do in order, the strap marks largest. One ink, no pulls, no mass. */
export function cardScene(plan: Plan, camp: Camp, berthId: string, options: CardOptions): Scene {
  const facts = berthFacts(plan, camp, berthId);
  const lines = cardLines(facts, plan, camp);
  const top = 34.5;
  const foot = footer(facts, plan, camp, options);
  const rows = rowsFrom(lines, top, CARD.height - EDGE - foot.height, options);
  return {
    name: "card",
    size: CARD,
    title: word("card.title", { berth: name(berthId), sleeper: name(facts.sleeper.name) }),
    desc: word("card.desc"),
    ground: "paper",
    items: [...header(facts, camp, options), ...rows, ...foot.items],
  };
}

function header(facts: BerthFacts, camp: Camp, words: Words): Item[] {
  const side = 13.5;
  const [x, size] = [EDGE + side + 3.2, TYPE_MM.name];
  const width = RIGHT - HOLE - x;
  const named = wrapped(
    name(facts.sleeper.name),
    [x, EDGE + 6.2],
    { size, weight: 700, width, leading: size * 1.06, mostLines: 2 },
    words,
  );
  const where = text(whereText(camp), [x, named.lines > 1 ? EDGE + 17 : EDGE + 11.6], {
    size: TYPE_MM.note,
    weight: 500,
    maxWidth: RIGHT - x,
  });
  return [
    box([EDGE, EDGE], side, side, { fill: "ink" }),
    text(name(facts.berth.id), [EDGE + side / 2, EDGE + side * 0.74], {
      size: facts.berth.id.length > 2 ? 6 : 9.6,
      weight: 700,
      anchor: "middle",
      fill: "on-action",
    }),
    ...named.items,
    where,
    ...tags(facts, words),
  ];
}

/** Both tags either side of a little berth. */
function tags({ head, foot }: BerthFacts, words: Words): Item[] {
  const y = 30.6;
  const run = (item: TextItem, size: number): TextRun => ({ item, size, weight: 700 });
  const side = (label: TextItem, tag: string, x: number, anchor: "start" | "end"): TextRunItem => ({
    kind: "text",
    at: [x, y],
    anchor,
    fill: "ink",
    maxWidth: 36,
    runs: [
      run(label, TYPE_MM.body),
      run({ said: "\u00a0" }, TYPE_MM.body),
      run(name(tag), fitted(tag, 22, TYPE_MM.head * 1.2, words)),
    ],
  });
  return [
    side(word("card.head"), head.tag, EDGE, "start"),
    side(word("card.foot"), foot.tag, RIGHT, "end"),
    ...littleBerth([CARD.width / 2, 28]),
  ];
}

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

function rowsFrom(lines: readonly CardLine[], top: number, bottom: number, words: Words): Item[] {
  const shares = lines.map((one) => rowShare(one, words));
  const unit = (bottom - top) / shares.reduce((sum, share) => sum + share, 0);
  let y = top;
  const items: Item[] = [rule(top, RULE.thin * 1.4)];
  lines.forEach((one, index) => {
    const height = unit * (shares[index] ?? 1);
    items.push(...row(one, index + 1, y, height, words));
    y += height;
    const heavy =
      one.mark !== undefined || lines[index + 1]?.mark !== undefined || index === lines.length - 1;
    items.push(rule(y, heavy ? RULE.thick : RULE.thin));
  });
  return items;
}

/** Strap marks stand tallest; a line that will not fit in one gets room for two. */
function rowShare({ mark, action, tick, value }: CardLine, words: Words): number {
  if (mark !== undefined) return 1.6;
  const room = RIGHT - TEXT_X - (tick === true || value !== undefined ? 8 : 0);
  return words.measure(words.labels(action), TYPE_MM.body, 500) > room ? 1.3 : 1;
}

function rule(y: number, width: number): Item {
  return line(
    [
      [EDGE, y],
      [RIGHT, y],
    ],
    { stroke: "ink", width, cap: "butt" },
  );
}

function row(one: CardLine, number: number, top: number, height: number, words: Words): Item[] {
  const middle = top + height / 2;
  const value = valueRuns(one);
  const taken =
    one.tick === true
      ? 8
      : value.reduce(
          (sum, { item, size, weight }) => sum + words.measure(words.labels(item), size, weight),
          0,
        );
  const room = RIGHT - TEXT_X - taken - (taken === 0 ? 0 : 2.5);
  const large = one.mark !== undefined;
  const weight = large ? 700 : 500;
  const size = rowSize(one.action, room, height, weight, words);
  const leading = size * 1.14;
  const probe = wrapped(one.action, [TEXT_X, 0], { size, weight, width: room, leading, mostLines: 2 }, words);
  const first = middle + size * 0.34 - ((probe.lines - 1) * leading) / 2;
  const action = wrapped(
    one.action,
    [TEXT_X, first],
    { size, weight, width: room, leading, mostLines: 2 },
    words,
  );
  const tick = box([RIGHT - 5.25, middle - 2.5], 5, 5, {
    fill: "none",
    stroke: "ink",
    width: 0.5,
    join: "miter",
    class: "ns-tick",
  });
  return [
    text(name(String(number)), [NUMBER_X, middle + TYPE_MM.note * 0.34], { size: TYPE_MM.note, weight: 700 }),
    ...action.items,
    ...(one.tick === true ? [tick] : []),
    ...(value.length === 0 ? [] : [valueText(value, middle, large)]),
  ];
}

/** Body size, or the note size where two lines of it would not do. */
function rowSize(action: TextItem, room: number, height: number, weight: 500 | 700, words: Words): number {
  const said = words.labels(action);
  const one = words.measure(said, TYPE_MM.body, weight) <= room;
  const two = words.measure(said, TYPE_MM.body, weight) <= room * 1.8 && height >= TYPE_MM.body * 2.3;
  return one || two ? TYPE_MM.body : TYPE_MM.note;
}

function valueRuns({ value, mark }: CardLine): TextRun[] {
  if (value !== undefined) return [{ item: value, size: TYPE_MM.head, weight: 700 }];
  if (mark === undefined) return [];
  const space = { item: { said: "\u00a0" }, size: TYPE_MM.body, weight: 700 } as const;
  return [
    { item: mark.number, size: TYPE_MM.shout, weight: 700 },
    space,
    { item: mark.unit, size: TYPE_MM.name, weight: 700 },
    space,
    { item: mark.after, size: TYPE_MM.lead, weight: 700 },
  ];
}

function valueText(runs: readonly TextRun[], middle: number, large: boolean): TextRunItem {
  const size = large ? TYPE_MM.shout : TYPE_MM.head;
  return { kind: "text", at: [RIGHT, middle + size * 0.34], anchor: "end", fill: "ink", runs };
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
  const x = EDGE + 16;
  const note = { size: TYPE_MM.note, leading: TYPE_MM.note * 1.22 } as const;
  const layOut = (top: number) => {
    const head = wrapped(
      headline,
      [x, top + 4.4],
      { size: TYPE_MM.lead, weight: 700, width: RIGHT - x, leading: TYPE_MM.lead * 1.1 },
      words,
    );
    const small = wrapped(said, [x, head.bottom + 4.2], { ...note, weight: 500, width: RIGHT - x }, words);
    const wake = wrapped(
      wakeText(facts, plan, camp),
      [EDGE, Math.max(small.bottom, top + 9) + 4.8],
      { ...note, weight: 700, width: RIGHT - EDGE },
      words,
    );
    const rest = wrapped(
      word("card.rest"),
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
