import { TYPE } from "../colour/tokens.ts";
import type { Item } from "../scene/scene.ts";
import { line, stroke, text } from "../scene/shapes.ts";
import type { TextItem, Words } from "../scene/text-item.ts";

/** From evening to morning across the paper. */
export interface TimeAxis {
  readonly from: number;
  readonly to: number;
  readonly left: number;
  readonly right: number;
}

/** Place of an instant on the paper. */
export function xOfTime({ from, to, left, right }: TimeAxis, at: number): number {
  return left + ((at - from) / (to - from || 1)) * (right - left);
}

/** A moment with its name over it. */
export interface Post {
  readonly at: number;
  readonly words: TextItem;
  readonly clock: TextItem;
  /** Set bold: what somebody must keep. */
  readonly strong?: boolean;
}

interface Placed {
  readonly x: number;
  readonly level: number;
  readonly post: Post;
}

const LEVEL = 40;

export interface Posts {
  readonly items: readonly Item[];
  /** Height of the names over the axis. */
  readonly height: number;
}

/** Posts from the axis up to their names; an earlier name stands over the posts that it reaches across. */
export function posts(all: readonly Post[], axis: TimeAxis, bottom: number, words: Words): Posts {
  const placed = levelled(all, axis, words);
  const rows = Math.max(0, ...placed.map(({ level }) => level)) + 1;
  const items = placed.flatMap(({ x, level, post }): Item[] => {
    const y = 20 + (rows - 1 - level) * LEVEL;
    const strong = post.strong === true;
    return [
      stroke([x, y - 12, x, bottom], { stroke: "ink", width: strong ? 3 : 1.5, cap: "butt" }),
      text(post.clock, [x + 7, y], { size: TYPE.note, weight: 700, halo: "paper" }),
      text(post.words, [x + 7, y + 18], { size: TYPE.note, weight: strong ? 700 : 500, halo: "paper" }),
    ];
  });
  return { items, height: rows * LEVEL };
}

/** The last name stands lowest; each before it over all that its own width reaches. */
function levelled(all: readonly Post[], axis: TimeAxis, words: Words): Placed[] {
  const wide = (item: TextItem): number => words.measure(words.labels(item), TYPE.note, 700);
  const done: Placed[] = [];
  for (const post of [...all].sort((a, b) => b.at - a.at)) {
    const x = xOfTime(axis, post.at);
    const right = x + 7 + Math.max(wide(post.words), wide(post.clock)) + 6;
    const over = done.filter((later) => later.x < right).map(({ level }) => level + 1);
    done.push({ x, level: Math.max(0, ...over), post });
  }
  return done;
}

/** The axis itself, ticked at each hour, every third one named. */
export function hourTicks(
  axis: TimeAxis,
  y: number,
  clockOf: (at: number) => TextItem,
  named: number,
): Item[] {
  const hours: Item[] = [
    line(
      [
        [axis.left, y],
        [axis.right, y],
      ],
      { stroke: "ink", width: 1.5, cap: "butt" },
    ),
  ];
  const first = Math.ceil(axis.from / HOUR_MS) * HOUR_MS;
  for (let at = first, index = 0; at <= axis.to; at += HOUR_MS, index++) {
    const x = xOfTime(axis, at);
    const whole = index % named === 0;
    hours.push(stroke([x, y, x, y + (whole ? 8 : 5)], { stroke: "ink", width: 1, cap: "butt" }));
    if (whole) hours.push(text(clockOf(at), [x, y + 24], { size: TYPE.note, anchor: "middle" }));
  }
  return hours;
}

export const HOUR_MS = 3_600_000;
