import type { Verdict } from "@nightspan/core";
import { LINE } from "../colour/tokens.ts";
import { name } from "../scene/names.ts";
import type { Item, Paint, XY } from "../scene/scene.ts";
import { group, line, path, polygon, text } from "../scene/shapes.ts";
import { PLATE_PAINT, plateOutline } from "../figure/plate-shape.ts";

/** Half width of the cloth seen from above [m]. */
export const HALF_CLOTH_M = 0.43;

export interface BerthEnds {
  readonly head: XY;
  readonly foot: XY;
  /** Shares of the way at which the cloth begins and ends. */
  readonly cloth: readonly [number, number];
}

/** A berth from above, to scale: straps, the leaf of the cloth, pillow at the head, two bars at the feet. */
export function berthLeaf(ends: BerthEnds, pxPerM: number): Item {
  const { length, frame } = frameOf(ends);
  const [from, to] = [ends.cloth[0] * length, ends.cloth[1] * length];
  const half = HALF_CLOTH_M * pxPerM;
  const middle = (from + to) / 2;
  const bulge = half * 2;
  const strap = { stroke: "strap", width: LINE.strap, cap: "butt" } as const;
  return group(
    [
      line(
        [
          [0, 0],
          [from, 0],
        ],
        strap,
      ),
      line(
        [
          [to, 0],
          [length, 0],
        ],
        strap,
      ),
      path([["M", from, 0], ["Q", middle, -bulge, to, 0], ["Q", middle, bulge, from, 0], ["Z"]], {
        fill: "cloth-tint",
        stroke: "cloth",
        width: 3,
      }),
      ...headAndFeet(from, to, half),
    ],
    { class: "ns-leaf", ...frame },
  );
}

/** A berth where there is no room for the leaf: line, pillow, two bars. */
export function berthSpan(ends: BerthEnds): Item {
  const { length, frame } = frameOf(ends);
  return group(
    [
      line(
        [
          [0, 0],
          [length, 0],
        ],
        { stroke: "strap", width: LINE.strap, cap: "butt" },
      ),
      line(
        [
          [length * 0.16, 0],
          [length * 0.84, 0],
        ],
        { stroke: "cloth", width: 5, cap: "butt" },
      ),
      ...headAndFeet(length * 0.12, length * 0.88, 10),
    ],
    { class: "ns-span", ...frame },
  );
}

/** A berth kept free: two posts and an empty dashed line. */
export function spareSpan(ends: BerthEnds): Item {
  const { length, frame } = frameOf(ends);
  const bar = (x: number): Item =>
    line(
      [
        [x, -8],
        [x, 8],
      ],
      { stroke: "cloth", width: 2.25, cap: "butt" },
    );
  const dashed = { stroke: "cloth", width: 2.25, dash: [7, 5], cap: "butt" } as const;
  return group(
    [
      line(
        [
          [0, 0],
          [length, 0],
        ],
        dashed,
      ),
      bar(length * ends.cloth[0]),
      bar(length * ends.cloth[1]),
    ],
    { class: "ns-span", ...frame },
  );
}

function frameOf({ head, foot }: BerthEnds): {
  readonly length: number;
  readonly frame: { readonly move: XY; readonly turnRad: number };
} {
  const [dx, dy] = [foot[0] - head[0], foot[1] - head[1]];
  return { length: Math.hypot(dx, dy), frame: { move: head, turnRad: Math.atan2(dy, dx) } };
}

/** Pillow and bars across the line, within the leaf. */
function headAndFeet(from: number, to: number, half: number): Item[] {
  const length = to - from;
  const pillow = from + length * 0.2;
  const r = Math.min(half * 0.56, length * 0.13);
  const bars = [from + length * 0.77, from + length * 0.84];
  return [
    path([["M", pillow, -r], ["A", r, 0, 0, pillow, r], ["Z"]], { fill: "cloth", class: "ns-head" }),
    ...bars.map((x, index) => {
      const reach = half * (index === 0 ? 0.6 : 0.44);
      return line(
        [
          [x, -reach],
          [x, reach],
        ],
        { stroke: "cloth", width: 2.25, cap: "butt", class: "ns-feet" },
      );
    }),
  ];
}

/** The hexagon kept for tarp and lines: dashed edge, thin lines to open pegs. */
export function tarpHexagon(corners: readonly XY[], pxPerM: number, fill: Paint["fill"]): Item {
  const centre: XY = [mean(corners.map(([x]) => x)), mean(corners.map(([, y]) => y))];
  const sides = corners.filter((_, index) => index % 3 !== 0);
  return group(
    [
      polygon(corners, {
        fill: fill ?? "none",
        stroke: "ink",
        width: 1.75,
        dash: [10.5, 5.25],
        cap: "butt",
      }),
      ...sides.flatMap((corner) => peg(corner, centre, pxPerM)),
    ],
    { class: "ns-tarp" },
  );
}

/** Length of a guy line beyond the hexagon [m]. */
const GUY_M = 0.75;

function peg([x, y]: XY, [cx, cy]: XY, pxPerM: number): Item[] {
  const away = Math.atan2(y - cy, x - cx);
  const reach = GUY_M * pxPerM;
  const tip: XY = [x + reach * Math.cos(away), y + reach * Math.sin(away)];
  const size = Math.min(10, Math.max(6, 0.28 * pxPerM));
  const corner = (turn: number): XY => [
    tip[0] + size * Math.cos(away + turn),
    tip[1] + size * Math.sin(away + turn),
  ];
  return [
    line([[x, y], tip], { stroke: "ink", width: LINE.guy, class: "ns-guy" }),
    polygon([[tip[0], tip[1]], corner(0.55), corner(-0.55)], {
      fill: "paper",
      stroke: "ink",
      width: LINE.guy,
      join: "miter",
    }),
  ];
}

/** The number of a berth on the plate of its verdict. */
export function numberPlate(id: string, at: XY, verdict: Verdict, height = 22): Item {
  const width = plateWidth(id, height);
  const { fill, stroke, ink } = PLATE_PAINT[verdict];
  return group(
    [
      polygon(plateOutline(verdict, at, width, height), { fill, stroke, width: 1.75, join: "miter" }),
      text(name(id), [at[0], at[1] + height * 0.26], {
        size: height * 0.73,
        weight: 700,
        anchor: "middle",
        fill: ink,
        class: "ns-plate-number",
      }),
    ],
    { class: `ns-plate ns-${verdict}` },
  );
}

export function plateWidth(id: string, height: number): number {
  return Math.max(height * 1.15, height * (0.55 + 0.48 * id.length));
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
