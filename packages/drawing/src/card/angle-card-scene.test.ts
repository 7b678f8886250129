import { presetRules } from "@nightspan/core";
import { describe, expect, it } from "vitest";
import type { GroupItem, Item } from "../scene/scene.ts";
import { plainLabels } from "../words/plain-labels.ts";
import { plainMeasure } from "../words/plain-measure.ts";
import { angleCardScene } from "./angle-card-scene.ts";

const words = { labels: plainLabels, measure: plainMeasure };

function angles(items: readonly Item[]): GroupItem[] {
  return items.flatMap((item) => (item.kind === "group" && item.class === "ns-angle" ? [item] : []));
}

/** Degrees below level of the line of an angle. */
function drawnDeg({ items }: GroupItem): number {
  const [ray] = items;
  if (ray?.kind !== "polygon") throw new Error("an angle without its line");
  const [[x1, y1] = [0, 0], [x2, y2] = [0, 0]] = ray.points;
  return (Math.atan2(y2 - y1, x2 - x1) * 180) / Math.PI;
}

describe("angleCardScene", () => {
  const { items, size } = angleCardScene(presetRules("usual"), words);

  it("draws every angle true, from the corner", () => {
    expect(
      angles(items)
        .map(drawnDeg)
        .map((deg) => Math.round(deg * 1e9) / 1e9),
    ).toEqual([20, 25, 30, 35]);
  });

  it("carries ten centimetres to hold a ruler against", () => {
    const edge = items.find((item) => item.class === "ns-ruler");
    if (edge?.kind !== "path") throw new Error("no ruler");
    const across = edge.steps.flatMap((step) => (step[0] === "M" || step[0] === "L" ? [step[1]] : []));
    expect(Math.max(...across) - Math.min(...across)).toBe(100);
    expect(edge.steps.filter(([kind]) => kind === "M")).toHaveLength(1 + 11);
  });

  it("keeps its lines on the card", () => {
    for (const { items: parts } of angles(items)) {
      const [ray] = parts;
      const [x = 0, y = 0] = ray?.kind === "polygon" ? (ray.points[1] ?? []) : [];
      expect(x <= size.width && y <= size.height).toBe(true);
    }
  });

  // Tangents from a printed table, to the nearest centimetre on a metre.
  it("says how far a strap comes down on a metre", () => {
    const said = items.flatMap((item) =>
      item.kind === "text" ? item.runs.map((run) => plainLabels(run.item)) : [],
    );
    for (const rise of ["36\u00a0cm", "47\u00a0cm", "58\u00a0cm", "70\u00a0cm"]) expect(said).toContain(rise);
  });

  it("dashes what the house does not allow", () => {
    const dashed = angles(items).map(({ items: [ray] }) => ray?.kind === "polygon" && ray.dash !== undefined);
    expect(dashed).toEqual([true, false, false, false]);
  });
});
