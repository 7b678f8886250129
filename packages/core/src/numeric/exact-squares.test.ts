import { describe, expect, it } from "vitest";
import { squareLessSquares } from "./exact-squares.ts";

describe("a square less two squares", () => {
  it("loses nothing where the plain sum cancels", () => {
    // In whole numbers: (2²⁸ + 1)² − (2²⁸)² − (2¹⁴)² = 2²⁹ + 1 − 2²⁸.
    expect(squareLessSquares(2 ** 28 + 1, 2 ** 28, 2 ** 14)).toBe(2 ** 29 + 1 - 2 ** 28);
    expect(squareLessSquares(94906267, 94906266, 13777)).toBe(94906267 + 94906266 - 13777 ** 2);
    expect(squareLessSquares(5, 4, 3)).toBe(0);
  });

  it("is the plain sum where nothing cancels", () => {
    expect(squareLessSquares(3, 1, 2)).toBe(4);
    expect(squareLessSquares(1, 3, 2)).toBe(-12);
  });
});
