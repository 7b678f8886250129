import { describe, expect, it } from "vitest";
import { BARK_FRICTION_HIGH, BARK_FRICTION_LOW } from "../../statics/capstan.ts";
import { strapGrip } from "./strap-grip.ts";

describe("strapGrip", () => {
  it("is what a strap presses with, summed along its turns by the law of the capstan", () => {
    for (const friction of [BARK_FRICTION_LOW, BARK_FRICTION_HIGH]) {
      const arc = 2 * Math.PI;
      const cells = 100_000;
      let pressed = 0;
      for (let cell = 0; cell < cells; cell++) {
        pressed += Math.exp((-friction * arc * (cell + 0.5)) / cells) * (arc / cells);
      }
      expect(strapGrip({ type: "tied-webbing" }, 0, friction)).toBeCloseTo(friction * pressed, 8);
    }
  });

  it("grows with turns and friction and never passes the inward pull", () => {
    for (const type of ["tied-webbing", "whoopie-sling"] as const) {
      let last = 0;
      for (const turns of [0, 1, 2, 3]) {
        const grip = strapGrip({ type }, turns, BARK_FRICTION_LOW);
        expect(grip).toBeGreaterThan(last);
        expect(grip).toBeLessThan(1);
        expect(strapGrip({ type }, turns, BARK_FRICTION_HIGH)).toBeGreaterThan(grip);
        last = grip;
      }
    }
  });

  it("is less for a tree strap that goes half round than for webbing that goes right round", () => {
    expect(strapGrip({ type: "whoopie-sling" }, 0, 0.2)).toBeLessThan(
      strapGrip({ type: "tied-webbing" }, 0, 0.2),
    );
    expect(strapGrip({ type: "whoopie-sling" }, 0, 0)).toBe(0);
  });

  it("takes the turns that are stated, and one for a strap through its own eye", () => {
    const twice = strapGrip({ type: "tied-webbing", wraps: 2 }, 0, 0.2);
    expect(twice).toBeCloseTo(strapGrip({ type: "tied-webbing" }, 1, 0.2), 12);
    expect(strapGrip({ type: "whoopie-sling", throughOwnEye: true }, 0, 0.2)).toBeCloseTo(
      strapGrip({ type: "tied-webbing" }, 0, 0.2),
      12,
    );
  });
});
