import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { loadNodes, lyingBody, stationOnCloth, STATION_RATIO, type LoadStretch } from "./body-on-cloth.ts";

function nodesOf(cells: number, clothM: number, stretches: readonly LoadStretch[]): Float64Array {
  const nodes = new Float64Array(cells + 1);
  loadNodes(nodes, clothM, stretches);
  return nodes;
}

describe("the body on the cloth", () => {
  const draw = fc.record({
    cells: fc.integer({ min: 8, max: 80 }),
    clothM: fc.double({ min: 2.4, max: 4, noNaN: true }),
    statureM: fc.double({ min: 1.2, max: 2.1, noNaN: true }),
    massKg: fc.double({ min: 25, max: 140, noNaN: true }),
  });

  it("keeps the whole mass and its centre, however many cells", () => {
    fc.assert(
      fc.property(draw, ({ cells, clothM, statureM, massKg }) => {
        const nodes = nodesOf(cells, clothM, lyingBody(clothM, statureM, massKg));
        const mass = nodes.reduce((sum, kg) => sum + kg, 0);
        const moment = nodes.reduce((sum, kg, node) => sum + kg * (node / cells) * clothM, 0);
        expect(mass).toBeCloseTo(massKg, 9);
        // Centre of mass at 0.561 ± 0.01 of the stature, above the soles.
        const stationRatio = ((clothM + statureM) / 2 - moment / mass) / statureM;
        expect(Math.abs(stationRatio - 0.561)).toBeLessThan(0.01);
      }),
      { seed: 1, numRuns: 200 },
    );
  });

  it("never loads a node upwards", () => {
    fc.assert(
      fc.property(draw, ({ cells, clothM, statureM, massKg }) => {
        const nodes = nodesOf(cells, clothM, lyingBody(clothM, statureM, massKg));
        expect(Math.min(...nodes)).toBeGreaterThanOrEqual(-1e-12 * massKg);
      }),
      { seed: 1, numRuns: 200 },
    );
  });

  it("lies with the middle of the stature on the middle of the cloth, head first", () => {
    expect(stationOnCloth(3, 1.8, 0.5)).toBeCloseTo(1.5, 12);
    const { ankle, knee, hip, shoulder, head } = STATION_RATIO;
    const stations = [head, shoulder, hip, knee, ankle];
    expect(stations).toEqual(stations.toSorted((a, b) => b - a));
  });

  it("keeps an even stretch even inside it", () => {
    const nodes = nodesOf(10, 1, [{ fromM: 0, toM: 1, massKg: 10, comRatio: 0.5 }]);
    expect([...nodes].map((kg) => Math.round(kg * 1e9) / 1e9)).toEqual([0.5, 1, 1, 1, 1, 1, 1, 1, 1, 1, 0.5]);
  });
});
