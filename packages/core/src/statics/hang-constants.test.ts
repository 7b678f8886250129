import { checks } from "@nightspan/checks";
import { describe, expect, it } from "vitest";
import { seatHeightOf, STRAP_EA_N } from "./hang-constants.ts";
import rows from "./hang-constants.checks.json" with { type: "json" };

checks(rows, ({ stature }) => ({ seat: seatHeightOf(stature) }));

describe("the constants of a hang", () => {
  it("seat a sleeper of unknown stature at 45 cm", () => {
    expect(seatHeightOf(undefined)).toBe(0.45);
  });

  it("stretch a webbing strap as textile slings of polyester were read to: 3 to 7 % at a fifth of breaking", () => {
    // A 25 mm webbing breaks at about 7 kN (from memory); sling-practice gives the stretch at a fifth of that.
    const stretch = (0.2 * 7_000) / STRAP_EA_N["tied-webbing"];
    expect(stretch).toBeGreaterThan(0.03);
    expect(stretch).toBeLessThan(0.07);
  });
});
