import type { Camp, HalfHour, Plan, WarmthHour } from "@nightspan/core";
import { LINE, TYPE } from "../colour/tokens.ts";
import { name, word } from "../scene/names.ts";
import type { Item, Scene, XY } from "../scene/scene.ts";
import { circle, group, line, stroke, text } from "../scene/shapes.ts";
import type { Words } from "../scene/text-item.ts";
import { wrapped } from "../scene/wrapped.ts";
import { clockText } from "../words/clock.ts";
import { warmthTexts } from "./warmth-words.ts";

export interface WarmthOptions {
  readonly words: Words;
  readonly widthPx: number;
  /** Whose clock and names are told; without it hours are told in UTC and people by their ids. */
  readonly camp?: Camp;
}

const LEFT = 18;
const TOP = 34;
const PLOT = 170;
/** More than this many times what is asked is drawn no higher. */
const MOST = 2;

/**
 * Warmth of one sleeper hour by hour: what each half has over what the hour asks of it. Over is the whole line, under the
 * dashed one; below what is asked the space is filled with dots. No degrees: those stand behind "why".
 */
export function warmthNightScene(plan: Plan, berthId: string, options: WarmthOptions): Scene {
  const warmth = plan.berths.find(({ id }) => id === berthId)?.warmth;
  const { words, widthPx, camp } = options;
  const hours = warmth?.by === "balance" ? warmth.hours : [];
  const plotted = hours.length === 0 ? [] : plot(hours, options);
  const top = hours.length === 0 ? 8 : TOP + PLOT + 44;
  let y = top + 16;
  const said = warmth === undefined ? [] : warmthTexts(warmth, camp);
  const sentences = said.flatMap((item, index) => {
    const style = {
      size: TYPE.note,
      weight: index < 2 ? 600 : 500,
      width: widthPx - 2 * LEFT,
      leading: 20,
    } as const;
    const set = wrapped(item, [LEFT, y], style, words);
    y = set.bottom + 23;
    return set.items;
  });
  return {
    name: "warmth-night",
    size: { width: widthPx, height: Math.ceil(y), unit: "px" },
    title: word("warmth.title", { berth: name(berthId) }),
    desc:
      warmth === undefined
        ? word("warmth.not-checked")
        : word("warmth.desc", {
            under: word(`warmth.${warmth.under.enough}`),
            over: word(`warmth.${warmth.over.enough}`),
            weaker: word(`warmth.${warmth.weaker}`),
          }),
    ground: "paper",
    items: [...plotted, ...sentences],
  };
}

type Half = "over" | "under";

function shareOf({ haveM2KPerW, needM2KPerW }: HalfHour): number {
  return needM2KPerW <= 0 ? MOST : Math.min(MOST, haveM2KPerW / needM2KPerW);
}

function plot(hours: readonly WarmthHour[], { words, widthPx, camp }: WarmthOptions): Item[] {
  const labelWidth = Math.max(
    ...(["over", "under"] as const).map((half) =>
      words.measure(words.labels(word(`warmth.${half}`)), TYPE.note, 700),
    ),
  );
  const right = widthPx - LEFT - labelWidth - 10;
  const xOf = (index: number): number => LEFT + (index / Math.max(1, hours.length - 1)) * (right - LEFT);
  const yOf = (share: number): number => TOP + PLOT * (1 - share / MOST);
  const asked = yOf(1);
  const points = (half: Half): XY[] => hours.map((hour, index) => [xOf(index), yOf(shareOf(hour[half]))]);
  const [over, under] = [points("over"), points("under")];
  return [
    ...shortDots([over, under], asked),
    stroke([LEFT, asked, right, asked], { stroke: "ink", width: LINE.guy }),
    // Named at the foot, where no line comes.
    stroke([LEFT + 4, TOP + PLOT - 14, LEFT + 28, TOP + PLOT - 14], { stroke: "ink", width: LINE.guy }),
    text(word("warmth.asked"), [LEFT + 36, TOP + PLOT - 9], { size: TYPE.note, halo: "paper" }),
    line(over, { stroke: "cloth", width: 3.5, class: "ns-warmth-over" }),
    line(under, { stroke: "ink", width: 3.5, dash: [9, 6], cap: "butt", class: "ns-warmth-under" }),
    ...lineNames(over, under, right + 8),
    ...clock(hours, xOf, TOP + PLOT, camp),
  ];
}

