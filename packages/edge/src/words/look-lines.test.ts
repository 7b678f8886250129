import { byRule, type Finding, type Plan, type PlannedBerth } from "@nightspan/core";
import { describe, expect, it } from "vitest";
import { exampleCamp, planOf, woodCamp } from "../examples.fixture.ts";
import { openCamp } from "../format/open-camp.ts";
import { lookLines } from "./look-lines.ts";
import { namesOf } from "./names.ts";

const { camp } = exampleCamp("demo");
const demo = planOf(camp);
const names = namesOf(camp);

/** A plan of so many berths, each on two trees of its own with these findings. */
function planned(count: number, findings: (id: string) => readonly Finding[]): Plan {
  const [first] = demo.berths;
  if (first === undefined) throw new Error("the demo has berths");
  const berths = Array.from({ length: count }, (_, index): PlannedBerth => {
    const id = String(index + 1);
    return { ...first, id, headTree: `h${id}`, footTree: `f${id}`, findings: findings(id) };
  });
  return { ...demo, berths, findings: [] };
}

function unseen(tree: string): Finding {
  const told = { rule: "tree.looked-at", source: "camp-file", subject: `tree/${tree}`, unit: "1" } as const;
  return byRule({ ...told, sense: "at-least", demand: 0, limit: 1 }, "look-again");
}

function unknownStrength(id: string): Finding {
  const told = { rule: "part.strength-unknown", source: "camp-file", unit: "1" } as const;
  return byRule(
    { ...told, subject: `berth/${id}/hammock`, sense: "at-least", demand: 0, limit: 1 },
    "look-again",
  );
}

describe("what to look at", () => {
  it("is told of all berths at once where it holds for all, else of their numbers, runs by their ends", () => {
    expect(
      lookLines(
        planned(12, (id) => [unknownStrength(id)]),
        names,
      ),
    ).toEqual(["All berths: Nobody knows what the hammock carries. Read the maker's plate."]);
    const some = planned(12, (id) =>
      ["1", "2", "3", "4", "9", "11", "12"].includes(id) ? [unknownStrength(id)] : [],
    );
    expect(lookLines(some, names)[0]).toMatch(/^Berths 1 to 4, 9, 11, 12: /);
  });

  it("names many trees by ten berths at a time, each tree once", () => {
    const lines = lookLines(
      planned(26, (id) => [unseen(`h${id}`), unseen(`f${id}`)]),
      names,
    );
    expect(lines[0]).toBe("Nobody has looked at 52 trees: trunk, roots and what is above.");
    expect(lines.slice(1).map((line) => line.slice(0, line.indexOf(":")))).toEqual([
      "  Berths 1 to 10",
      "  Berths 11 to 20",
      "  Berths 21 to 26",
    ]);
    expect(
      lines
        .slice(1)
        .join(" ")
        .match(/\b[hf]\d+/g),
    ).toHaveLength(52);
  });

  it("does not say that nobody looked where somebody did, in a camp without a day", () => {
    const seen = { condition: "healthy", looked_at: { by: "Ada", on: "2027-05-14" } };
    const trees = [0, 4.2].map((x_m, index) => ({ id: `t${index}`, x_m, y_m: 0, dbh_cm: 30, ...seen }));
    const opened = openCamp(woodCamp(trees));
    if (!opened.ok) throw new Error(JSON.stringify(opened.refusals));
    const wood = opened.value.camp;
    const lines = lookLines(planOf(wood), namesOf(wood));
    expect(lines).toContain("Look again on the day, for an earlier look does not count: t0, t1.");
    expect(lines.join("\n")).not.toContain("Nobody has looked");
  });
});
