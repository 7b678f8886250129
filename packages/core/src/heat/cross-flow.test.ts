import { checks } from "@nightspan/checks";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import rows from "./cross-flow.checks.json" with { type: "json" };
import { crossFlowNusselt } from "./cross-flow.ts";

checks(rows, ({ reynolds, prandtl }) => ({ nusselt: crossFlowNusselt(reynolds, prandtl) }));

describe("a cylinder across the wind", () => {
  it("loses more, the more wind", () => {
    const wind = fc.double({ min: 0, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(wind, wind, (a, b) => {
        const [less, more] = a < b ? [a, b] : [b, a];
        expect(crossFlowNusselt(more, 0.71)).toBeGreaterThanOrEqual(crossFlowNusselt(less, 0.71));
      }),
      { seed: 1, numRuns: 200 },
    );
  });
});
