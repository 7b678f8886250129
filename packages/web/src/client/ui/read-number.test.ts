import { describe, expect, it } from "vitest";
import { readNumber } from "./read-number.ts";

describe("a number as people type it", () => {
  it("may have a point, a comma, a sign and room around it", () => {
    expect(readNumber("1.75")).toBe(1.75);
    expect(readNumber(" 1,75 ")).toBe(1.75);
    expect(readNumber("\u22124")).toBe(-4);
    expect(readNumber("+3")).toBe(3);
    expect(readNumber("1.")).toBe(1);
    expect(readNumber(".5")).toBe(0.5);
  });

  it("is taken out where nothing stands", () => {
    expect(readNumber("  ")).toBeUndefined();
  });

  it("stays as typed where it is none, to be refused by its words", () => {
    for (const text of ["tall", "1.7.5", "1,000,5", "0x10", "1e3", "Infinity", "NaN"]) {
      expect(readNumber(text)).toBe(text);
    }
  });
});
