import type { Item, Paint } from "../scene/scene.ts";
import { circle, group, path, stroke } from "../scene/shapes.ts";

const INK = { fill: "none", stroke: "ink", width: 2.25 } as const;

/** A person at a shelf of rolled hammocks, bags, coiled straps, a tarp and a pack. */
export function storeShelf(): Item[] {
  const post = { stroke: "ink", width: 3.5, cap: "butt" } as const;
  const board = { stroke: "ink", width: 3, cap: "butt" } as const;
  return [
    ...person(),
    stroke([94, 5, 94, 116], post),
    stroke([338, 5, 338, 116], post),
    stroke([94, 54, 338, 54], board),
    stroke([94, 112, 338, 112], board),
    ...[108, 170].map((x) => rolled(x, 26)),
    bag(238, 18, 36, 35, true),
    bag(286, 24, 30, 29, false),
    ...coil(126),
    ...coil(166),
    path([["M", 196, 111], ["L", 219, 74], ["L", 242, 111], ["Z"]], INK),
    stroke([219, 75, 219, 111], INK),
    roundBox(258, 82, 62, 28, 5, INK),
    stroke([275, 82, 275, 110], INK),
    stroke([304, 82, 304, 110], INK),
  ];
}

function coil(x: number): Item[] {
  return [15, 7].map((r) => circle([x, 96], r, { fill: "none", stroke: "strap", width: 3.5 }));
}

function person(): Item[] {
  return [
    circle([44, 19], 11.5, { fill: "ink" }),
    path(
      [
        ["M", 32, 40],
        ["Q", 32, 34, 38, 34],
        ["L", 50, 34],
        ["C", 58, 34, 60, 50, 79, 45],
        ["L", 83, 51],
        ["C", 72, 61, 62, 58, 57, 53],
        ["L", 54, 70],
        ["L", 53, 120],
        ["L", 46, 120],
        ["L", 44, 84],
        ["L", 42, 120],
        ["L", 34, 120],
        ["L", 32, 68],
        ["Z"],
      ],
      { fill: "ink", stroke: "ink", width: 2 },
    ),
  ];
}

function rolled(x: number, y: number): Item {
  const cloth = { fill: "cloth-tint", stroke: "cloth", width: 2.25 } as const;
  return group([roundBox(x, y, 52, 26, 13, cloth), circle([x + 13, y + 13], 6, cloth)]);
}

function bag(x: number, y: number, width: number, height: number, lid: boolean): Item {
  const body = roundBox(x, y, width, height, 6, INK);
  return group(lid ? [body, stroke([x, y + 12, x + width, y + 12], INK)] : [body]);
}

function roundBox(x: number, y: number, width: number, height: number, r: number, paint: Paint): Item {
  return path(
    [
      ["M", x + r, y],
      ["L", x + width - r, y],
      ["A", r, 0, 1, x + width, y + r],
      ["L", x + width, y + height - r],
      ["A", r, 0, 1, x + width - r, y + height],
      ["L", x + r, y + height],
      ["A", r, 0, 1, x, y + height - r],
      ["L", x, y + r],
      ["A", r, 0, 1, x + r, y],
      ["Z"],
    ],
    paint,
  );
}
