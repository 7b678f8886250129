import type { OkRange } from "@nightspan/core";
import { TYPE } from "../colour/tokens.ts";
import { quantity, word } from "../scene/names.ts";
import type { Item } from "../scene/scene.ts";
import { box, group, line, polygon, text } from "../scene/shapes.ts";
import type { Words } from "../scene/text-item.ts";
import type { BerthFacts } from "./berth-facts.ts";
import { limitText } from "./berth-words.ts";

/** Height of the band [px]. */
const BAND = 12;
/** Spans beyond this share of the planned one run off the drawing. */
const ROOM_EACH_SIDE = 0.34;

export interface SpanWindowPlace {
  /** Where the head trunk's middle lies on the paper. */
  readonly x: number;
  /** Upper edge of the band. */
  readonly y: number;
  readonly pxPerM: number;
  readonly rightX: number;
}

export interface SpanWindow {
  readonly items: readonly Item[];
  readonly height: number;
}

/**
 * Spans at which this kit and sleeper could hang between two such trees: a band on the scale of the drawing, measured from
 * the head tree's middle, ticked at its ends, with what ends it there; the planned span as a wedge.
 */
export function spanWindowBand(facts: BerthFacts, place: SpanWindowPlace, words: Words): SpanWindow {
  const { spanWindow: range, spanM } = facts.berth;
  if (range === undefined) return { items: [], height: 0 };
  const xOf = (spanM: number): number => place.x + spanM * place.pxPerM;
  const least = xOf(spanM * (1 - ROOM_EACH_SIDE));
  const most = Math.min(place.rightX - 24, xOf(spanM * (1 + ROOM_EACH_SIDE)));
  const [from, to] = [Math.max(least, xOf(range.low)), Math.min(most, xOf(range.high))];
  if (!(to - from >= 4)) return { items: [], height: 0 };
  const { y } = place;
  const items = [
    box([from, y], to - from, BAND, { fill: "cloth-tint", stroke: "cloth", width: 1.25, join: "miter" }),
    ...(xOf(range.low) >= least ? [endTick(from, y)] : []),
    ...(xOf(range.high) <= most ? [endTick(to, y)] : []),
    wedge(xOf(spanM), y),
    text(word("berth.window"), [Math.min(from, xOf(spanM) - 4) - 12, y + BAND], {
      size: TYPE.note,
      anchor: "end",
      halo: "paper",
    }),
    ...windowWords(range, [from, to], y + BAND + 18, place, words),
  ];
  return { items: [group(items, { class: "ns-window" })], height: BAND + 46 };
}

function endTick(x: number, y: number): Item {
  return line(
    [
      [x, y - 4],
      [x, y + BAND + 4],
    ],
    { stroke: "cloth", width: 2, cap: "butt" },
  );
}

/** The planned span, on the upper edge. */
function wedge(x: number, y: number): Item {
  return polygon(
    [
      [x, y + 2],
      [x - 7, y - 10],
      [x + 7, y - 10],
    ],
    { fill: "ink", class: "ns-planned" },
  );
}

/** Each end's span and what binds there; where both would touch, the left one ends before the right one begins. */
function windowWords(
  { low, high, bindsLow, bindsHigh }: OkRange,
  [from, to]: readonly [number, number],
  y: number,
  { rightX }: SpanWindowPlace,
  { labels, measure }: Words,
): Item[] {
  const note = { size: TYPE.note, halo: "paper" } as const;
  const wide = (item: Parameters<typeof labels>[0], weight: 500 | 600): number =>
    measure(labels(item), TYPE.note, weight);
  const ends = [
    { span: low, limit: bindsLow },
    { span: high, limit: bindsHigh },
  ].map(({ span, limit }) => {
    const [number, words] = [quantity("length", span, 2), limitText(limit)];
    return { number, words, width: Math.max(wide(number, 600), wide(words, 500)) };
  });
  const [left, right] = ends;
  if (left === undefined || right === undefined) return [];
  const rightEnd = Math.min(
    rightX - 12,
    Math.max(to + right.width / 2, from + left.width + right.width + 16),
  );
  const leftEnd = Math.min(from + left.width / 2, rightEnd - right.width - 16);
  return [
    { ...left, x: leftEnd },
    { ...right, x: rightEnd },
  ].flatMap(({ number, words, x }) => [
    text(number, [x, y], { ...note, weight: 600, anchor: "end" }),
    text(words, [x, y + 18], { ...note, anchor: "end" }),
  ]);
}
