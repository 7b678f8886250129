import { byRule, kept, type Finding } from "@nightspan/core";
import { describe, expect, it } from "vitest";
import { exampleCamp } from "../examples.fixture.ts";
import { namesOf } from "./names.ts";
import { sayFinding } from "./say-finding.ts";

const names = namesOf(exampleCamp("demo").camp);
const say = (finding: Finding) => sayFinding(finding, names).replaceAll("\u00a0", " ");

const END = {
  source: "rain-shade",
  subject: "berth/3/tarp",
  sense: "at-most",
  limit: 0.01,
  unit: "1",
} as const;

describe("tarp, rain, wind and night in words", () => {
  it("says plainly whether an end is covered, and by how much to lower the tarp", () => {
    const foot = (demand: number, about?: readonly string[]) =>
      say(
        byRule(
          { ...END, rule: "rain.foot-end", demand, ...(about === undefined ? {} : { about }) },
          demand < 0.01 ? "clear" : "look-again",
        ),
      );
    expect(foot(0.002)).toBe("The foot end is covered in this wind.");
    expect(foot(0.2, ["0.21"])).toBe("The foot end is not covered in this wind: lower the tarp by 20 cm.");
    expect(foot(0.2)).toBe(
      "The foot end is not covered in this wind. Close the tarp there, or take a larger one.",
    );
  });

  it("tells the gust against the stop line, and why it is that of the open", () => {
    const gust = (demand: number) =>
      say(
        kept(
          {
            rule: "night.gust",
            source: "camp-file",
            subject: "camp",
            sense: "at-most",
            demand,
            limit: 14,
            unit: "m/s",
          },
          "do-not-hang",
        ),
      );
    expect(gust(9)).toBe("Gusts of 9 m/s are forecast in the open, everybody gets up at 14 m/s.");
    expect(gust(17)).toContain("Crowns fail in the gust");
  });

  it("tells no pull of a peg, whichever way it goes", () => {
    for (const limit of [20, 110, 5000]) {
      const sentence = say(
        kept(
          {
            rule: "peg.holding",
            source: "camp-file",
            subject: "berth/3/pegs",
            sense: "at-most",
            demand: 100,
            limit,
            unit: "N",
          },
          "look-again",
        ),
      );
      expect(sentence).toMatch(/peg/);
      expect(sentence).not.toMatch(/\d/);
    }
  });
});
