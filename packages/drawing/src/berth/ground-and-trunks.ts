import type { Item, PathStep, XY } from "../scene/scene.ts";
import { group, line, path } from "../scene/shapes.ts";
import type { BerthFacts, EndFacts } from "./berth-facts.ts";
import { onPaper, type SideFrame } from "./side-frame.ts";

/** The ground from edge to edge: straight between the trees, level beyond; its cut face hatched. */
export function groundLine(facts: BerthFacts, frame: SideFrame): Item {
  const points = groundPoints(facts, frame);
  const deep = 15 * frame.lines.px;
  const strokes: PathStep[] = [];
  for (let x = frame.leftX + deep; x < frame.rightX; x += 8 * frame.lines.px) {
    const y = heightAt(points, x) + frame.lines.trunk / 2;
    strokes.push(["M", x, y], ["L", x - deep, y + deep]);
  }
  const [head, foot] = [flareOf(facts.head, frame), flareOf(facts.foot, frame)];
  const [headX, footX] = [onPaper(frame, [0, 0])[0], onPaper(frame, [facts.berth.spanM, 0])[0]];
  const stretches: readonly XY[] = [
    [frame.leftX, headX - head],
    [headX + head, footX - foot],
    [footX + foot, frame.rightX],
  ];
  const at = (x: number): XY => [x, heightAt(points, x)];
  return group(
    [
      path(strokes, { fill: "none", stroke: "rule", width: frame.lines.dimension, cap: "butt" }),
      ...stretches.map(([from, to]) =>
        line([at(from), at(to)], { stroke: "ink", width: frame.lines.trunk, cap: "round" }),
      ),
    ],
    { class: "ns-earth" },
  );
}

function groundPoints({ berth }: BerthFacts, frame: SideFrame): readonly XY[] {
  const [head, foot] = [onPaper(frame, [0, 0]), onPaper(frame, [berth.spanM, berth.hang.shape.groundFootZM])];
  return [[frame.leftX, head[1]], head, foot, [frame.rightX, foot[1]]];
}

function heightAt(points: readonly XY[], x: number): number {
  const found = points.findIndex(([px]) => px >= x);
  const index = found < 1 ? (found === 0 ? 1 : points.length - 1) : found;
  const [[ax, ay], [bx, by]] = [points[index - 1] ?? [0, 0], points[index] ?? [1, 0]];
  return bx === ax ? ay : ay + ((by - ay) * (x - ax)) / (bx - ax);
}

function radiusOf({ dbhM }: EndFacts, frame: SideFrame): number {
  return Math.max(dbhM / 2, 0.03) * frame.scale;
}

/** From a trunk's middle to where its root meets the ground. */
function flareOf(end: EndFacts, frame: SideFrame): number {
  const r = radiusOf(end, frame);
  return r + Math.min(r * 0.6, 0.12 * frame.scale);
}

/** A trunk to its diameter, flared at the root, broken off at the top by a plain tear. */
export function trunk(facts: BerthFacts, which: "head" | "foot", frame: SideFrame): Item {
  const end = facts[which];
  const [r, flare] = [radiusOf(end, frame), flareOf(end, frame)];
  const [x, base] = onPaper(
    frame,
    which === "head" ? [0, 0] : [facts.berth.spanM, facts.berth.hang.shape.groundFootZM],
  );
  const points = groundPoints(facts, frame);
  const [left, right] = [heightAt(points, x - flare), heightAt(points, x + flare)];
  const [, top] = onPaper(frame, [0, frame.topZM]);
  const tear = Math.min(r * 0.5, 12 * frame.lines.px);
  const knee = base - Math.min(0.3 * frame.scale, (base - top) * 0.3);
  const curl = (flare - r) * 0.6;
  const outline: PathStep[] = [
    ["M", x - flare, left],
    ["Q", x - r, left - curl, x - r, knee],
    ["L", x - r * 0.94, top + tear],
    ["L", x - r * 0.55, top],
    ["L", x - r * 0.05, top + tear],
    ["L", x + r * 0.42, top],
    ["L", x + r * 0.94, top + tear * 0.7],
    ["L", x + r, knee],
    ["Q", x + r, right - curl, x + flare, right],
  ];
  const bark = r > 10 * frame.lines.px ? [barkStrokes(x, r, base, top, frame)] : [];
  return group([path(outline, { fill: "panel", stroke: "ink", width: frame.lines.trunk }), ...bark], {
    class: "ns-trunk",
    ref: `tree/${end.id}`,
  });
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
