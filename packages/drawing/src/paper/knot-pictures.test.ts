import { describe, expect, it } from "vitest";
import type { Item, PathItem, XY } from "../scene/scene.ts";
import { knotPicture, type Knot } from "./knot-pictures.ts";

interface Segment {
  readonly a: XY;
  readonly b: XY;
}

/** The cores of all cords in the order they are drawn: what comes later lies on top. */
function cores(item: Item): readonly PathItem[] {
  if (item.kind === "group") return item.items.flatMap(cores);
  return item.kind === "path" && item.stroke === "paper" && (item.width ?? 0) < 3.2 ? [item] : [];
}

function segments({ steps }: PathItem): readonly Segment[] {
  const places = steps.flatMap((step): XY[] =>
    step[0] === "M" || step[0] === "L" ? [[step[1], step[2]]] : [],
  );
  return places.slice(1).flatMap((b, index) => {
    const a = places[index];
    return a === undefined ? [] : [{ a, b }];
  });
}

function apart([x, y]: XY, { a, b }: Segment): number {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const t = Math.max(0, Math.min(1, ((x - a[0]) * dx + (y - a[1]) * dy) / (dx * dx + dy * dy || 1)));
  return Math.hypot(x - a[0] - t * dx, y - a[1] - t * dy);
}

/** How the cord runs that lies on top at a place: rather upright or rather level. */
function onTop(knot: Knot, place: XY): "upright" | "level" | "nothing" {
  const crossing = cores(knotPicture(knot, [0, 0], 1)).flatMap((core) => {
    const near = segments(core)
      .filter((segment) => apart(place, segment) < 1)
      .sort((one, other) => apart(place, one) - apart(place, other));
    return near.slice(0, 1);
  });
  const top = crossing.at(-1);
  if (top === undefined || crossing.length < 2) return "nothing";
  return Math.abs(top.b[1] - top.a[1]) > Math.abs(top.b[0] - top.a[0]) ? "upright" : "level";
}

describe("knots, crossing by crossing as they are described in words", () => {
  it.each<[string, XY, "upright" | "level"]>([
    ["the line comes up through the loop, under its bend", [20.6, 20.6], "upright"],
    ["out over the upper leg", [37.8, 12], "upright"],
    ["behind the upper leg", [47, 12], "level"],
    ["behind the lower leg", [46, 28], "level"],
    ["its end over the lower leg", [34.6, 28], "upright"],
    ["under its own part", [31.6, 19.6], "level"],
    ["and over the upper leg", [29.8, 12.3], "upright"],
  ])("sheet bend: %s", (_, place, way) => {
    expect(onTop("sheet-bend", place)).toBe(way);
  });

  it.each<[string, XY, "upright" | "level"]>([
    ["over the strap", [16.8, 21], "upright"],
    ["behind the strap", [33.2, 21], "level"],
    ["one side of the fold under its own part", [15.1, 8.3], "upright"],
    ["the other side of the fold under its own part", [15.9, 13.6], "upright"],
  ])("slipped half hitch: %s", (_, place, way) => {
    expect(onTop("slipped-half-hitch", place)).toBe(way);
  });

  it.each<[string, XY, "upright" | "level"]>([
    ["each turn over the line", [13, 15], "upright"],
    ["each turn over the line, on the other side too", [43, 15], "upright"],
    ["both legs behind the line", [26, 15], "level"],
    ["both legs through under the bridge", [25.8, 29.3], "level"],
  ])("prusik loop: %s", (_, place, way) => {
    expect(onTop("friction-loop", place)).toBe(way);
  });
});
