import { checks } from "@nightspan/checks";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import rows from "./ridge-pull.checks.json" with { type: "json" };
import { clothEdgePullN, ridgePull } from "./ridge-pull.ts";

checks(rows, ({ span_m, load_n, set_n, ea_n }) => {
  const { pullN, sagM } = ridgePull({ spanM: span_m, loadN: load_n, setN: set_n, eaN: ea_n });
  return { pull_n: pullN, sag_m: sagM };
});

describe("a ridge cord under load", () => {
  const load = fc.double({ min: 1, max: 600, noNaN: true });
  const set = fc.double({ min: 0, max: 300, noNaN: true });

  it("stretches by just what its sag asks for", () => {
    fc.assert(
      fc.property(load, set, fc.double({ min: 2, max: 7, noNaN: true }), (loadN, setN, spanM) => {
        const eaN = 20_000;
        const { pullN, sagM } = ridgePull({ spanM, loadN, setN, eaN });
        // Length of a shallow parabola over its chord: 8/3 (sag/span)².
        const strain = (8 / 3) * (sagM / spanM) ** 2;
        expect(Math.abs((pullN - setN) / eaN - strain)).toBeLessThan(1e-9 + 1e-6 * strain);
      }),
      { seed: 1, numRuns: 200 },
    );
  });

  it("pulls harder and sags less the tighter it was set, and hangs straight unloaded", () => {
    const at = (setN: number) => ridgePull({ spanM: 4, loadN: 100, setN, eaN: 20_000 });
    expect(at(200).pullN).toBeGreaterThan(at(50).pullN);
    expect(at(200).sagM).toBeLessThan(at(50).sagM);
    expect(ridgePull({ spanM: 4, loadN: 0, setN: 80, eaN: 20_000 })).toEqual({ pullN: 80, sagM: 0 });
  });
});

describe("cloth under pressure", () => {
  it("pulls at each edge by a third more than all that presses it", () => {
    expect(clothEdgePullN(100)).toBeCloseTo(134.6, 1);
    expect(clothEdgePullN(0)).toBe(0);
  });
});
