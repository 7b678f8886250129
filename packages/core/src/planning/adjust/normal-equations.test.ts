import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { leastSquaresStep } from "./normal-equations.ts";

describe("leastSquaresStep", () => {
  it("stays at the prior without evidence", () => {
    expect([...leastSquaresStep([], new Float64Array(0), Float64Array.of(2, -1))]).toEqual([2, -1]);
  });

  it("meets one finding half way where prior and finding are equally sure", () => {
    expect([...leastSquaresStep([Float64Array.of(1)], Float64Array.of(3), Float64Array.of(0))]).toEqual([
      1.5,
    ]);
  });

  it("solves its own equations", () => {
    const value = fc.double({ min: -5, max: 5, noNaN: true });
    const row = fc.array(value, { minLength: 4, maxLength: 4 });
    fc.assert(
      fc.property(fc.array(row, { maxLength: 6 }), row, row, (rows, prior, found) => {
        const rest = Float64Array.from(rows, (_, at) => found[at % 4] ?? 0);
        const x = leastSquaresStep(
          rows.map((line) => Float64Array.from(line)),
          rest,
          Float64Array.from(prior),
        );
        return prior.every((wanted, i) => {
          const pulls = rows.map((line, at) => {
            const said = line.reduce((sum, share, j) => sum + share * (x[j] ?? NaN), 0);
            return (line[i] ?? NaN) * ((rest[at] ?? NaN) - said);
          });
          const left = wanted - (x[i] ?? NaN) + pulls.reduce((sum, pull) => sum + pull, 0);
          return Math.abs(left) < 1e-9;
        });
      }),
      { seed: 1, numRuns: 200 },
    );
  });
});
