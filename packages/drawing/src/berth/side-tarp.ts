import type { BerthTarp, PlannedBerth, Point2, WetMap } from "@nightspan/core";
import type { Item, PathStep, XY } from "../scene/scene.ts";
import { group, line, path, polygon } from "../scene/shapes.ts";
import { dripShare, drop } from "../tarp/tarp-above.ts";
import { REACHES } from "../tarp/wet-strokes.ts";
import { onPaper, type SideFrame } from "./side-frame.ts";

/** What of a tarp is seen from the side: what lies behind the hammock, and what before it. */
export interface SideTarp {
  readonly behind: readonly Item[];
  readonly before: readonly Item[];
}

/** The tarp over a berth from the side: the far edge thin, the near one dashed, its ridge line, drip lines, rain. */
export function sideTarp(berth: PlannedBerth, frame: SideFrame): SideTarp {
  const { tarp } = berth;
  if (tarp === undefined) return { behind: [], before: [] };
  const [near, far] = [lowestM(tarp, "right"), lowestM(tarp, "left")];
  const bothSeen = Math.abs(near - far) > SEEN_APART_M;
  const outline = (side: "left" | "right", dashed: boolean): Item[] =>
    tarp.panels
      .filter(({ name }) => name === side)
      .map(({ corners }) =>
        polygon(
          corners.map(([x, , z]) => onPaper(frame, [x, z])),
          {
            fill: "none",
            stroke: "ink",
            join: "miter",
            cap: "butt",
            width: dashed ? frame.lines.tarp : frame.lines.dimension,
            ...(dashed ? { dash: [9 * frame.lines.px, 4.5 * frame.lines.px] } : {}),
          },
        ),
      );
  return {
    behind: [
      ...rain(tarp, berth, frame),
      ...(bothSeen ? [group(outline("left", false), { class: "ns-tarp-far" })] : []),
    ],
    before: [
      group([ridgeLine(tarp, berth, frame), ...outline("right", true)], { class: "ns-tarp" }),
      ...dripLines(tarp, berth, frame),
    ],
  };
}

/** Edges nearer to one another than this fall together on the paper [m]. */
const SEEN_APART_M = 0.08;

function lowestM({ panels }: BerthTarp, side: "left" | "right"): number {
  const own = panels.filter(({ name }) => name === side).flatMap(({ corners }) => corners);
  return Math.min(...own.map(([, , z]) => z));
}

/** Height of the ridge line where it is highest, above the head tree's ground [m]. */
export function ridgeTopM({ tarp, hang }: PlannedBerth): number | undefined {
  if (tarp === undefined) return undefined;
  return Math.max(tarp.ridge.headTieM, tarp.ridge.footTieM + hang.shape.groundFootZM);
}

function ridgeLine({ ridge }: BerthTarp, { spanM, hang }: PlannedBerth, frame: SideFrame): Item {
  const [from, to] = [
    onPaper(frame, [0, ridge.headTieM]),
    onPaper(frame, [spanM, ridge.footTieM + hang.shape.groundFootZM]),
  ];
  const dip = 2 * ridge.sagM * frame.scale;
  return path(
    [
      ["M", from[0], from[1]],
      ["Q", (from[0] + to[0]) / 2, (from[1] + to[1]) / 2 + dip, to[0], to[1]],
    ],
    { fill: "none", stroke: "ink", width: frame.lines.guy, class: "ns-tarp-ridge" },
  );
}

/** A string that hangs from the strap, and the drop that leaves it. */
function dripLines(tarp: BerthTarp, { hang }: PlannedBerth, frame: SideFrame): Item[] {
  const { shape } = hang;
  const ends = [
    { at: tarp.drip.head, strap: hang.head, gather: shape.headGather, anchor: shape.headAnchor },
    { at: tarp.drip.foot, strap: hang.foot, gather: shape.footGather, anchor: shape.footAnchor },
  ];
  return ends.map(({ at, strap, gather, anchor }) => {
    const share = dripShare(at, strap.strapLengthM);
    const place: Point2 = [
      gather[0] + (anchor[0] - gather[0]) * share,
      gather[1] + (anchor[1] - gather[1]) * share,
    ];
    const [x, y] = onPaper(frame, place);
    const { px } = frame.lines;
    return group(
      [
        line(
          [
            [x, y],
            [x, y + 22 * px],
          ],
          { stroke: "ink", width: frame.lines.guy * 1.3, cap: "butt" },
        ),
        drop([x, y + 28 * px], 3.4 * px),
      ],
      { class: "ns-drip-line" },
    );
  });
}

/** Rain over the middle of the berth, in slanted strokes as far as it reaches; dry ground is left blank. */
function rain(tarp: BerthTarp, berth: PlannedBerth, frame: SideFrame): Item[] {
  if (tarp.wetMap === undefined) return [];
  const shares = alongMiddle(tarp.wetMap);
  const every = Math.max(1, Math.round((14 * frame.lines.px) / (tarp.wetMap.cellM * frame.scale)));
  const steps = shares.flatMap(({ xM, share }, index): PathStep[] => {
    if (index % every !== 0 || share < REACHES || xM < 0.25 || xM > berth.spanM - 0.25) return [];
    return [0, 1, 2].flatMap((row): PathStep[] => {
      if (share < 0.3 && row > 0) return [];
      const [x, y] = onPaper(frame, [xM, tarp.wetMap?.zM ?? 0]);
      const from: XY = [x + (row % 2) * 6 * frame.lines.px, y - row * 0.34 * frame.scale];
      return [
        ["M", from[0] + 0.07 * frame.scale, from[1] - 0.2 * frame.scale],
        ["L", from[0], from[1]],
      ];
    });
  });
  if (steps.length === 0) return [];
  const ink = { fill: "none", stroke: "water", width: frame.lines.guy * 1.2, class: "ns-rain" } as const;
  return [path(steps, ink)];
}

/** Half the width of a hammock [m]. */
const HALF_M = 0.45;

/** The share of rain along the berth, mean over the hammock's width. */
function alongMiddle({ columns, rows, cellM, fromXM, fromYM, shares }: WetMap) {
  const middle = Array.from({ length: rows }, (_, row) => row).filter(
    (row) => Math.abs(fromYM + (row + 0.5) * cellM) <= HALF_M,
  );
  return Array.from({ length: columns }, (_, column) => {
    const sum = middle.reduce((total, row) => total + (shares[row * columns + column] ?? 0), 0);
    return { xM: fromXM + (column + 0.5) * cellM, share: middle.length === 0 ? 0 : sum / middle.length };
  });
}
