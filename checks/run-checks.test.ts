import { describe, expect, it } from "vitest";
import { checkFileFaults } from "./check-file.ts";
import { checks, isOff, rowErrors } from "./run-checks.ts";

const ROW = {
  id: "halved",
  source: "arithmetic",
  locator: "division by two",
  seen: "derived",
  given: { whole: 10 },
  expected: { half: 5 },
  tolerance: { half: 1e-12 },
  why: "one division: rounding only",
};

checks({ model: "half", rows: [ROW] }, ({ whole }) => ({ half: whole / 2 }));

describe("a row's errors", () => {
  it("counts a figure beyond its tolerance as off, and one at its edge as within", () => {
    const row = { ...ROW, tolerance: { half: 0.5 } };
    expect(rowErrors(row, { half: 5.5 }).map(isOff)).toEqual([false]);
    expect(rowErrors(row, { half: 5.6 }).map(isOff)).toEqual([true]);
    expect(rowErrors(row, { half: 4.4 }).map(isOff)).toEqual([true]);
  });

  it("counts a missing figure and NaN as off", () => {
    expect(rowErrors(ROW, {}).map(isOff)).toEqual([true]);
    expect(rowErrors(ROW, { half: NaN }).map(isOff)).toEqual([true]);
  });
});

describe("a checks file", () => {
  it("can be used when every row is whole", () => {
    expect(checkFileFaults({ model: "half", rows: [ROW] })).toEqual([]);
  });

  it.each(["id", "source", "locator", "why", "seen", "given", "expected", "tolerance"])(
    "is refused when a row lacks its %s",
    (field) => {
      const row = Object.fromEntries(Object.entries(ROW).filter(([key]) => key !== field));
      expect(checkFileFaults({ model: "half", rows: [row] }).join()).toContain(field);
    },
  );

  it("is refused when one of two figures has no tolerance, or a tolerance is negative", () => {
    const two = { ...ROW, expected: { half: 5, third: 3 } };
    expect(checkFileFaults({ model: "half", rows: [two] })).toEqual([
      "row halved: tolerance.third is needed",
    ]);
    const negative = { ...ROW, tolerance: { half: -1 } };
    expect(checkFileFaults({ model: "half", rows: [negative] })).toHaveLength(1);
  });

  it("is refused when empty, or when an id comes twice", () => {
    expect(checkFileFaults({ model: "half", rows: [] })).toHaveLength(1);
    expect(checkFileFaults({ model: "half", rows: [ROW, ROW] })).toEqual([
      "row halved: the id is used twice",
    ]);
  });
});

checks<{ whole: number }>(new URL("./half.checks.json", import.meta.url), ({ whole }) => ({
  half: whole / 2,
}));
