import { TYPE_MM } from "../colour/tokens.ts";
import { name, word } from "../scene/names.ts";
import type { Item, TextRun, TextRunItem } from "../scene/scene.ts";
import { box, line, text } from "../scene/shapes.ts";
import type { TextItem, Words } from "../scene/text-item.ts";
import { brokenLines, wrapped, type Wrapped } from "../scene/wrapped.ts";
import type { CardLine } from "./card-lines.ts";
import { CARD, EDGE, RULE } from "./card-size.ts";

const RIGHT = CARD.width - EDGE;
const TEXT_X = EDGE + 6;
/** Tallest ordinary row [mm]. */
const TALLEST = 14;

/** The numbered lines of a card from `top` to `bottom`, ruled off; strap marks stand tallest. */
export function cardRows(lines: readonly CardLine[], top: number, bottom: number, words: Words): Item[] {
  const heights = rowHeights(lines, bottom - top, words);
  let y = top;
  const items: Item[] = [rule(top, RULE.thin * 1.4)];
  lines.forEach((one, index) => {
    const height = heights[index] ?? 0;
    items.push(...row(one, index + 1, y, height, words));
    y += height;
    const heavy =
      one.mark !== undefined || lines[index + 1]?.mark !== undefined || index === lines.length - 1;
    items.push(rule(y, heavy ? RULE.thick : RULE.thin));
  });
  return items;
}

/** Each row what its words need; what is left goes to all alike, as far as rows may grow. */
function rowHeights(lines: readonly CardLine[], room: number, words: Words): number[] {
  const least = lines.map((one) => leastHeight(one, words));
  const all = least.reduce((sum, height) => sum + height, 0);
  if (all >= room) return least.map((height) => (height * room) / all);
  const more = Math.min((room - all) / lines.length, TALLEST - LEAST.one);
  return least.map((height) => height + more);
}

const LEAST = { one: 5, mark: 9.2, padding: 1 } as const;

/** Strap marks stand tallest; a line that will not fit in one has as many small ones as it needs. */
function leastHeight(one: CardLine, words: Words): number {
  if (one.note !== undefined)
    return Math.max(one.mark === undefined ? 0 : LEAST.mark, notedHeight(one, words));
  if (one.mark !== undefined) return LEAST.mark;
  if (one.strong === true) {
    const lines = brokenLines(one.action, ROOM, TYPE_MM.head, 700, words).length;
    return Math.max(2, Math.min(MOST_STRONG, lines)) * TYPE_MM.head * 1.14 + LEAST.padding;
  }
  const room = ROOM - (one.tick === true || one.value !== undefined ? 8 : 0);
  if (words.measure(words.labels(one.action), TYPE_MM.body, 500) <= room) return LEAST.one;
  return Math.min(3, smallLines(one.action, room, words)) * TYPE_MM.note * 1.14 + LEAST.padding;
}

const ROOM = RIGHT - TEXT_X;
/** Lines of what must not be missed, such as where to sleep instead. */
const MOST_STRONG = 4;

/** What an action with a note beneath it needs. */
function notedHeight(given: CardLine, words: Words): number {
  const one = withRoom(given, words);
  const width = roomBeside(one, valueRuns(one), words);
  const { lines, size } = noted(one, width, words);
  return lines * size * 1.14 + noteLines(one, width, words) * NOTE_LEADING + LEAST.padding;
}

const NOTE_LEADING = TYPE_MM.note * 1.1;

/** One line of body size where it fits, else small. */
function noted(
  one: CardLine,
  width: number,
  words: Words,
): { readonly lines: number; readonly size: number } {
  const weight = weightOf(one);
  if (words.measure(words.labels(one.action), TYPE_MM.body, weight) <= width)
    return { lines: 1, size: TYPE_MM.body };
  const { length } = brokenLines(one.action, width, TYPE_MM.note, weight, words);
  return { lines: Math.min(2, length), size: TYPE_MM.note };
}

function noteLines({ note }: CardLine, width: number, words: Words): number {
  return note === undefined ? 0 : Math.min(2, brokenLines(note, width, TYPE_MM.note, 500, words).length);
}

function weightOf({ mark, strong }: CardLine): 500 | 700 {
  return mark !== undefined || strong === true ? 700 : 500;
}

