import type { KitItem } from "@nightspan/core";
import type { Item, Paint, XY } from "../scene/scene.ts";
import { box, circle, group, path, stroke } from "../scene/shapes.ts";

export type KitKind = KitItem["kind"];

const INK = { fill: "panel", stroke: "ink", width: 2, join: "round" } as const;
const CLOTH = { fill: "cloth-tint", stroke: "cloth", width: 2 } as const;

/** A sign for a kind of kit, standing on a board: its lower edge in the middle at `at`, 44 wide and 34 high. */
export function kitSign(kind: KitKind, at: XY, retired = false): Item {
  const dash = retired ? ({ dash: [3, 3], cap: "butt" } as const) : {};
  return group(SIGNS[kind](), { move: at, class: `ns-kit ns-kit-${kind}`, ...dash });
}

const SIGNS: Readonly<Record<KitKind, () => Item[]>> = {
  // A rolled cloth, seen a little from its end.
  hammock: () => [
    path(
      [["M", -12, -24], ["L", 16, -24], ["Q", 22, -24, 22, -12], ["Q", 22, 0, 16, 0], ["L", -12, 0], ["Z"]],
      CLOTH,
    ),
    circle([-12, -12], 12, CLOTH),
    circle([-12, -12], 4.5, { ...CLOTH, fill: "none" }),
  ],
  // Two turns of a coiled strap.
  suspension: () => coil("strap"),
  // A ridge with two sloping sides.
  tarp: () => [
    path([["M", -22, 0], ["L", 0, -30], ["L", 22, 0], ["Z"]], INK),
    stroke([0, -30, 0, 0], { stroke: "ink", width: 2, cap: "butt" }),
  ],
  // A mat, rolled, with two bands.
  under: () => [
    box([-22, -22], 44, 22, INK),
    stroke([-10, -22, -10, 0], { stroke: "ink", width: 2, cap: "butt" }),
    stroke([10, -22, 10, 0], { stroke: "ink", width: 2, cap: "butt" }),
  ],
  // A bag of cloth, its neck drawn together.
  over: () => [
    path(
      [
        ["M", -15, 0],
        ["L", -15, -20],
        ["Q", -15, -27, -5, -27],
        ["L", -8, -33],
        ["L", 8, -33],
        ["L", 5, -27],
        ["Q", 15, -27, 15, -20],
        ["L", 15, 0],
        ["Z"],
      ],
      INK,
    ),
    stroke([-5, -27, 5, -27], { stroke: "ink", width: 2 }),
  ],
  // A spool.
  cord: () => [
    box([-10, -24], 20, 18, { ...INK, fill: "none" }),
    ...[-20, -15, -10].map((y) => stroke([-10, y, 10, y], { stroke: "strap", width: 2 })),
    stroke([-15, -27, 15, -27], { stroke: "ink", width: 3.5 }),
    stroke([-15, -3, 15, -3], { stroke: "ink", width: 3.5 }),
  ],
  // A peg with its hook.
  peg: () => [
    path(
      [
        ["M", 6, -26],
        ["Q", 0, -34, -5, -27],
        ["L", -5, -6],
        ["L", -2, 0],
      ],
      { ...INK, fill: "none", width: 3 },
    ),
  ],
  // A ring that opens.
  connector: () => [
    path(
      [
        ["M", -7, -6],
        ["L", -7, -22],
        ["Q", -7, -31, 2, -31],
        ["Q", 9, -31, 9, -22],
        ["L", 9, -9],
        ["Q", 9, 0, 1, 0],
        ["Q", -7, 0, -7, -6],
      ],
      { ...INK, fill: "none", width: 3 },
    ),
  ],
  // A lamp on a band.
  light: () => [
    box([-12, -22], 24, 16, INK),
    circle([0, -14], 5, { ...INK, fill: "look" }),
    path(
      [
        ["M", -12, -18],
        ["Q", -22, -14, -16, 0],
        ["L", 16, 0],
        ["Q", 22, -14, 12, -18],
      ],
      { ...INK, fill: "none" },
    ),
  ],
  other: () => [box([-16, -26], 32, 26, INK), stroke([-16, -17, 16, -17], { stroke: "ink", width: 2 })],
};

function coil(ink: Paint["stroke"] & string): Item[] {
  return [16, 9].map((r) => circle([0, -16], r, { fill: "none", stroke: ink, width: 3.5 }));
}
