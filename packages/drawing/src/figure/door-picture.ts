import type { Item, Scene, XY } from "../scene/scene.ts";
import { circle, group, line, path, polygon } from "../scene/shapes.ts";
import { word } from "../scene/names.ts";
import { berthLeaf, numberPlate, tarpHexagon } from "../map/berth-symbols.ts";
import { keepOutCircle } from "../map/hazard-symbols.ts";
import { treeSymbol } from "../map/tree-symbols.ts";

export type Door = "two-trees" | "wood" | "store";

const WIDTH = 354;
const HEIGHT = 120;

/** The picture on a door, each in its own projection: elevation, plan, shelf. */
export function doorPicture(door: Door): Scene {
  const draw = { "two-trees": elevation, wood: plan, store: shelf } as const;
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

function shelf(): Item[] {
  const ink = { fill: "none", stroke: "ink", width: 2.25, join: "round" } as const;
  return [
    ...person(),
    line(
      [
        [94, 5],
        [94, 116],
      ],
      { stroke: "ink", width: 3.5, cap: "butt" },
    ),
    line(
      [
        [338, 5],
        [338, 116],
      ],
      { stroke: "ink", width: 3.5, cap: "butt" },
    ),
    line(
      [
        [94, 54],
        [338, 54],
      ],
      { stroke: "ink", width: 3, cap: "butt" },
    ),
    line(
      [
        [94, 112],
        [338, 112],
      ],
      { stroke: "ink", width: 3, cap: "butt" },
    ),
    ...[108, 170].map((x) => rolled(x, 26)),
    ...[126, 166].flatMap((x) =>
      [15, 7].map((r) => circle([x, 96], r, { fill: "none", stroke: "strap", width: 3.5 })),
    ),
    bag(238, 18, 36, 35, true),
    bag(286, 24, 30, 29, false),
    polygon(
      [
        [196, 111],
        [219, 74],
        [242, 111],
      ],
      ink,
    ),
    line(
      [
        [219, 75],
        [219, 111],
      ],
      ink,
    ),
    group([
      roundBox(258, 82, 62, 28, 5, ink),
      line(
        [
          [275, 82],
          [275, 110],
        ],
        ink,
      ),
      line(
        [
          [304, 82],
          [304, 110],
        ],
        ink,
      ),
    ]),
  ];
}

function person(): Item[] {
  return [
    circle([44, 19], 11.5, { fill: "ink" }),
    path(
      [
        ["M", 33, 34],
        ["L", 54, 34],
        ["C", 60, 44, 66, 52, 80, 46],
        ["L", 83, 52],
        ["C", 70, 62, 60, 58, 57, 54],
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
  const ink = { fill: "none", stroke: "ink", width: 2.25 } as const;
  return group([
    roundBox(x, y, width, height, 6, ink),
    ...(lid
      ? [
          line(
            [
              [x, y + 12],
              [x + width, y + 12],
            ],
            ink,
          ),
        ]
      : []),
  ]);
}

function roundBox(x: number, y: number, width: number, height: number, r: number, paint: object): Item {
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
