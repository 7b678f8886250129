import { checks } from "@nightspan/checks";
import { describe, expect, it } from "vitest";
import rows from "./de-leva.checks.json" with { type: "json" };
import { deLevaSegments, type BodyTable } from "./de-leva.ts";

function tableOf(name: string): BodyTable {
  return name === "women" ? "women" : "men";
}

checks(rows, ({ table, segment, stature_mm }) => {
  const found = deLevaSegments(tableOf(table)).find(({ name }) => name === segment);
  const { massRatio, lengthRatio, comRatio } = found ?? { massRatio: NaN, lengthRatio: NaN, comRatio: NaN };
  return {
    mass_percent: 100 * massRatio,
    length_mm: stature_mm * lengthRatio,
    com_percent: 100 * comRatio,
  };
});

describe("de Leva's segments", () => {
  it.each(["women", "men", "both"] as const)("of %s sum to the whole body's mass", (table) => {
    const sum = deLevaSegments(table).reduce((total, { massRatio }) => total + massRatio, 0);
    expect(sum).toBeCloseTo(1, 3);
  });

  it.each(["women", "men", "both"] as const)(
    "of %s put the centre of mass at 0.561 of the stature",
    (table) => {
      const parts = deLevaSegments(table);
      const moment = parts.reduce((total, { massRatio, comRatio, topRatio, bottomRatio }) => {
        return total + massRatio * (topRatio + comRatio * (bottomRatio - topRatio));
      }, 0);
      const mass = parts.reduce((total, { massRatio }) => total + massRatio, 0);
      expect(Math.abs(moment / mass - 0.561)).toBeLessThan(0.01);
    },
  );

  it("of both are the mean of women and men", () => {
    const [women, men, both] = (["women", "men", "both"] as const).map(deLevaSegments);
    both?.forEach((segment, index) => {
      const expected = ((women?.[index]?.massRatio ?? NaN) + (men?.[index]?.massRatio ?? NaN)) / 2;
      expect(segment.massRatio).toBeCloseTo(expected, 12);
    });
  });

  it("hang together: each part of trunk and legs begins where the one above ends", () => {
    for (const table of ["women", "men"] as const) {
      const column = deLevaSegments(table).filter(({ name }) => !/arm|hand|feet/.test(name));
      column.slice(1).forEach((segment, index) => {
        expect(segment.topRatio).toBeCloseTo(column[index]?.bottomRatio ?? NaN, 12);
      });
      expect(column[0]?.topRatio).toBe(1);
    }
  });
});
