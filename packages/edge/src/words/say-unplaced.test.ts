import type { Finding } from "@nightspan/core";
import { describe, expect, it } from "vitest";
import { exampleCamp } from "../examples.fixture.ts";
import { namesOf } from "./names.ts";
import { sayFailedPairs } from "./say-failed-pairs.ts";
import { sayFinding } from "./say-finding.ts";
import { sayUnplaced } from "./say-unplaced.ts";

const names = namesOf(exampleCamp("demo").camp);

function capped(demand: number): Finding {
  return {
    rule: "strap.height-cap",
    source: "hang-chain",
    subject: "sleeper/a",
    sense: "at-most",
    demand,
    limit: 1.2,
    margin: 1.2 - demand,
    unit: "m",
    about: ["A1", "A2", "strap-height-cap"],
    verdict: "do-not-hang",
  };
}

describe("why somebody has no berth", () => {
  it("tells what a house cap costs: how high the strap of the worse end is wanted, and what is allowed", () => {
    const because = [capped(1.66), capped(1.96)];
    const said = sayUnplaced({ sleeper: "a", because }, names).join(" ");
    expect(said).toContain("(1.96\u00a0m wanted, 1.20\u00a0m allowed)");
    expect(said).not.toContain("1.66");
    const pairs = [{ trees: ["A1", "A2"] as const, spanM: 4.8, because }];
    const [line = ""] = sayFailedPairs({ sleeper: "a", because: [], pairs }, names);
    expect(line).toMatch(
      /higher than the house rule allows \(1\.96\u00a0m wanted, 1\.20\u00a0m allowed\)\.$/,
    );
  });

  it("tells how many more pairs fail than are named", () => {
    const pairs = [{ trees: ["A1", "A2"] as const, spanM: 4.8, because: [capped(1.96)] }];
    const last = (pairsLeft: number) =>
      sayFailedPairs({ sleeper: "a", because: [], pairs, pairsLeft }, names).at(-1);
    expect(last(98)).toBe("98 more pairs do not serve either.");
    expect(last(1)).toBe("1 more pair does not serve either.");
  });

  it("tells kit that is short, and kit kept for somebody that is gone, by its name", () => {
    const short = (about: readonly string[], demand: number): string =>
      sayFinding(
        {
          ...capped(demand),
          rule: "layout.kit-short",
          subject: "camp",
          sense: "at-least",
          limit: 2,
          unit: "1",
          about,
        },
        names,
      );
    expect(short(["under"], 1)).toBe("The store has 1 of the 2 needed: under layer.");
    expect(short(["hammock"], 2)).toBe("The store has as many as are needed: hammock.");
    expect(short(["pinned", "h7"], 0)).toBe("Kept for this sleeper, and none is left of it: h7.");
  });
});
