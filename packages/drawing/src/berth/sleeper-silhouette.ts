import type { Hang, Point2 } from "@nightspan/core";
import type { Item, XY } from "../scene/scene.ts";
import { circle, group, line, path } from "../scene/shapes.ts";
import { smoothLine } from "../map/smooth-line.ts";
import { onPaper, type SideFrame } from "./side-frame.ts";

/** How thick the one figure is drawn along the body, over the stature: a shape of no weight and no sex. */
const THICK = { neck: 0.062, shoulder: 0.118, waist: 0.1, hip: 0.112, knee: 0.07, ankle: 0.046 } as const;
const HEAD_R = 0.062;
const FOOT = 0.14;

/** The sleeper to scale, lying in the cloth: a plain figure from the body's own stations. */
export function sleeperLying({ shape }: Hang, statureM: number, frame: SideFrame): Item {
  const { head, shoulder, hip, knee, ankle } = shape.body;
  const neck = between(head, shoulder, 0.55);
  const waist = between(shoulder, hip, 0.55);
  const stations: readonly (readonly [Point2, number])[] = [
    [neck, THICK.neck],
    [shoulder, THICK.shoulder],
    [waist, THICK.waist],
    [hip, THICK.hip],
    [knee, THICK.knee],
    [ankle, THICK.ankle],
  ];
  const under = stations.map(([at]) => lifted(at, shape.cloth, 0.012));
  const over = stations.map(([at, thick]) => lifted(at, shape.cloth, 0.012 + thick * statureM));
  const [toe, heel] = [lifted(ankle, shape.cloth, FOOT * statureM), beyond(knee, ankle, 0.05 * statureM)];
  const toeTip = lifted(heel, shape.cloth, FOOT * statureM);
  const outline = smoothLine(
    [...under, lifted(heel, shape.cloth, 0.012), toeTip, lean(toe, toeTip), ...[...over].reverse()].map(
      (at) => onPaper(frame, at),
    ),
    true,
  );
  const crown = onPaper(frame, lifted(head, shape.cloth, 0.012 + HEAD_R * statureM));
  const arm = [
    [0.06, 0.62],
    [0.5, 0.34],
    [0.92, 0.5],
  ].map(([share = 0, up = 0]): XY => {
    const at = between(shoulder, hip, share);
    return onPaper(frame, lifted(at, shape.cloth, up * THICK.shoulder * statureM));
  });
  return group(
    [
      path(outline, { fill: "ink" }),
      circle(crown, HEAD_R * statureM * frame.scale, { fill: "ink" }),
      path(smoothLine(arm), { fill: "none", stroke: "panel", width: 1.6 * frame.lines.px }),
    ],
    { class: "ns-sleeper" },
  );
}

/** Somebody sitting across the middle, dashed: shows the seat. */
export function sleeperSitting({ shape, seatHeightM }: Hang, statureM: number, frame: SideFrame): Item {
  const seat = lowest(shape.clothSitting);
  const part = (aside: number, up: number): XY =>
    onPaper(frame, [seat[0] + aside * statureM, seat[1] + up * statureM]);
  const foot = -seatHeightM / statureM;
  const dashed = {
    fill: "none",
    stroke: "rule",
    width: 1.5 * frame.lines.px,
    dash: [5 * frame.lines.px, 4 * frame.lines.px],
    cap: "butt",
  } as const;
  const body = [
    [-0.075, foot],
    [-0.085, 0],
    [-0.1, 0.26],
    [-0.06, 0.34],
    [0.06, 0.34],
    [0.1, 0.26],
    [0.085, 0],
    [0.075, foot],
  ];
  return group(
    [
      line(
        shape.clothSitting.map((at) => onPaper(frame, at)),
        { ...dashed, stroke: "cloth" },
      ),
      path(smoothLine(body.map(([aside = 0, up = 0]) => part(aside, up))), dashed),
      circle(part(0, 0.43), HEAD_R * statureM * frame.scale, dashed),
    ],
    { class: "ns-sitting" },
  );
}

export function lowest(points: readonly Point2[]): Point2 {
  return points.reduce((low, point) => (point[1] < low[1] ? point : low), points[0] ?? [0, 0]);
}

function between(a: Point2, b: Point2, share: number): Point2 {
  return [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share];
}

function lean(a: Point2, b: Point2): Point2 {
  return between(a, b, 0.35);
}

function beyond(a: Point2, b: Point2, by: number): Point2 {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
  return between(a, b, 1 + by / length);
}

/** The point moved off the cloth, square to it, upward. */
function lifted(at: Point2, cloth: readonly Point2[], by: number): Point2 {
  const index = Math.max(
    1,
    cloth.findIndex(([x]) => x >= at[0]),
  );
  const [a, b] = [cloth[Math.max(0, index - 3)] ?? at, cloth[Math.min(cloth.length - 1, index + 2)] ?? at];
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
  return [at[0] - ((b[1] - a[1]) / length) * by, at[1] + ((b[0] - a[0]) / length) * by];
}
