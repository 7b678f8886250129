import { describe, expect, it } from "vitest";
import type { Ground } from "../plan/camp.ts";
import type { Plan } from "../plan/plan.ts";
import { at, camp } from "./testing/camp.fixture.ts";
import { planned } from "./testing/planned.fixture.ts";

/** Three pairs far from each other, with spans of 4.0, 4.4 and 4.9 m, for three people. */
function surveyed(ground: Partial<Ground>): Plan {
  const trees = [4, 4.4, 4.9].flatMap((spanM, row) => [at(0, 20 * row), at(spanM, 20 * row)]);
  return planned(
    camp()
      .trees(...trees)
      .ground(ground)
      .sleepers(3)
      .build(),
  );
}

describe("the count of a plan when positions are off", () => {
  it("counts only pairs that stay in range", () => {
    expect(surveyed({ source: "stepped", positionErrorM: 0.06 }).robust).toEqual({
      errorM: 0.06,
      placed: 2,
      most: 3,
    });
    expect(surveyed({ source: "stepped", positionErrorM: 0.35 }).robust?.placed).toBe(1);
    expect(surveyed({ source: "gps", positionErrorM: 3 }).robust?.placed).toBe(0);
  });

  it("places as many in the plan itself as ever", () => {
    expect(surveyed({ source: "gps", positionErrorM: 3 }).placed).toBe(3);
  });

  it("says nothing of a survey taped as well as usual, and speaks where the error is stated to be more", () => {
    expect(surveyed({}).robust).toBeUndefined();
    expect(surveyed({ positionErrorM: 0.2 }).robust).toEqual({ errorM: 0.2, placed: 2, most: 3 });
  });

  it("lies between the worst and the best, and never counts more at worst than at best", () => {
    for (const positionErrorM of [0.01, 0.1, 0.3, 0.5, 1, 2]) {
      const { robust } = surveyed({ source: "gps", positionErrorM });
      expect(robust?.placed).toBeLessThanOrEqual(robust?.most ?? -1);
    }
  });
});
