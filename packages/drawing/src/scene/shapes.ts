import type { ColourToken } from "../colour/tokens.ts";
import type {
  CircleItem,
  GroupItem,
  Item,
  Paint,
  PathItem,
  PathStep,
  PolygonItem,
  TextRunItem,
  XY,
} from "./scene.ts";
import type { TextItem, Weight } from "./text-item.ts";

interface Marks {
  readonly class?: string;
  readonly ref?: string;
}

/** Shapes by short names, for code that draws. */
export function group(items: readonly Item[], rest: Omit<GroupItem, "kind" | "items"> = {}): GroupItem {
  return { kind: "group", items, ...rest };
}

export function path(steps: readonly PathStep[], paint: Paint & Marks = {}): PathItem {
  return { kind: "path", steps, ...paint };
}

export function polygon(points: readonly XY[], paint: Paint & Marks = {}): PolygonItem {
  return { kind: "polygon", points, closed: true, ...paint };
}

/** An open line through the points. */
export function line(points: readonly XY[], paint: Paint & Marks = {}): PolygonItem {
  return { kind: "polygon", points, closed: false, fill: "none", ...paint };
}

export function circle(at: XY, r: number, paint: Paint & Marks = {}): CircleItem {
  return { kind: "circle", at, r, ...paint };
}

/** One straight stroke. */
export function stroke(
  [x1, y1, x2, y2]: readonly [number, number, number, number],
  paint: Paint & Marks,
): PolygonItem {
  return line(
    [
      [x1, y1],
      [x2, y2],
    ],
    paint,
  );
}

/** A circle that nobody sees and a finger finds. */
export function hitCircle(at: XY, r: number, ref: string): CircleItem {
  return { kind: "circle", at, r, ref, hit: true, fill: "none", stroke: "none", class: "ns-hit" };
}

export function box([x, y]: XY, width: number, height: number, paint: Paint & Marks = {}): PolygonItem {
  return polygon(
    [
      [x, y],
      [x + width, y],
      [x + width, y + height],
      [x, y + height],
    ],
    paint,
  );
}

export interface TextStyle extends Marks {
  readonly size: number;
  readonly weight?: Weight;
  readonly anchor?: "start" | "middle" | "end";
  readonly fill?: ColourToken;
  readonly halo?: ColourToken;
  readonly maxWidth?: number;
}

/** One line of text in one size. */
export function text(item: TextItem, at: XY, style: TextStyle): TextRunItem {
  const { size, weight = 500, anchor = "start", fill = "ink", ...rest } = style;
  return { kind: "text", at, anchor, fill, runs: [{ item, size, weight }], ...rest };
}
