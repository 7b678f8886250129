import type { Item, Scene, XY } from "../scene/scene.ts";
import { circle, group, line, path } from "../scene/shapes.ts";
import { word } from "../scene/names.ts";
import { berthLeaf, numberPlate, tarpHexagon } from "../map/berth-symbols.ts";
import { keepOutCircle } from "../map/hazard-symbols.ts";
import { storeShelf } from "./store-shelf.ts";
import { treeSymbol } from "../map/tree-symbols.ts";

export type Door = "two-trees" | "wood" | "store";

const WIDTH = 354;
const HEIGHT = 120;

/** The picture on a door, each in its own projection: elevation, plan, shelf. */
export function doorPicture(door: Door): Scene {
  const draw = { "two-trees": elevation, wood: plan, store: storeShelf } as const;
  return {
    name: `door-${door}`,
    size: { width: WIDTH, height: HEIGHT, unit: "px" },
    title: word(`figure.${door}`),
    desc: word(`figure.${door}-desc`),
    ground: door === "wood" ? "wood" : "none",
    items: draw[door](),
  };
}

function elevation(): Item[] {
  const trunk = (x: number, half: number, base: number): Item =>
    path(
      [
        ["M", x - half, 0],
        ["L", x - half - 1, base - 16],
        ["Q", x - half - 1, base - 3, x - half - 8, base + 4],
        ["L", x + half + 8, base + 4],
        ["Q", x + half + 1, base - 3, x + half + 1, base - 16],
        ["L", x + half, 0],
        ["Z"],
      ],
      { fill: "ink" },
    );
  const strap = { stroke: "strap", width: 4, cap: "butt" } as const;
  return [
    path([["M", 0, 104], ["C", 110, 110, 190, 95, 354, 97], ["L", 354, 120], ["L", 0, 120], ["Z"]], {
      fill: "ink",
    }),
    trunk(73, 13, 104),
    trunk(281, 10, 97),
    path([["M", 126, 44], ["Q", 176, 84, 232, 40], ["Q", 180, 118, 126, 44], ["Z"]], { fill: "cloth-tint" }),
    line(
      [
        [86, 24],
        [127, 45],
      ],
      strap,
    ),
    line(
      [
        [271, 16],
        [231, 41],
      ],
      strap,
    ),
    path(
      [
        ["M", 158, 67],
        ["C", 172, 72, 198, 70, 217, 44],
        ["L", 223, 50],
        ["C", 206, 82, 178, 84, 154, 76],
        ["Z"],
      ],
      {
        fill: "ink",
        stroke: "ink",
        width: 4,
      },
    ),
    circle([149, 60], 8, { fill: "ink" }),
    path(
      [
        ["M", 127, 44],
        ["Q", 178, 120, 231, 40],
      ],
      { fill: "none", stroke: "cloth", width: 4.5 },
    ),
  ];
}

function plan(): Item[] {
  const berth = (head: XY, foot: XY, id: string): Item => {
    const [dx, dy] = [foot[0] - head[0], foot[1] - head[1]];
    const aside = (share: number, by: number): XY => [
      head[0] + dx * share - dy * by,
      head[1] + dy * share + dx * by,
    ];
    const hexagon = [head, aside(0.25, -0.4), aside(0.75, -0.4), foot, aside(0.75, 0.4), aside(0.25, 0.4)];
    const middle: XY = [head[0] + dx / 2, head[1] + dy / 2];
    return group([
      tarpHexagon(hexagon, 26, "none"),
      berthLeaf({ head, foot, cloth: [0.2, 0.8] }, 27),
      treeSymbol("looked-at", head, 7),
      treeSymbol("looked-at", foot, 6),
      numberPlate(id, middle, "clear", 20),
    ]);
  };
  return [
    path(
      [
        ["M", 0, 46],
        ["C", 70, 36, 120, 66, 190, 58],
        ["C", 250, 50, 290, 20, 354, 14],
      ],
      { fill: "none", stroke: "rule", width: 0.75 },
    ),
    path(
      [
        ["M", 0, 100],
        ["C", 90, 78, 150, 100, 230, 92],
        ["C", 290, 84, 320, 60, 354, 64],
      ],
      { fill: "none", stroke: "rule", width: 0.75 },
    ),
    keepOutCircle([322, 50], 50, { rim: "no", fill: "no-tint" }),
    treeSymbol("dead", [322, 50], 13),
    berth([18, 36], [122, 58], "1"),
    berth([152, 78], [254, 52], "2"),
    ...[
      [134, 14],
      [124, 102],
    ].map(([x = 0, y = 0]) => treeSymbol("not-looked-at", [x, y], 5.5)),
    treeSymbol("looked-at", [8, 108], 6),
    treeSymbol("looked-at", [266, 104], 7),
    treeSymbol("thin", [10, 12], 2),
    treeSymbol("thin", [248, 16], 2),
  ];
}
