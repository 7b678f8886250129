import type { Camp, Sleeper } from "@nightspan/core";
import { TYPE } from "../colour/tokens.ts";
import { name, quantity, word } from "../scene/names.ts";
import type { Item, XY } from "../scene/scene.ts";
import { box, group, line, polygon, text } from "../scene/shapes.ts";
import type { TextItem, Words } from "../scene/text-item.ts";
import type { Box } from "./label-placement.ts";
import type { MapView } from "./map-view.ts";

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
const HEIGHT = 58;

/** Scale in metres and steps, north, wind: in a box at the lower left. A sketch has no scale to show. */
export function furniture(camp: Camp, view: MapView, wish: FurnitureWish, words: Words): Furniture {
  const parts: Item[] = [];
  const [left, top] = [12, view.heightPx - 12 - HEIGHT];
  let x = left + PAD;
  if (wish.sketch) {
    const label = word("map.sketch");
    parts.push(text(label, [x, top + 35], { size: TYPE.note, weight: 600 }));
    x += words.measure(words.labels(label), TYPE.note, 600) + PAD;
  } else {
    const drawn = scaleBar([x, top], view, stepper(camp, wish), words);
    parts.push(...drawn.items);
    x += drawn.width + PAD;
  }
  if (wish.northKnown) {
    parts.push(...northArrow([x + 10, top]));
    x += 34 + PAD;
  }
  const from = camp.night?.windFromRad;
  if (from !== undefined && wish.northKnown) {
    parts.push(windArrow([x + 16, top + HEIGHT / 2], from));
    const label = word("map.wind");
    parts.push(text(label, [x + 38, top + 35], { size: TYPE.note, weight: 600 }));
    x += 38 + words.measure(words.labels(label), TYPE.note, 600) + PAD;
  }
  const frame = { fill: "panel", stroke: "ink", width: 1.5, join: "miter" } as const;
  const width = x - left;
  return {
    items: [group([box([left, top], width, HEIGHT, frame), ...parts], { class: "ns-furniture" })],
    box: { left: left - 4, top: top - 4, right: left + width + 4, bottom: view.heightPx },
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

function scaleBar(
  [x, top]: XY,
  view: MapView,
  by: Stepper | undefined,
  words: Words,
): { items: Item[]; width: number } {
  const metres = [1, 2, 5, 10, 20, 50, 100, 200].findLast((length) => length * view.pxPerM <= 190) ?? 1;
  const length = metres * view.pxPerM;
  const label = scaleLabel(metres, by);
  const width = Math.max(length, words.measure(words.labels(label), TYPE.note, 600));
  const base = top + HEIGHT - 14;
  const ink = { stroke: "ink", width: 1.75, cap: "butt" } as const;
  const parts = metres === 1 || metres % 10 === 0 ? 2 : metres;
  const ticks = Array.from({ length: parts + 1 }, (_, index) => {
    const at = x + (length * index) / parts;
    return line(
      [
        [at, base],
        [at, base - (index % parts === 0 ? 10 : 5)],
      ],
      ink,
    );
  });
  return {
    items: [
      text(label, [x, top + 24], { size: TYPE.note, weight: 600 }),
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

function scaleLabel(metres: number, by: Stepper | undefined): TextItem {
  const length = quantity("length", metres, 0);
  if (by === undefined) return length;
  const steps = quantity("steps", metres / by.stepM, 1);
  const told =
    by.who === undefined
      ? word("map.steps", { steps })
      : word("map.steps-of", { steps, name: name(by.who.name) });
  return word("list.two", { first: length, rest: told });
}

function northArrow([x, top]: XY): Item[] {
  const [tip, foot] = [top + 9, top + HEIGHT - 9];
  return [
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
    text(word("map.north"), [x + 13, top + 35], { size: TYPE.note, weight: 700 }),
  ];
}

/** An arrow with feathers at the end the wind comes from. */
function windArrow(at: XY, fromRad: number): Item {
  const ink = { stroke: "ink", width: 2 } as const;
  return group(
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
    { class: "ns-wind", move: at, turnRad: fromRad },
  );
}
