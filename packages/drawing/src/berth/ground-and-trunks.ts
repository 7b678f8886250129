import type { Item, PathStep, XY } from "../scene/scene.ts";
import { group, line, path } from "../scene/shapes.ts";
import type { BerthFacts, EndFacts } from "./berth-facts.ts";
import { onPaper, type SideFrame } from "./side-frame.ts";

/** The ground from edge to edge, straight between the trees, level beyond; its cut face hatched. */
export function groundLine(facts: BerthFacts, frame: SideFrame): Item {
  const { spanM, hang } = facts.berth;
  const [head, foot] = [onPaper(frame, [0, 0]), onPaper(frame, [spanM, hang.shape.groundFootZM])];
  const points: readonly XY[] = [[frame.leftX, head[1]], head, foot, [frame.rightX, foot[1]]];
  const deep = 15 * frame.lines.px;
  const strokes: PathStep[] = [];
  for (let x = frame.leftX + deep; x < frame.rightX; x += 8 * frame.lines.px) {
    const y = heightOf(points, x);
    strokes.push(["M", x, y], ["L", x - deep, y + deep]);
  }
  return group(
    [
      path(strokes, { fill: "none", stroke: "rule", width: frame.lines.dimension }),
      line(points, { stroke: "ink", width: frame.lines.trunk, cap: "butt" }),
    ],
    { class: "ns-earth" },
  );
}

function heightOf(points: readonly XY[], x: number): number {
  const index = Math.max(
    1,
    points.findIndex(([px]) => px >= x),
  );
  const [[ax, ay], [bx, by]] = [points[index - 1] ?? [0, 0], points[index] ?? [1, 0]];
  return bx === ax ? ay : ay + ((by - ay) * (x - ax)) / (bx - ax);
}

export interface TrunkPlace {
  readonly xM: number;
  readonly groundZM: number;
}

/** A trunk to its diameter, flared at the root, broken off at the top by a plain tear. */
export function trunk(end: EndFacts, { xM, groundZM }: TrunkPlace, frame: SideFrame): Item {
  const r = Math.max(end.dbhM / 2, 0.03) * frame.scale;
  const [x, base] = onPaper(frame, [xM, groundZM]);
  const [, top] = onPaper(frame, [xM, frame.topZM]);
  const [flare, tear] = [Math.min(r * 0.6, 0.12 * frame.scale), Math.min(r * 0.5, 12 * frame.lines.px)];
  const knee = base - Math.min(0.3 * frame.scale, (base - top) * 0.3);
  const outline: PathStep[] = [
    ["M", x - r - flare, base],
    ["Q", x - r, base - flare * 0.6, x - r, knee],
    ["L", x - r * 0.94, top + tear],
    ["L", x - r * 0.55, top],
    ["L", x - r * 0.05, top + tear],
    ["L", x + r * 0.42, top],
    ["L", x + r * 0.94, top + tear * 0.7],
    ["L", x + r, knee],
    ["Q", x + r, base - flare * 0.6, x + r + flare, base],
  ];
  return group(
    [
      path(outline, { fill: "panel", stroke: "ink", width: frame.lines.trunk }),
      ...(r > 10 * frame.lines.px ? [barkStrokes(x, r, base, top, frame)] : []),
    ],
    { class: "ns-trunk", ref: `tree/${end.id}` },
  );
}

function barkStrokes(x: number, r: number, base: number, top: number, frame: SideFrame): Item {
  const length = Math.min(48 * frame.lines.px, (base - top) * 0.14);
  const steps = [
    [-0.15, 0.2],
    [0.42, 0.34],
    [0.2, 0.72],
    [-0.4, 0.86],
  ].flatMap(([aside = 0, share = 0]): PathStep[] => {
    const [bx, by] = [x + r * aside, base + (top - base) * share];
    return [
      ["M", bx, by],
      ["Q", bx + 3 * frame.lines.px, by - length / 2, bx, by - length],
    ];
  });
  return path(steps, { fill: "none", stroke: "rule", width: frame.lines.dimension });
}
