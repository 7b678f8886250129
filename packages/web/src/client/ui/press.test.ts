import { describe, expect, it } from "vitest";
import { isEcho } from "./press.ts";

const one = new EventTarget();
const other = new EventTarget();
const first = { at: 1000, target: one, x: 100, y: 700 };

describe("a press", () => {
  it("counts once in 400 ms on one button", () => {
    expect(isEcho({ ...first, at: 1399 }, first, true)).toBe(true);
    expect(isEcho({ ...first, at: 1400 }, first, true)).toBe(false);
  });

  it("does not press what the first press put under the finger", () => {
    expect(isEcho({ at: 1200, target: other, x: 110, y: 705 }, first, true)).toBe(true);
  });

  it("counts at another place, and by key on another button", () => {
    expect(isEcho({ at: 1200, target: other, x: 300, y: 700 }, first, true)).toBe(false);
    expect(isEcho({ at: 1200, target: other, x: 0, y: 0 }, { ...first, x: 0, y: 0 }, false)).toBe(false);
  });
});
