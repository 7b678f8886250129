import type { Camp } from "@nightspan/core";
import { LINE } from "../colour/tokens.ts";
import type { Item, XY } from "../scene/scene.ts";
import { group, path, polygon } from "../scene/shapes.ts";
import { groundHeights, type GroundFall, type HeightAt } from "./ground-heights.ts";
import { levelLines } from "./level-lines.ts";
import { toPx, type MapView } from "./map-view.ts";
import { smoothLine } from "./smooth-line.ts";

/** How the whole site falls: as the camp says, else from the trees' heights; nothing where neither is known. */
export function groundFall(camp: Camp): GroundFall | undefined {
  const stated = camp.ground?.slope;
  if (stated !== undefined) return stated;
  return groundHeights(camp)?.fall;
}

/** Form lines: where the ground is level, at even steps of height. */
export function formLines(camp: Camp, view: MapView): Item | undefined {
  const heightAt = heights(camp);
  if (heightAt === undefined) return undefined;
  const columns = 32;
  const rows = Math.max(4, Math.round((columns * view.heightPx) / view.widthPx));
  const place = (column: number, row: number): XY => [
    view.leftM + (column / columns) * (view.widthPx / view.pxPerM),
    view.topM - (row / rows) * (view.heightPx / view.pxPerM),
  ];
  const grid = Array.from({ length: rows + 1 }, (_, row) =>
    Array.from({ length: columns + 1 }, (_, column) => heightAt(place(column, row))),
  );
  const lines = levelLines(grid, stepFor(grid.flat()));
  return group(
    lines.map((line) => path(smoothLine(line.map(([column, row]) => toPx(view, place(column, row)))))),
    { class: "ns-form-lines", fill: "none", stroke: "rule", width: LINE.form },
  );
}

function heights(camp: Camp): HeightAt | undefined {
  const slope = camp.ground?.slope;
  const surveyed = groundHeights(camp);
  if (surveyed !== undefined) return surveyed.heightAt;
  if (slope === undefined) return undefined;
  const [east, north] = [Math.sin(slope.downhillRad), Math.cos(slope.downhillRad)];
  return ([x, y]) => -(x * east + y * north) * slope.riseRatio;
}

/** A step that gives five to twelve lines. */
function stepFor(values: readonly number[]): number {
  const range = Math.max(...values) - Math.min(...values);
  return [0.1, 0.2, 0.25, 0.5, 1, 2, 5, 10, 20].find((step) => range / step <= 10) ?? 50;
}

/** Three strokes that taper downhill, about `at`. */
export function slopeStrokes([x, y]: XY, { downhillRad }: GroundFall): Item {
  const [dx, dy] = [Math.sin(downhillRad), -Math.cos(downhillRad)];
  const [ax, ay] = [-dy, dx];
  const strokes = [-11, 0, 11].map((aside) => {
    const [cx, cy] = [x + ax * aside, y + ay * aside];
    const top: XY = [cx - dx * 22, cy - dy * 22];
    return polygon(
      [
        [top[0] + ax * 4, top[1] + ay * 4],
        [top[0] - ax * 4, top[1] - ay * 4],
        [cx + dx * 22, cy + dy * 22],
      ],
      { fill: "ink" },
    );
  });
  return group(strokes, { class: "ns-slope" });
}
