import type { Camp, Sleeper } from "@nightspan/core";
import { TYPE } from "../colour/tokens.ts";
import { name, quantity, word } from "../scene/names.ts";
import type { Item, XY } from "../scene/scene.ts";
import { box, group, line, polygon, text } from "../scene/shapes.ts";
import type { TextItem, Words } from "../scene/text-item.ts";
import type { Box } from "./label-placement.ts";
import { NARROW_PX, type MapView } from "./map-view.ts";

export interface Furniture {
  readonly items: readonly Item[];
  readonly box: Box;
}

export interface FurnitureWish {
  /** The reader's own step [m]; else the steps of a leader, by name. */
  readonly stepM?: number;
  readonly sketch: boolean;
  readonly northKnown: boolean;
}

const PAD = 14;

/** Scale in metres and steps, north, wind: in a box at the lower left. A sketch has no scale to show. */
export function furniture(camp: Camp, view: MapView, wish: FurnitureWish, words: Words): Furniture {
  const narrow = view.widthPx < NARROW_PX;
  const height = narrow && !wish.sketch ? 76 : 58;
  const [left, top] = [12, view.heightPx - 12 - height];
  const parts: Item[] = [];
  let x = left + PAD;
  const put = (drawn: Part): void => {
    parts.push(...drawn.items);
    x += drawn.width + PAD;
  };
  put(
    wish.sketch
      ? sketchWords([x, top + 35], words)
      : scaleBar([x, top], height, view, stepper(camp, wish), words),
  );
  if (wish.northKnown) put(northArrow([x + 10, top], height));
  const from = camp.night?.windFromRad;
  if (from !== undefined && wish.northKnown) put(wind([x, top + height / 2], from, narrow, words));
  const frame = { fill: "panel", stroke: "ink", width: 1.5, join: "miter" } as const;
  const width = x - left;
  return {
    items: [group([box([left, top], width, height, frame), ...parts], { class: "ns-furniture" })],
    box: { left: left - 4, top: top - 4, right: left + width + 4, bottom: view.heightPx },
  };
}

interface Part {
  readonly items: readonly Item[];
  readonly width: number;
}

function sketchWords(at: XY, words: Words): Part {
  const label = word("map.sketch");
  return {
    items: [text(label, at, { size: TYPE.note, weight: 600 })],
    width: words.measure(words.labels(label), TYPE.note, 600),
  };
}

interface Stepper {
  readonly stepM: number;
  /** Absent: the reader. */
  readonly who?: Sleeper;
}

function stepper(camp: Camp, { stepM }: FurnitureWish): Stepper | undefined {
  if (stepM !== undefined) return { stepM };
  const who = camp.sleepers.find(({ leads }) => leads) ?? camp.sleepers[0];
  return who === undefined ? undefined : { stepM: who.stepM, who };
}

/** Metres over the bar; steps beside them, or beneath them on a narrow map. */
function scaleBar([x, top]: XY, height: number, view: MapView, by: Stepper | undefined, words: Words): Part {
  const metres = [1, 2, 5, 10, 20, 50, 100, 200].findLast((length) => length * view.pxPerM <= 190) ?? 1;
  const length = metres * view.pxPerM;
  const lines = scaleLines(metres, by, height > 60);
  const widths = lines.map((item) => words.measure(words.labels(item), TYPE.note, 600));
  const width = Math.min(Math.max(length, ...widths), view.widthPx - (height > 60 ? 150 : 250));
  const base = top + height - 14;
  const ink = { stroke: "ink", width: 1.75, cap: "butt" } as const;
  const parts = metres === 1 || metres % 10 === 0 ? 2 : metres;
  const ticks = Array.from({ length: parts + 1 }, (_, index) => {
    const at = x + (length * index) / parts;
    const tall = index % parts === 0 ? 10 : 5;
    return line(
      [
        [at, base],
        [at, base - tall],
      ],
      ink,
    );
  });
  const said = lines.map((item, index) =>
    text(item, [x, top + 24 + index * 19], { size: TYPE.note, weight: 600, maxWidth: width }),
  );
  return {
    items: [
      ...said,
      line(
        [
          [x, base],
          [x + length, base],
        ],
        ink,
      ),
      ...ticks,
    ],
    width,
  };
}

function scaleLines(metres: number, by: Stepper | undefined, twoLines: boolean): TextItem[] {
  const length = quantity("length", metres, 0);
  if (by === undefined) return [length];
  const steps = quantity("steps", metres / by.stepM, 1);
  const told =
    by.who === undefined
      ? word("map.steps", { steps })
      : word("map.steps-of", { steps, name: name(by.who.name) });
  return twoLines ? [length, told] : [word("list.two", { first: length, rest: told })];
}

function northArrow([x, top]: XY, height: number): Part {
  const [tip, foot] = [top + height / 2 - 20, top + height / 2 + 20];
  const items = [
    line(
      [
        [x, foot],
        [x, tip + 8],
      ],
      { stroke: "ink", width: 3, cap: "butt" },
    ),
    polygon(
      [
        [x, tip],
        [x + 9, tip + 18],
        [x - 9, tip + 18],
      ],
      { fill: "ink" },
    ),
    text(word("map.north"), [x + 13, top + height / 2 + 6], { size: TYPE.note, weight: 700 }),
  ];
  return { items, width: 34 };
}

/** An arrow with feathers at the end the wind comes from; without its word on a narrow map. */
function wind([x, y]: XY, fromRad: number, narrow: boolean, words: Words): Part {
  const ink = { stroke: "ink", width: 2 } as const;
  const arrow = group(
    [
      line(
        [
          [0, -17],
          [0, 16],
        ],
        ink,
      ),
      line(
        [
          [-6, 9],
          [0, 17],
          [6, 9],
        ],
        ink,
      ),
      line(
        [
          [0, -16],
          [8, -20],
        ],
        ink,
      ),
      line(
        [
          [0, -9],
          [8, -13],
        ],
        ink,
      ),
    ],
    { class: "ns-wind", move: [x + 18, y], turnRad: fromRad, title: word("map.wind") },
  );
  if (narrow) return { items: [arrow], width: 36 };
  const label = word("map.wind");
  return {
    items: [arrow, text(label, [x + 42, y + 6], { size: TYPE.note, weight: 600 })],
    width: 42 + words.measure(words.labels(label), TYPE.note, 600),
  };
}
