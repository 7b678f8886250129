import { describe, expect, it } from "vitest";
import { sayHalves } from "./say-halves.ts";

describe("sayHalves", () => {
  it.each([
    [6, "6"],
    [5.5, "5½"],
    [0.5, "½"],
    [0, "0"],
    [-15, "−15"],
  ])("says %d as %s", (value, said) => {
    expect(sayHalves(value)).toBe(said);
  });
});
