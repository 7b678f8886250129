import { describe, expect, it } from "vitest";
import { runModel } from "./run-model.ts";

const GILMORE_GOMORY = [
  { length_mm: 45, count: 97 },
  { length_mm: 36, count: 610 },
  { length_mm: 31, count: 395 },
  { length_mm: 14, count: 211 },
];

describe("cutting by its door", () => {
  it("tells stocks, bound, proof and patterns", () => {
    const answer = runModel("cutting", { stock: [{ length_mm: 100 }], pieces: GILMORE_GOMORY, kerf_mm: 0 });
    expect(answer).toMatchObject({
      ok: true,
      value: { value: { stocks_used: 453, objective: 453, bound: 453, proven: true } },
    });
  });

  it("counts total length where there are several stock lengths", () => {
    const answer = runModel("cutting", {
      stock: [{ length_mm: 5000, count: 1 }, { length_mm: 3000 }],
      pieces: [
        { length_mm: 2500, count: 2 },
        { length_mm: 1499, count: 2 },
      ],
      kerf_mm: 2,
    });
    expect(answer).toMatchObject({
      ok: true,
      value: {
        value: {
          stocks_used: 3,
          objective: 9000,
          bound: 9000,
          proven: true,
          patterns: [
            { stock_mm: 3000, times: 2, cuts: [{ length_mm: 2500, count: 1 }] },
            { stock_mm: 3000, times: 1, cuts: [{ length_mm: 1499, count: 2 }] },
          ],
        },
      },
    });
  });

  it("names what cannot be cut, and every key it does not know", () => {
    const fields = (input: unknown) => {
      const answer = runModel("cutting", input);
      return answer.ok ? [] : answer.refusals.map(({ field }) => field);
    };
    const pieces = [
      { length_mm: 90, count: 1 },
      { length_mm: 101, count: 2 },
    ];
    expect(fields({ stock: [{ length_mm: 100 }], pieces, kerf_mm: 0 })).toEqual(["pieces[1]"]);
    expect(fields({ stock: [{ length_mm: 100.5 }], pieces, kerf: 1 })).toEqual([
      "stock[0].length_mm",
      "kerf_mm",
      "kerf",
    ]);
  });
});

describe("assignment by its door", () => {
  it("tells pairs by row, and who stays alone", () => {
    const answer = runModel("assignment", {
      cost: [
        [4, 1, null],
        [2, null, null],
        [3, 2, null],
      ],
    });
    expect(answer).toMatchObject({
      ok: true,
      value: {
        value: {
          total: 3,
          pairs: [
            [0, 1],
            [1, 0],
          ],
          unmatched: { rows: [2], cols: [2] },
        },
      },
    });
  });

  it("refuses a ragged table", () => {
    const answer = runModel("assignment", { cost: [[1, 2], [1]] });
    expect(answer.ok ? [] : answer.refusals.map(({ field }) => field)).toEqual(["cost[1]"]);
  });
});
