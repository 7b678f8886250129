import { describe, expect, it } from "vitest";
import { levelWay, markHeightM } from "./berth-words.ts";

describe("heights for hands", () => {
  it("are told to five centimetres", () => {
    expect(markHeightM(1.674)).toBeCloseTo(1.65, 12);
    expect(markHeightM(1.676)).toBeCloseTo(1.7, 12);
  });

  it("say higher, lower or level as the rounded figure does", () => {
    expect([0.02, -0.02, 0.03, -0.03].map(levelWay)).toEqual(["same", "same", "higher", "lower"]);
  });
});