/** What to do, and in small beneath it what still serves; both together about the middle of the row. */
function notedAction(one: CardLine, middle: number, width: number, words: Words): readonly Item[] {
  const { lines, size } = noted(one, width, words);
  const under = noteLines(one, width, words);
  const top = middle - (lines * size * 1.14 + under * NOTE_LEADING) / 2;
  const style = { size, weight: weightOf(one), width, leading: size * 1.14, mostLines: 2 } as const;
  const said = wrapped(one.action, [TEXT_X, top + size * 0.9], style, words);
  if (one.note === undefined) return said.items;
  const small = { size: TYPE_MM.note, weight: 500, width, leading: NOTE_LEADING, mostLines: 2 } as const;
  return [...said.items, ...wrapped(one.note, [TEXT_X, said.bottom + NOTE_LEADING], small, words).items];
}

function smallLines(action: TextItem, room: number, words: Words): number {
  return brokenLines(action, room, TYPE_MM.note, 500, words).length;
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

function row(given: CardLine, number: number, top: number, height: number, words: Words): Item[] {
  const one = withRoom(given, words);
  const middle = top + height / 2;
  const value = valueRuns(one);
  const items: Item[] = [
    text(name(String(number)), [EDGE, middle + TYPE_MM.note * 0.34], { size: TYPE_MM.note, weight: 700 }),
    ...(one.note === undefined
      ? action(one, middle, height, roomBeside(one, value, words), words).items
      : notedAction(one, middle, roomBeside(one, value, words), words)),
  ];
  if (one.tick === true) items.push(tickBox(middle));
  if (value.length > 0) items.push(valueText(value, middle, one.mark !== undefined));
  return items;
}

/** A strap mark whose place on the body is too long to stand beside the number says it with the action. */
function withRoom(one: CardLine, words: Words): CardLine {
  const { mark } = one;
  if (mark?.after === undefined) return one;
  const room = roomBeside(one, valueRuns(one), words);
  const mostLines = one.note === undefined ? 2 : 1;
  if (brokenLines(one.action, room, TYPE_MM.body, 700, words).length <= mostLines) return one;
  const { number, unit, after } = mark;
  return {
    ...one,
    action: word("card.mark-at", { action: one.action, mark: after }),
    mark: { number, unit },
  };
}

function roomBeside({ tick }: CardLine, value: readonly TextRun[], words: Words): number {
  const wide = (sum: number, { item, size, weight }: TextRun): number =>
    sum + words.measure(words.labels(item), size, weight);
  const taken = tick === true ? 8 : value.reduce(wide, 0);
  return RIGHT - TEXT_X - taken - (taken === 0 ? 0 : 2.5);
}

/** What to do, in one or two lines about the middle of the row. */
function action(one: CardLine, middle: number, height: number, width: number, words: Words): Wrapped {
  const weight = weightOf(one);
  const size = one.strong === true ? TYPE_MM.head : rowSize(one.action, width, height, weight, words);
  const small = size === TYPE_MM.note && smallLines(one.action, width, words) > 2 ? 3 : 2;
  const mostLines = one.strong === true ? MOST_STRONG : small;
  const style = { size, weight, width, leading: size * 1.14, mostLines } as const;
  const { lines } = wrapped(one.action, [TEXT_X, 0], style, words);
  return wrapped(
    one.action,
    [TEXT_X, middle + size * 0.34 - ((lines - 1) * style.leading) / 2],
    style,
    words,
  );
}

/** ☐, five millimetres. */
function tickBox(middle: number): Item {
  const ink = { fill: "none", stroke: "ink", width: 0.5, join: "miter", class: "ns-tick" } as const;
  return box([RIGHT - 5.25, middle - 2.5], 5, 5, ink);
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
    ...(mark.after === undefined
      ? []
      : [space, { item: mark.after, size: TYPE_MM.lead, weight: 700 } as const]),
  ];
}

function valueText(runs: readonly TextRun[], middle: number, large: boolean): TextRunItem {
  const size = large ? TYPE_MM.shout : TYPE_MM.head;
  return { kind: "text", at: [RIGHT, middle + size * 0.34], anchor: "end", fill: "ink", runs };
}
