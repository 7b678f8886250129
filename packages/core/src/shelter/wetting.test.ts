import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { berthOn, BODY, PITCH, RECTANGLE, weatherOf } from "./berth.fixture.ts";
import { dripping } from "./falling-rain.ts";
import { fallSpeedMS } from "./drop-speed.ts";
import { pitchTarp, type Panel, type Pitch } from "./tarp-geometry.ts";
import { wetMap, type MapGrid } from "./wet-map.ts";
import { wetting } from "./wetting.ts";

const wind = fc.double({ min: 0, max: 8, noNaN: true });
const direction = fc.double({ min: 0, max: 2 * Math.PI, noNaN: true });
const angle = fc.double({ min: 0.3, max: 1, noNaN: true });

function lowered(panels: readonly Panel[], downM: number): Panel[] {
  return panels.map(({ name, corners }) => ({
    name,
    corners: corners.map(([x, y, z]) => [x, y, z - downM] as const),
  }));
}

describe("what gets wet under a tarp", () => {
  it("is nothing without wind where the tarp covers from above", () => {
    fc.assert(
      fc.property(angle, angle, direction, (leftAngle, rightAngle, from) => {
        const { panels } = pitchTarp(RECTANGLE, { ...PITCH, leftAngle, rightAngle }, berthOn());
        expect(wetting(BODY, panels, weatherOf(3, 0), from).wholeM2).toBe(0);
      }),
      { seed: 1, numRuns: 60 },
    );
  });

  it("is all of the open rain without a tarp, and never more with one", () => {
    fc.assert(
      fc.property(wind, direction, angle, (windMS, from, side) => {
        const weather = weatherOf(3, windMS, 2 * windMS);
        const pitch: Pitch = { ...PITCH, leftAngle: side, rightAngle: side };
        const { panels } = pitchTarp(RECTANGLE, pitch, berthOn());
        const open = wetting(BODY, [], weather, from);
        const under = wetting(BODY, panels, weather, from);
        expect(under.wholeM2).toBeLessThanOrEqual(open.wholeM2 + 1e-9);
        // The opening lies level but for its slope footwards: its rain is about its own area.
        expect(open.layersM2.sleeper).toBeGreaterThan(0.8);
        expect(open.wholeM2).toBeGreaterThan(open.layersM2.sleeper - 1e-12);
      }),
      { seed: 2, numRuns: 60 },
    );
  });

  it("is never more where the tarp as a whole comes down", () => {
    fc.assert(
      fc.property(
        wind,
        direction,
        angle,
        fc.double({ min: 0, max: 0.3, noNaN: true }),
        (windMS, from, side, downM) => {
          const weather = weatherOf(3, windMS, 2 * windMS);
          const pitch: Pitch = { ...PITCH, leftAngle: side, rightAngle: side, headTieM: 1.9, footTieM: 2 };
          const { panels } = pitchTarp(RECTANGLE, pitch, berthOn());
          const high = wetting(BODY, panels, weather, from).wholeM2;
          const low = wetting(BODY, lowered(panels, downM), weather, from).wholeM2;
          expect(low).toBeLessThanOrEqual(high + 1e-9);
        },
      ),
      { seed: 3, numRuns: 100 },
    );
  });

  it("mirrors with the wind and the pitch", () => {
    fc.assert(
      fc.property(wind, direction, angle, angle, (windMS, from, leftAngle, rightAngle) => {
        const weather = weatherOf(3, windMS, 2 * windMS);
        const one = pitchTarp(RECTANGLE, { ...PITCH, leftAngle, rightAngle }, berthOn());
        const other = pitchTarp(
          RECTANGLE,
          { ...PITCH, leftAngle: rightAngle, rightAngle: leftAngle },
          berthOn(),
        );
        const a = wetting(BODY, one.panels, weather, from);
        const b = wetting(BODY, other.panels, weather, -from);
        expect(b.partsM2.left).toBeCloseTo(a.partsM2.right, 9);
        expect(b.partsM2.foot).toBeCloseTo(a.partsM2.foot, 9);
        expect(b.wholeM2).toBeCloseTo(a.wholeM2, 9);
      }),
      { seed: 4, numRuns: 60 },
    );
  });

  it("grows with the wind at the foot of a tarp that ends there", () => {
    const { panels } = pitchTarp(RECTANGLE, PITCH, berthOn());
    const wet = [0, 1, 2, 4, 8].map((windMS) => wetting(BODY, panels, weatherOf(3, windMS), 0).partsM2.foot);
    expect(wet).toEqual([...wet].sort((a, b) => a - b));
    expect(wet[4]).toBeGreaterThan(0.05);
  });
});

describe("the wet map", () => {
  const GRID: MapGrid = { fromXM: -6, fromYM: -6, zM: 0, cellM: 0.06, columns: 270, rows: 200 };

  it("leaves as much water out as lands on the tarp", () => {
    // One drop size, so one slope; both sides are struck on their upper face, so none shades another.
    const drops = dripping(1, 2);
    for (const [windMS, from] of [
      [0, 0],
      [2.5, 0.7],
      [3, Math.PI / 2],
      [4, Math.PI],
    ] as const) {
      const weather = { rain: drops, winds: [{ windMS, share: 1 }] };
      const { panels } = pitchTarp(RECTANGLE, { ...PITCH, leftAngle: 0.5, rightAngle: 0.6 }, berthOn());
      const shares = wetMap(GRID, panels, weather, [from]);
      const missingM2 = shares.reduce((sum, share) => sum + (1 - share), 0) * GRID.cellM ** 2;
      const slope = windMS / fallSpeedMS(2);
      const onTarpM2 = panels.reduce((sum, panel) => sum + struckM2(panel, slope, from), 0);
      expect(Math.abs(missingM2 / onTarpM2 - 1)).toBeLessThan(0.01);
    }
  });

  it("mirrors with the wind", () => {
    const grid: MapGrid = { fromXM: -1, fromYM: -2, zM: 0.5, cellM: 0.2, columns: 30, rows: 20 };
    const { panels } = pitchTarp(RECTANGLE, PITCH, berthOn());
    const weather = weatherOf(2, 4, 8);
    const one = wetMap(grid, panels, weather, [0.4, 1.1]);
    const other = wetMap(grid, panels, weather, [-0.4, -1.1]);
    one.forEach((share, cell) => {
      const row = Math.floor(cell / grid.columns);
      const mirrored = (grid.rows - 1 - row) * grid.columns + (cell % grid.columns);
      expect(other[mirrored]).toBeCloseTo(share, 9);
    });
  });
});

/** Open rain that strikes a flat panel of one slope, by its area square to the rain [m²]. */
function struckM2({ corners }: Panel, slope: number, from: number): number {
  let area = [0, 0, 0];
  corners.forEach((a, index) => {
    const b = corners[(index + 1) % corners.length] ?? a;
    area = [
      (area[0] ?? 0) + (a[1] * b[2] - a[2] * b[1]) / 2,
      (area[1] ?? 0) + (a[2] * b[0] - a[0] * b[2]) / 2,
      (area[2] ?? 0) + (a[0] * b[1] - a[1] * b[0]) / 2,
    ];
  });
  const [x = 0, y = 0, z = 0] = area;
  return Math.abs(z + slope * (x * Math.cos(from) + y * Math.sin(from)));
}