/** A name at each line's end; the two are kept apart. */
function lineNames(over: readonly XY[], under: readonly XY[], x: number): Item[] {
  const [overY, underY] = [over.at(-1)?.[1] ?? 0, under.at(-1)?.[1] ?? 0];
  const apart = Math.abs(overY - underY) < 20 ? (20 - Math.abs(overY - underY)) / 2 : 0;
  const up = overY <= underY ? -1 : 1;
  return [
    text(word("warmth.over"), [x, overY + 5 + up * apart], { size: TYPE.note, weight: 700 }),
    text(word("warmth.under"), [x, underY + 5 - up * apart], { size: TYPE.note, weight: 700 }),
  ];
}

/** Dots between what is asked and the lower of the two lines, where that is short. */
function shortDots(lines: readonly (readonly XY[])[], asked: number): Item[] {
  const [first = []] = lines;
  const dots: Item[] = [];
  const last = first.at(-1)?.[0] ?? 0;
  for (let x = (first[0]?.[0] ?? 0) + 4; x < last; x += 8) {
    const lowest = Math.max(...lines.map((points) => heightAt(points, x)));
    for (let y = asked + 4, row = 0; y < lowest - 2; y += 6, row++)
      dots.push(circle([x + (row % 2) * 4, y], 1.4));
  }
  return dots.length === 0 ? [] : [group(dots, { fill: "no", stroke: "none", class: "ns-short" })];
}

function heightAt(points: readonly XY[], x: number): number {
  const next = points.findIndex(([px]) => px >= x);
  const [a, b] = [points[Math.max(0, next - 1)], points[next < 0 ? points.length - 1 : next]];
  if (a === undefined || b === undefined) return -Infinity;
  return b[0] === a[0] ? b[1] : a[1] + ((b[1] - a[1]) * (x - a[0])) / (b[0] - a[0]);
}

/** Room of an hour's name [px]. */
const CLOCK_PX = 66;

/** Hours along the bottom, the coldest as a post over the whole height. */
function clock(
  hours: readonly WarmthHour[],
  xOf: (index: number) => number,
  y: number,
  camp: Camp | undefined,
): Item[] {
  const room = Math.max(2, Math.floor((xOf(hours.length - 1) - xOf(0)) / CLOCK_PX));
  const every = Math.max(1, Math.ceil(hours.length / Math.min(5, room)));
  const ticks = hours.flatMap(({ at }, index): Item[] => {
    const x = xOf(index);
    const tick = stroke([x, y, x, y + (index % every === 0 ? 8 : 5)], {
      stroke: "ink",
      width: 1,
      cap: "butt",
    });
    if (index % every !== 0) return [tick];
    const anchor = index === 0 ? "start" : "middle";
    return [tick, text(clockText(at, camp?.place), [x, y + 25], { size: TYPE.note, anchor })];
  });
  const coldest = hours.findIndex((hour) => hour.coldest);
  const at = hours[coldest]?.at;
  const post =
    at === undefined
      ? []
      : [
          stroke([xOf(coldest), TOP - 8, xOf(coldest), y], {
            stroke: "ink",
            width: 1.5,
            dash: [2, 3],
            cap: "butt",
          }),
          text(word("warmth.coldest", { at: clockText(at, camp?.place) }), [xOf(coldest), TOP - 14], {
            size: TYPE.note,
            weight: 600,
            anchor: coldest > hours.length / 2 ? "end" : "start",
          }),
        ];
  return [
    stroke([xOf(0), y, xOf(hours.length - 1), y], { stroke: "ink", width: 1.5, cap: "butt" }),
    ...ticks,
    ...post,
  ];
}
