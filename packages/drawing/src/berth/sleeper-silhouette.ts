import type { Hang, HangShape, Point2 } from "@nightspan/core";
import type { Item, XY } from "../scene/scene.ts";
import { circle, group, line, path } from "../scene/shapes.ts";
import { smoothLine } from "../map/smooth-line.ts";
import { onPaper, type SideFrame } from "./side-frame.ts";

/** How thick the one figure is drawn, over the stature: a shape of no weight and no sex. */
const NECK = 0.055;
const SHOULDER = 0.112;
const WAIST = 0.098;
const HIP = 0.108;
const KNEE = 0.068;
const CALF = 0.066;
const ANKLE = 0.044;
const HEAD_R = 0.062;
const FOOT = 0.135;
/** Off the cloth's line, so that both can be seen [m]. */
const OFF = 0.012;

/** The sleeper to scale, lying in the cloth: a plain figure, as thick as the body's own stations say. */
export function sleeperLying({ shape }: Hang, statureM: number, frame: SideFrame): Item {
  const { head, ankle } = shape.body;
  const ribbon = bodyRibbon(shape, statureM);
  const under = ribbon.map(({ at }) => lifted(at, shape.cloth, OFF));
  const over = ribbon.map(({ at, thick }) => lifted(at, shape.cloth, OFF + thick * statureM));
  const heel = onCloth(shape.cloth, ankle, 0.05 * statureM);
  const sole = lifted(heel, shape.cloth, OFF);
  const toe = lifted(onCloth(shape.cloth, ankle, 0.075 * statureM), shape.cloth, FOOT * statureM);
  const instep = lifted(onCloth(shape.cloth, ankle, 0.03 * statureM), shape.cloth, FOOT * 0.9 * statureM);
  const outline = [...under, sole, toe, instep, ...[...over].reverse()].map((at) => onPaper(frame, at));
  const crown = onPaper(frame, lifted(head, shape.cloth, OFF + HEAD_R * statureM));
  return group(
    [
      path(smoothLine(outline, true), { fill: "ink" }),
      circle(crown, HEAD_R * statureM * frame.scale, { fill: "ink" }),
      ...(frame.lines.px < 0.5 ? [] : [arm(shape, statureM, frame)]),
    ],
    { class: "ns-sleeper" },
  );
}

function arm({ body, cloth }: HangShape, statureM: number, frame: SideFrame): Item {
  const points = [
    [0.04, 0.72],
    [0.5, 0.36],
    [0.98, 0.42],
  ].map(([share = 0, up = 0]): XY => {
    const at = alongCloth(cloth, body.shoulder, body.hip, share);
    return onPaper(frame, lifted(at, cloth, OFF + up * SHOULDER * statureM));
  });
  return path(smoothLine(points), { fill: "none", stroke: "panel", width: 1.6 * frame.lines.px });
}

interface Slice {
  readonly at: Point2;
  readonly thick: number;
}

/** The body from neck to ankle in slices that follow the cloth. */
function bodyRibbon({ body, cloth }: HangShape, statureM: number): Slice[] {
  const { head, shoulder, hip, knee, ankle } = body;
  const neck = onCloth(cloth, head, 0.075 * statureM);
  const parts: readonly (readonly [Point2, Point2, readonly number[]])[] = [
    [neck, shoulder, [NECK, (NECK + SHOULDER) / 2 + 0.012]],
    [shoulder, hip, [SHOULDER, SHOULDER, WAIST, HIP]],
    [hip, knee, [HIP, 0.094, 0.08]],
    [knee, ankle, [KNEE, CALF, 0.056]],
  ];
  const slices = parts.flatMap(([from, to, thicks]) =>
    thicks.map((thick, index) => ({ at: alongCloth(cloth, from, to, index / thicks.length), thick })),
  );
  return [...slices, { at: ankle, thick: ANKLE }];
}

/** A place on the cloth a share of the way, level, from one place on it to another. */
function alongCloth(cloth: readonly Point2[], from: Point2, to: Point2, share: number): Point2 {
  return heightOn(cloth, from[0] + (to[0] - from[0]) * share);
}

/** The place on the cloth that lies `by` further towards the feet. */
function onCloth(cloth: readonly Point2[], from: Point2, by: number): Point2 {
  const [a, b] = [heightOn(cloth, from[0] - 0.05), heightOn(cloth, from[0] + 0.05)];
  const run = Math.abs(b[0] - a[0]) / (Math.hypot(b[0] - a[0], b[1] - a[1]) || 1);
  return heightOn(cloth, from[0] + by * run);
}

function heightOn(cloth: readonly Point2[], xM: number): Point2 {
  const index = Math.max(
    1,
    cloth.findIndex(([x]) => x >= xM),
  );
  const [a, b] = [cloth[index - 1] ?? [0, 0], cloth[index] ?? [1, 0]];
  return [xM, a[1] + ((b[1] - a[1]) * (xM - a[0])) / (b[0] - a[0] || 1)];
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
