import { TYPE_MM } from "../colour/tokens.ts";
import { word } from "../scene/names.ts";
import type { Item, PathStep, XY } from "../scene/scene.ts";
import { circle, group, line, path } from "../scene/shapes.ts";
import type { Words } from "../scene/text-item.ts";
import { wrapped } from "../scene/wrapped.ts";

/** Pictures are drawn 24 wide and 13 high. */
const SCALE = 0.56;

const THIN = { fill: "none", stroke: "ink", width: 0.5 } as const;
const BODY = { fill: "none", stroke: "ink", width: 1.9 } as const;

/** Getting in, in three pictures: sit in the middle, lie back, feet in and turn across. */
export function entryPictures([x, y]: XY, width: number, words: Words): Item[] {
  const each = width / 3;
  const pictures = [sitting, lyingBack, across];
  return pictures.flatMap((draw, index) => {
    const centre = x + each * (index + 0.5);
    const key = (["back.entry-1", "back.entry-2", "back.entry-3"] as const)[index] ?? "back.entry-1";
    const caption = wrapped(
      word(key),
      [centre, y + 11.6],
      {
        size: TYPE_MM.note,
        weight: 500,
        width: each - 1.5,
        leading: TYPE_MM.note * 1.14,
        anchor: "middle",
        mostLines: 2,
      },
      words,
    );
    return [group(draw(), { move: [centre, y], scale: SCALE, class: "ns-entry" }), ...caption.items];
  });
}

/** Cloth end to end: seen from the side. */
function cloth(sag: number): PathStep[] {
  return [
    ["M", -12, 0.5],
    ["Q", 0, sag, 12, 0.5],
  ];
}

function sitting(): Item[] {
  return [
    path(cloth(13), { ...THIN, width: 1.1 }),
    circle([0, -2.4], 1.5, { fill: "ink" }),
    line(
      [
        [0, 0.4],
        [0, 6],
      ],
      BODY,
    ),
    line(
      [
        [0, 6.4],
        [-1.1, 7.4],
        [-1.1, 12],
      ],
      { ...BODY, width: 1.4 },
    ),
    line(
      [
        [0, 6.4],
        [1.1, 7.4],
        [1.1, 12],
      ],
      { ...BODY, width: 1.4 },
    ),
    line(
      [
        [-12, 12.6],
        [12, 12.6],
      ],
      THIN,
    ),
  ];
}

function lyingBack(): Item[] {
  return [
    path(cloth(13), { ...THIN, width: 1.1 }),
    circle([-5, 1.6], 1.5, { fill: "ink" }),
    line(
      [
        [-3.4, 3.4],
        [0.4, 5.6],
      ],
      BODY,
    ),
    line(
      [
        [0.4, 5.6],
        [2.2, 7.6],
        [2, 12],
      ],
      { ...BODY, width: 1.4 },
    ),
    line(
      [
        [-12, 12.6],
        [12, 12.6],
      ],
      THIN,
    ),
  ];
}

/** From above: the body across the line of the trees. */
function across(): Item[] {
  return [
    path([["M", -12, 5.5], ["Q", 0, -1.6, 12, 5.5], ["Q", 0, 12.6, -12, 5.5], ["Z"]], {
      ...THIN,
      width: 0.8,
    }),
    line(
      [
        [-12, 5.5],
        [12, 5.5],
      ],
      { ...THIN, dash: [0.8, 0.6], cap: "butt" },
    ),
    circle([-5.6, 4.1], 1.3, { fill: "ink" }),
    line(
      [
        [-3.8, 4.5],
        [5.6, 7.1],
      ],
      BODY,
    ),
  ];
}
