import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { chanceFrom } from "../numeric/seeded.ts";
import { berthOn, PITCH, RECTANGLE } from "./berth.fixture.ts";
import type { Point3 } from "./ground-plane.ts";
import { rainShade } from "./rain-shade.ts";
import type { TarpCut } from "./tarp-cut.ts";
import { pitchTarp, type Panel, type Pitch } from "./tarp-geometry.ts";

/** One ray, the plain way: does it meet the plane of a panel above the point inside its outline? */
function meets(point: Point3, slope: number, direction: number, { corners }: Panel): boolean {
  const [a, b, c] = [corners[0], corners[1], corners[corners.length - 1]];
  if (a === undefined || b === undefined || c === undefined) return false;
  const [u, v] = [less(b, a), less(c, a)];
  const normal = cross(u, v);
  const ray: Point3 = [slope * Math.cos(direction), slope * Math.sin(direction), 1];
  const t = dot(less(a, point), normal) / dot(ray, normal);
  if (!(t > 0)) return false;
  const hit: Point3 = [point[0] + t * ray[0], point[1] + t * ray[1], point[2] + t];
  return inside(hit, corners, normal);
}

function inside(hit: Point3, corners: readonly Point3[], normal: Point3): boolean {
  // Seen along the axis that the panel faces most; crossings of a ray to one side.
  const drop = [0, 1, 2].reduce((most, axis) =>
    Math.abs(normal[axis] ?? 0) > Math.abs(normal[most] ?? 0) ? axis : most,
  );
  const [p, q] = [0, 1, 2].filter((axis) => axis !== drop);
  const at = (point: Point3, axis: number | undefined) => point[axis ?? 0] ?? Number.NaN;
  let odd = false;
  corners.forEach((from, index) => {
    const to = corners[(index + 1) % corners.length] ?? from;
    if (at(from, q) > at(hit, q) === at(to, q) > at(hit, q)) return;
    const share = (at(hit, q) - at(from, q)) / (at(to, q) - at(from, q));
    if (at(hit, p) < at(from, p) + share * (at(to, p) - at(from, p))) odd = !odd;
  });
  return odd;
}

const less = (a: Point3, b: Point3): Point3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const dot = (a: Point3, b: Point3) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Point3, b: Point3): Point3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

const CUTS: readonly TarpCut[] = [
  RECTANGLE,
  { ...RECTANGLE, catenaryCutM: 0.15 },
  { shape: "hexagon", ridgeM: 3.4, widthM: 2.8, edgeM: 2, catenaryCutM: 0.2 },
  { shape: "diamond", ridgeM: 4, widthM: 4, catenaryCutM: 0.1 },
  { shape: "asymmetric", ridgeM: 4, widthM: 3, skewM: 0.6 },
];

describe("the shade of a tarp from slanting rain", () => {
  it("agrees with rays traced one by one", () => {
    const chance = chanceFrom(1);
    let covered = 0;
    for (let run = 0; run < 6000; run++) {
      const cut = CUTS[run % CUTS.length] ?? RECTANGLE;
      const closedEnds = run % 3 === 0 && cut.shape === "rectangle" && cut.catenaryCutM === undefined;
      const pitch: Pitch = {
        ...PITCH,
        leftAngle: 0.1 + chance.even(),
        rightAngle: 0.1 + chance.even(),
        closedEnds: closedEnds ? ["foot"] : [],
      };
      const { panels } = pitchTarp(cut, pitch, berthOn());
      const point: Point3 = [5 * chance.even() - 0.4, 3 * chance.even() - 1.5, 1.2 * chance.even()];
      const [direction, slope] = [2 * Math.PI * chance.even(), 2.5 * chance.even()];
      const ranges = rainShade(panels, Math.cos(direction), Math.sin(direction))(point);
      const shaded = ranges.some(
        (low, index) => index % 2 === 0 && slope >= low && slope <= (ranges[index + 1] ?? 0),
      );
      const traced = panels.some((panel) => meets(point, slope, direction, panel));
      expect(shaded, `run ${run}`).toBe(traced);
      if (traced) covered++;
    }
    expect(covered).toBeGreaterThan(1000);
    expect(covered).toBeLessThan(5000);
  });

  it("is told as ranges in order that do not overlap", () => {
    const { panels } = pitchTarp(RECTANGLE, { ...PITCH, closedEnds: ["head", "foot"] }, berthOn());
    const x = fc.double({ min: -1, max: 5, noNaN: true });
    const y = fc.double({ min: -2, max: 2, noNaN: true });
    fc.assert(
      fc.property(x, y, fc.double({ min: 0, max: 6.28, noNaN: true }), (xM, yM, from) => {
        const ranges = rainShade(panels, Math.cos(from), Math.sin(from))([xM, yM, 0.3]);
        expect(ranges.length % 2).toBe(0);
        expect(ranges).toEqual([...ranges].sort((a, b) => a - b));
        for (const slope of ranges) expect(slope).toBeGreaterThanOrEqual(0);
      }),
      { seed: 1, numRuns: 300 },
    );
  });
});
