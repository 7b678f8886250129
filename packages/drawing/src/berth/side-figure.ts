import type { Hang, Point2 } from "@nightspan/core";
import type { Item, PathStep, XY } from "../scene/scene.ts";
import { circle, group, line, path } from "../scene/shapes.ts";
import type { BerthFacts } from "./berth-facts.ts";
import { groundLine, trunk } from "./ground-and-trunks.ts";
import { onPaper, type SideFrame } from "./side-frame.ts";
import { sideTarp } from "./side-tarp.ts";
import { sleeperLying, sleeperSitting } from "./sleeper-silhouette.ts";

/** Everything of a berth that is not a figure or a word: ground, trunks, straps, cloth, sleeper, ridgeline. */
export function sideFigure(facts: BerthFacts, frame: SideFrame, sitting: boolean): Item[] {
  const { berth, head, foot, sleeper } = facts;
  const { hang } = berth;
  const { shape } = hang;
  const tarp = sideTarp(berth, frame);
  return [
    ...tarp.behind,
    groundLine(facts, frame),
    trunk(facts, "head", frame),
    trunk(facts, "foot", frame),
    clothBehind(hang, frame),
    ...(sitting ? [sleeperSitting(hang, sleeper.statureM, frame)] : []),
    sleeperLying(hang, sleeper.statureM, frame),
    ...ridgeline(hang, frame),
    strap(shape.headAnchor, shape.headGather, head.dbhM, -1, frame),
    strap(shape.footAnchor, shape.footGather, foot.dbhM, 1, frame),
    line(
      shape.cloth.map((at) => onPaper(frame, at)),
      { class: "ns-cloth", stroke: "cloth", width: frame.lines.cloth },
    ),
    ...[shape.headGather, shape.footGather].map((at) =>
      circle(onPaper(frame, at), 4.5 * frame.lines.px, {
        fill: "panel",
        stroke: "ink",
        width: frame.lines.guy * 1.3,
      }),
    ),
    ...tarp.before,
  ];
}

/** The cloth's far edge and what is seen between: a shallower line, thin. */
function clothBehind({ shape }: Hang, frame: SideFrame): Item {
  const near = shape.cloth.map((at) => onPaper(frame, at));
  const [first, last] = [shape.headGather, shape.footGather];
  const far = shape.cloth.map((at): XY => {
    const share = (at[0] - first[0]) / (last[0] - first[0]);
    const chord = first[1] + (last[1] - first[1]) * share;
    return onPaper(frame, [at[0], chord - (chord - at[1]) * 0.62]);
  });
  const area: PathStep[] = [...near, ...[...far].reverse()].map(([x, y], index) => [
    index === 0 ? "M" : "L",
    x,
    y,
  ]);
  return group(
    [path([...area, ["Z"]], { fill: "cloth-tint" }), line(far, { stroke: "cloth", width: frame.lines.guy })],
    { class: "ns-far-edge" },
  );
}

/** A strap to a wrap of three close strokes on the bark. `side` is where the trunk lies: −1 left, 1 right. */
function strap(anchor: Point2, gather: Point2, dbhM: number, side: -1 | 1, frame: SideFrame): Item {
  const ink = { stroke: "strap", width: frame.lines.strap, cap: "butt" } as const;
  const [x, y] = onPaper(frame, anchor);
  const width = dbhM * frame.scale * side;
  const sag = 4 * frame.lines.px;
  const wraps = [-1, 0, 1].flatMap((index): PathStep[] => {
    const at = y + index * frame.lines.strap * 1.9;
    return [
      ["M", x, at],
      ["Q", x + width / 2, at + sag, x + width, at],
    ];
  });
  return group([line([[x, y], onPaper(frame, gather)], ink), path(wraps, { fill: "none", ...ink })], {
    class: "ns-strap",
  });
}

/** The ridgeline: straight where it is taut; where it is slack it is drawn slack. */
function ridgeline({ shape, ridgelineM }: Hang, frame: SideFrame): Item[] {
  if (ridgelineM === undefined) return [];
  const [[ax, ay], [bx, by]] = [onPaper(frame, shape.headGather), onPaper(frame, shape.footGather)];
  const thin = { fill: "none", stroke: "ink", width: frame.lines.guy, class: "ns-ridgeline" } as const;
  if (shape.ridgelineTaut)
    return [
      line(
        [
          [ax, ay],
          [bx, by],
        ],
        thin,
      ),
    ];
  const apart = Math.hypot(bx - ax, by - ay);
  // A shallow arc of that length over this chord sags √(3/8 · chord · slack).
  const slack = Math.max(0, ridgelineM * frame.scale - apart);
  const sag = Math.max(5 * frame.lines.px, Math.sqrt(0.375 * apart * slack));
  return [
    path(
      [
        ["M", ax, ay],
        ["Q", (ax + bx) / 2, (ay + by) / 2 + 2 * sag, bx, by],
      ],
      thin,
    ),
  ];
}
