import type { Camp, ClockHour, NightClock, Plan } from "@nightspan/core";
import { LINE, TYPE } from "../colour/tokens.ts";
import { name, quantity, word } from "../scene/names.ts";
import type { Item, PathStep, Scene } from "../scene/scene.ts";
import { box, path, stroke, text } from "../scene/shapes.ts";
import type { SaidText, TextItem, Words } from "../scene/text-item.ts";
import { listed } from "../card/card-words.ts";
import { clockAt, clockText, instantMs } from "../words/clock.ts";
import { HOUR_MS, hourTicks, posts, xOfTime, type Post, type TimeAxis } from "./time-axis.ts";

export interface NightOptions {
  readonly words: Words;
  readonly widthPx: number;
}

const EDGE = 22;
/** Kept right of the last post for its name [px]. */
const LAST_NAME = 84;
const RAIN = 44;
const GUST = 64;

/**
 * The night of a camp from arrival to sunrise: what happens when as posts, the hours of rain as slanted strokes, the
 * gusts in the open as bars with the leader's stop line across them. Nothing where nobody knows the day or the place.
 */
export function nightTimelineScene(plan: Plan, camp: Camp, { words, widthPx }: NightOptions): Scene {
  const entries = plan.timeline ?? [];
  const hours = plan.nightClock?.hours ?? [];
  const axis = axisOf([...entries, ...hours], widthPx);
  const clock = (at: number): SaidText => clockAt(at, camp.place);
  const marks = entries.map(({ at, what }): Post => {
    const value = valueOf(what, plan.nightClock);
    return {
      at: instantMs(at) ?? axis.from,
      words:
        value === undefined
          ? word(`night.${what}`)
          : word("night.value", { what: word(`night.${what}`), value }),
      clock: clockText(at, camp.place),
      strong: what === "arrive-by" || what === "sunset" || what === "sunrise",
    };
  });
  const probe = posts(marks, axis, 0, words).height;
  const rainTop = probe + 12;
  const bottom = rainTop + (hours.length === 0 ? 0 : RAIN + GUST);
  return {
    name: "night-timeline",
    size: { width: widthPx, height: bottom + 40, unit: "px" },
    title: word("night.title", { camp: name(camp.name) }),
    desc: word("night.desc", {
      list: listed(marks.map(({ words: what, clock: at }) => word("night.entry", { what, at }))),
    }),
    ground: "paper",
    items: [
      ...posts(marks, axis, bottom, words).items,
      ...(hours.length === 0
        ? []
        : [...rainBand(hours, axis, rainTop), ...gustBars(hours, axis, [rainTop + RAIN, bottom], camp)]),
      ...hourTicks(axis, bottom, clock, widthPx < 500 ? 4 : 2),
    ],
  };
}

/** From the first moment to the last, a little beyond both. */
function axisOf(all: readonly { readonly at: string }[], widthPx: number): TimeAxis {
  const times = all.flatMap(({ at }) => instantMs(at) ?? []);
  const [from, to] = times.length === 0 ? [0, HOUR_MS] : [Math.min(...times), Math.max(...times)];
  return { from: from - HOUR_MS / 4, to: to + HOUR_MS / 4, left: EDGE, right: widthPx - LAST_NAME };
}

/** How cold, how strong: with the moment it belongs to. */
function valueOf(what: string, clock: NightClock | undefined): TextItem | undefined {
  if (clock === undefined) return undefined;
  if (what === "coldest") return quantity("temperature", clock.lowK, 0);
  if (what !== "gust-most") return undefined;
  return quantity("speed", Math.max(0, ...clock.hours.map(({ gustMS }) => gustMS)), 0);
}

/** Slanted strokes through each hour of rain, closer together for more. */
function rainBand(hours: readonly ClockHour[], axis: TimeAxis, top: number): Item[] {
  const steps = hours.flatMap(({ at, rainMmH }): PathStep[] => {
    const from = instantMs(at);
    if (from === undefined || !(rainMmH > 0)) return [];
    const [left, right] = [xOfTime(axis, from), Math.min(axis.right, xOfTime(axis, from + HOUR_MS))];
    const count = rainMmH >= 4 ? 5 : rainMmH >= 1 ? 3 : 2;
    return Array.from({ length: count }, (_, index): PathStep[] => {
      const x = left + ((index + 0.6) / count) * (right - left);
      return [
        ["M", x + 3, top + 6],
        ["L", x - 3, top + RAIN - 14],
      ];
    }).flat();
  });
  const [first] = steps;
  if (first === undefined || first[0] !== "M") return [];
  const rainX = Math.max(axis.left + 30, first[1] - 12);
  return [
    path(steps, { fill: "none", stroke: "water", width: 2, class: "ns-rain" }),
    text(word("night.rain"), [rainX, top + RAIN / 2 + 2], NAME),
  ];
}

const NAME = { size: TYPE.note, weight: 600, anchor: "end", halo: "paper" } as const;

/** A bar an hour, as high as the gust in the open; past the stop line it is filled. */
function gustBars(
  hours: readonly ClockHour[],
  axis: TimeAxis,
  [top, bottom]: readonly [number, number],
  camp: Camp,
): Item[] {
  const stop = camp.night?.stopGustMS;
  const most = Math.max(5, stop ?? 0, ...hours.map(({ gustMS }) => gustMS));
  const yOf = (speed: number): number => bottom - (speed / most) * (bottom - top - 20);
  const bars = hours.flatMap(({ at, gustMS }): Item[] => {
    const from = instantMs(at);
    if (from === undefined) return [];
    const [left, right] = [xOfTime(axis, from), Math.min(axis.right, xOfTime(axis, from + HOUR_MS))];
    if (!(right - left > 3)) return [];
    const over = stop !== undefined && gustMS >= stop;
    return [
      box([left + 1, yOf(gustMS)], right - left - 2, bottom - yOf(gustMS), {
        fill: over ? "no" : "none",
        stroke: over ? "no" : "rule",
        width: 1.25,
        class: over ? "ns-gust ns-over" : "ns-gust",
      }),
    ];
  });
  const said =
    stop === undefined ? word("night.gusts") : word("night.stop-line", { speed: quantity("speed", stop, 0) });
  const lineY = yOf(stop ?? most);
  return [
    ...bars,
    ...(stop === undefined
      ? []
      : [
          stroke([axis.left, lineY, axis.right, lineY], {
            stroke: "no",
            width: LINE.tarp,
            dash: [8, 4],
            cap: "butt",
          }),
        ]),
    text(said, [axis.right + 70, lineY - 6], NAME),
  ];
}
