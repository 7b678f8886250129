import { checks } from "@nightspan/checks";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { seen, type Sight } from "./colour-blind.ts";
import { ciede2000, labOf, type Lab } from "./colour-difference.ts";
import rows from "./colour-difference.checks.json" with { type: "json" };

function lab([lightness = 0, a = 0, b = 0]: readonly number[]): Lab {
  return [lightness, a, b];
}

checks(rows, ({ one, other }) => ({ difference: ciede2000(lab(one), lab(other)) }));

const colour = fc.tuple(
  fc.double({ min: 0, max: 100, noNaN: true }),
  fc.double({ min: -100, max: 100, noNaN: true }),
  fc.double({ min: -100, max: 100, noNaN: true }),
);

describe("ciede2000", () => {
  it("is the same both ways round, and nothing for a colour and itself", () => {
    fc.assert(
      fc.property(colour, colour, (one, other) => {
        expect(ciede2000(one, other)).toBeCloseTo(ciede2000(other, one), 9);
        expect(ciede2000(one, one)).toBe(0);
      }),
      { seed: 1, numRuns: 300 },
    );
  });
});

describe("colour blindness", () => {
  const sights: readonly Sight[] = ["usual", "protan", "deutan", "tritan"];

  it.each(sights)("leaves greys grey for %s sight", (sight) => {
    for (const light of [0, 0.2, 0.5, 1]) {
      const [, a, b] = labOf(seen([light, light, light], sight));
      expect(Math.hypot(a, b)).toBeLessThan(0.05);
    }
  });
});
