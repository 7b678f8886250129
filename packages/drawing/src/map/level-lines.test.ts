import { describe, expect, it } from "vitest";
import { levelLines } from "./level-lines.ts";

function grid(columns: number, rows: number, height: (x: number, y: number) => number): number[][] {
  return Array.from({ length: rows }, (_, y) => Array.from({ length: columns }, (_, x) => height(x, y)));
}

describe("levelLines", () => {
  it("are straight and level on a plane, and at even steps", () => {
    const lines = levelLines(
      grid(12, 12, (x, y) => 0.3 * x + 0.2 * y),
      0.5,
    );
    expect(lines.length).toBeGreaterThan(5);
    for (const line of lines) {
      const heights = line.map(([x, y]) => 0.3 * x + 0.2 * y);
      const step = Math.round((heights[0] ?? 0) / 0.5) * 0.5;
      for (const height of heights) expect(height).toBeCloseTo(step, 9);
    }
  });

  it("close round a hilltop", () => {
    const lines = levelLines(
      grid(21, 21, (x, y) => -((x - 10) ** 2) - (y - 10) ** 2),
      30,
    );
    const inner = lines.find((line) =>
      line.every(([x, y]) => Math.abs(Math.hypot(x - 10, y - 10) - Math.sqrt(30)) < 0.2),
    );
    expect(inner?.length ?? 0).toBeGreaterThan(20);
  });
});
