import { checks } from "@nightspan/checks";
import { describe, expect, it } from "vitest";
import { degrees, inDegrees } from "../quantity/angle.ts";
import { angleCard, angleOfFall } from "./angle-card.ts";
import rows from "./angle-card.checks.json" with { type: "json" };

checks(rows, ({ angle_deg }) => ({
  fall_m: angleCard().find(({ angle }) => Math.abs(inDegrees(angle) - angle_deg) < 1e-9)?.fallM,
}));

describe("angleCard", () => {
  it("reads back as the angles it was made for, over any run", () => {
    const card = angleCard();
    expect(card.map(({ angle }) => Math.round(inDegrees(angle)))).toEqual([20, 25, 30, 35]);
    for (const { angle, fallM } of card) {
      expect(angleOfFall(fallM, 1)).toBeCloseTo(angle, 12);
      expect(angleOfFall(fallM / 2, 0.5)).toBeCloseTo(angle, 12);
    }
  });

  it("tells the angle to half a degree where it is read to a centimetre", () => {
    for (const { angle, fallM } of angleCard()) {
      expect(Math.abs(angleOfFall(fallM + 0.01, 1) - angle)).toBeLessThan(degrees(0.52));
    }
  });
});
