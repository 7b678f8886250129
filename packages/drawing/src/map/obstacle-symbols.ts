import type { Obstacle } from "@nightspan/core";
import type { Item, PathStep, XY } from "../scene/scene.ts";
import { circle, group, line, path, polygon } from "../scene/shapes.ts";
import { fireSymbol, keepOutCircle, limbSymbol } from "./hazard-symbols.ts";
import { hatch } from "./hatch.ts";
import { toPx, type MapView } from "./map-view.ts";
import { along, aside, smoothLine } from "./smooth-line.ts";

/** What lies on the ground, by kind: each with a pattern of its own, so that colour is never needed. */
export function obstacleSymbol(obstacle: Obstacle, view: MapView, stems: readonly XY[]): Item {
  const points = shapePoints(obstacle).map((point) => toPx(view, point));
  const ref = { ref: `obstacle/${obstacle.id}` };
  const ring = obstacle.shape.type === "polygon";
  const setback = obstacle.setbackM * view.pxPerM;
  switch (obstacle.kind) {
    case "water":
      return group(water(points, ring, view.pxPerM), { class: "ns-water", ...ref });
    case "path":
      return group(footpath(points, view.pxPerM), { class: "ns-path", ...ref });
    case "building":
      return group(building(points), { class: "ns-building", ...ref });
    case "rock":
      return group(rock(points, ring), { class: "ns-rock", ...ref });
    case "fire":
      return group(
        points
          .slice(0, 1)
          .flatMap((at) => [
            keepOutCircle(at, setback, { rim: "ink", width: 1.75 }),
            fireSymbol(at, Math.max(18, view.pxPerM * 0.8)),
          ]),
        { class: "ns-fireplace", ...ref },
      );
    case "overhead":
      return group(
        points
          .slice(0, 1)
          .flatMap((at) => [
            keepOutCircle(at, setback, { rim: "no", fill: "no-tint" }),
            limbSymbol(besideStem(at, stems), Math.min(34, Math.max(16, setback * 0.9))),
          ]),
        { class: "ns-overhead", ...ref },
      );
    case "other":
      return group(other(points, ring), { class: "ns-other", ...ref });
  }
}

/** A sign stands beside the stem that its cause hangs in, not on it. */
function besideStem([x, y]: XY, stems: readonly XY[]): XY {
  const near = stems.find(([sx, sy]) => Math.abs(sx - x) < 18 && Math.abs(sy - y) < 18);
  return near === undefined ? [x, y] : [near[0] - 24, near[1]];
}

export function shapePoints({ shape }: Obstacle): readonly XY[] {
  if (shape.type === "point") return [shape.at];
  return shape.type === "line" ? shape.points : shape.ring;
}

/** Shore line and short wave strokes; a stream drawn as a line is given a bed. */
function water(points: readonly XY[], ring: boolean, pxPerM: number): Item[] {
  const shore = { fill: "none", stroke: "water", width: 2 } as const;
  if (ring) {
    const outline = smoothLine(points, true);
    return [path(outline, { ...shore, fill: "water-tint" }), ...waves([middle(points)])];
  }
  const bed = Math.max(7, 0.75 * pxPerM);
  const [left, right] = [aside(points, -bed), aside(points, bed)];
  return [
    path(band(left, right), { fill: "water-tint" }),
    path(smoothLine(left), shore),
    path(smoothLine(right), shore),
    ...waves(along(points, Math.max(60, 2.6 * pxPerM)).map(({ at }) => at)),
  ];
}

/** The area between two smooth banks. */
function band(left: readonly XY[], right: readonly XY[]): PathStep[] {
  const back = [...right].reverse();
  const [turn] = back;
  if (turn === undefined) return [];
  return [...smoothLine(left), ["L", turn[0], turn[1]], ...smoothLine(back).slice(1), ["Z"]];
}

function waves(places: readonly XY[]): Item[] {
  const crest = ([x, y]: XY): PathStep[] => [
    ["M", x - 9, y + 1],
    ["Q", x - 4.5, y - 6, x, y],
    ["Q", x + 4.5, y + 6, x + 9, y - 1],
  ];
  const steps = places.flatMap(([x, y]) => [...crest([x - 2, y - 4]), ...crest([x + 2, y + 4])]);
  return [path(steps, { fill: "none", stroke: "water", width: 2 })];
}

function footpath(points: readonly XY[], pxPerM: number): Item[] {
  const half = Math.max(4, 0.3 * pxPerM);
  const dashed = { fill: "none", stroke: "ink", width: 1.75, dash: [9, 5], cap: "butt" } as const;
  return [-half, half].map((by) => path(smoothLine(aside(points, by)), dashed));
}

function building(points: readonly XY[]): Item[] {
  return [
    polygon(points, { fill: "paper" }),
    path(hatch(points, 8), { fill: "none", stroke: "ink", width: 1 }),
    polygon(points, { fill: "none", stroke: "ink", width: 2, join: "miter" }),
  ];
}

function rock(points: readonly XY[], ring: boolean): Item[] {
  const [at = [0, 0]] = points;
  const outline = ring ? points : ROCK.map(([x, y]): XY => [at[0] + x, at[1] + y]);
  return [polygon(outline, { fill: "paper", stroke: "ink", width: 1.75, join: "miter" })];
}

function other(points: readonly XY[], ring: boolean): Item[] {
  const ink = { stroke: "ink", width: 1.75, dash: [2, 4], cap: "butt" } as const;
  if (ring) return [polygon(points, { ...ink, fill: "none" })];
  return points.length === 1
    ? points.map((at) => circle(at, 6, { ...ink, fill: "paper" }))
    : [line(points, ink)];
}

/** A small open stone, where only its place is known. */
const ROCK: readonly XY[] = [
  [-8, 5],
  [-5, -5],
  [3, -7],
  [9, 0],
  [6, 6],
];

function middle(points: readonly XY[]): XY {
  const sum = points.reduce<XY>(([x, y], [px, py]) => [x + px, y + py], [0, 0]);
  return [sum[0] / points.length, sum[1] / points.length];
}
