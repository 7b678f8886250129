import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { newtonsPerCm } from "./pull-arrow.ts";

describe("newtonsPerCm", () => {
  it("keeps every arrow on its strap, at the finest round scale that does", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 100, max: 3000, noNaN: true }),
        fc.double({ min: 30, max: 200, noNaN: true }),
        (pullN, roomPx) => {
          const scale = newtonsPerCm([{ pullN, roomPx }]);
          const reach = (pullN / scale) * 37.795;
          if (scale < 5000) expect(reach).toBeLessThanOrEqual(roomPx);
          expect(scale % 50).toBe(0);
        },
      ),
      { seed: 1, numRuns: 200 },
    );
  });
});
