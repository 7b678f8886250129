import type { Verdict } from "@nightspan/core";
import type { ColourToken } from "../colour/tokens.ts";
import { word } from "../scene/names.ts";
import type { Item, PathStep, Scene, XY } from "../scene/scene.ts";
import { circle, group, line, path, polygon } from "../scene/shapes.ts";

/** Width over height of a verdict plate. */
export const PLATE_ASPECT = 1.86;

/**
 * The plate of a verdict about `at`, `height` high: round ends and a whole line, pointed ends and a line that
 * opens round a ring, square ends and a line parted by a slash. It never stands without its word.
 */
export function verdictPlateItem(verdict: Verdict, at: XY, height: number): Item {
  const parts = { clear, "look-again": lookAgain, "do-not-hang": doNotHang } as const;
  return group(parts[verdict](), { class: `ns-verdict ns-${verdict}`, move: at, scale: height / HEIGHT });
}

/** The plate alone, for a page that sets the word beside it. */
export function verdictPlate(verdict: Verdict, heightPx = 32): Scene {
  const [width, height] = [Math.ceil(heightPx * PLATE_ASPECT + 4), heightPx + 4];
  return {
    name: `verdict-${verdict}`,
    size: { width, height, unit: "px" },
    title: word(`verdict.${verdict}`),
    desc: word(`verdict.${verdict}`),
    ground: "none",
    items: [verdictPlateItem(verdict, [width / 2, height / 2], heightPx)],
  };
}

/** Drawn on a field 56 by 30. */
const HEIGHT = 30;
const [W, H] = [26.5, 13.5];
const POST = 14.5;

function clear(): Item[] {
  const round: PathStep[] = [
    ["M", -W + H, -H],
    ["L", W - H, -H],
    ["A", H, 0, 1, W - H, H],
    ["L", -W + H, H],
    ["A", H, 0, 1, -W + H, -H],
    ["Z"],
  ];
  return [
    path(round, { fill: "panel", stroke: "clear", width: 2.75 }),
    ...posts("clear"),
    path(
      [
        ["M", -POST, -6],
        ["Q", 0, 10, POST, -6],
      ],
      { fill: "none", stroke: "clear", width: 2.75 },
    ),
  ];
}

function lookAgain(): Item[] {
  const pointed: XY[] = [
    [-W - 1, 0],
    [-W + 7, -H],
    [W - 7, -H],
    [W + 1, 0],
    [W - 7, H],
    [-W + 7, H],
  ];
  const half = (side: 1 | -1): Item =>
    path(
      [
        ["M", side * POST, -6],
        ["Q", side * 10, 1, side * 4.6, 2.5],
      ],
      { fill: "none", stroke: "look-ink", width: 2.75 },
    );
  return [
    polygon(pointed, { fill: "look", stroke: "ink", width: 2.75, join: "miter" }),
    ...posts("look-ink"),
    half(-1),
    half(1),
    circle([0, 3], 4.6, { fill: "none", stroke: "look-ink", width: 2.75 }),
  ];
}

function doNotHang(): Item[] {
  const square: XY[] = [
    [-W, -H],
    [W, -H],
    [W, H],
    [-W, H],
  ];
  const half = (side: 1 | -1): Item =>
    path(
      [
        ["M", side * POST, -6],
        ["Q", side * 10, 1, side * 6.5, 2],
      ],
      { fill: "none", stroke: "on-action", width: 2.75 },
    );
  return [
    polygon(square, { fill: "no", stroke: "no", width: 2.75, join: "miter" }),
    ...posts("on-action"),
    half(-1),
    half(1),
    line(
      [
        [-5, 9.5],
        [5, -9.5],
      ],
      { stroke: "on-action", width: 4.5 },
    ),
  ];
}

function posts(ink: ColourToken): Item[] {
  return [-POST, POST].map((x) =>
    line(
      [
        [x, -8],
        [x, 8.5],
      ],
      { stroke: ink, width: 3.5 },
    ),
  );
}
