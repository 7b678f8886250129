import { CAUTION_KEYS } from "@nightspan/core";
import { describe, expect, it } from "vitest";
import { exampleCamp, planOf } from "../examples.fixture.ts";
import { CAUTIONS } from "./cautions.ts";
import { displayWidth, padded, wrapped } from "./display-width.ts";
import { labels, measure } from "./labels.ts";
import { fencedName, plainText } from "./plain-text.ts";
import { angle, atBodyMark, day, handLength, hanging, length, shortBodyMark, steps } from "./quantities.ts";
import { sayAssumptions } from "./say-assumptions.ts";
import { refusalJson, sayRefusal } from "./say-refusal.ts";
import { sayLookedAt, sayNotChecked, sayVerdict } from "./say-verdict.ts";
import { summaryLines } from "./summary-lines.ts";
import { namesOf } from "./names.ts";

describe("quantities", () => {
  it("are told with a no-break space, a true minus and as many digits as a hand needs", () => {
    expect(length(-0.5)).toBe("−0.50\u00a0m");
    expect(length(-0.001)).toBe("0.00\u00a0m");
    expect(handLength(1.7249)).toBe("1.70\u00a0m");
    expect(handLength(1.7251)).toBe("1.75\u00a0m");
    expect(angle(Math.PI / 6)).toBe("30°");
    expect(hanging(784.5)).toBe("like 80\u00a0kg hanging");
    expect(day("2027-05-14")).toBe("14 May");
  });

  it("count steps to the half", () => {
    expect(steps(4, 0.72)).toBe("5½");
    expect(steps(4.2, 0.7)).toBe("6");
  });

  it("place heights on a body", () => {
    expect(atBodyMark(0.87 * 1.8, 1.8, "your")).toBe("at your chin");
    expect(atBodyMark(1.2 * 1.8 + 0.1, 1.8, "Ada's")).toBe("10\u00a0cm above Ada's full reach");
    expect(shortBodyMark(0.285 * 1.8 - 0.1, 1.8)).toBe("knee − 10\u00a0cm");
  });
});

describe("verdicts", () => {
  it("have the words of the house, and what stands beside them", () => {
    expect((["clear", "look-again", "do-not-hang"] as const).map(sayVerdict)).toEqual([
      "no rule broken",
      "look again",
      "do not hang",
    ]);
    expect(sayLookedAt({ done: 13, of: 14, by: ["Ada", "Bo"], on: "2027-05-14" })).toBe(
      "trees looked at: 13 of 14, Ada and Bo, 14 May",
    );
    expect(sayNotChecked(["tarp", "warmth"])).toBe("not checked: tarp, warmth");
    expect(sayNotChecked([])).toBeUndefined();
  });
});

describe("refusals", () => {
  it("are one line: file, field, what was found, what is needed", () => {
    const refusal = { field: "sleepers[2].mass_kg", got: "heavy\n\u001b[2J", need: "a number" };
    expect(sayRefusal("c.json", refusal)).toBe(
      'c.json: sleepers[2].mass_kg: found "heavy\\n\\u001b[2J", needed a number',
    );
    expect(sayRefusal("c.json", { field: "file", got: undefined, need: "a camp" })).toBe(
      "c.json: found nothing, needed a camp",
    );
    expect(sayRefusal("c", { field: "x", got: { a: "y".repeat(99) }, need: "z" }).length).toBeLessThan(90);
  });

  it("can be written as JSON whatever was found", () => {
    expect(refusalJson({ field: "x", got: NaN, need: "y" })).toEqual({ field: "x", got: "NaN", need: "y" });
    expect(refusalJson({ field: "x", got: undefined, need: "y", binds: "strap-reach" })).toEqual({
      field: "x",
      got: null,
      need: "y",
      binds: "strap-reach",
    });
  });
});

describe("text on a terminal", () => {
  it("is as wide as its signs", () => {
    expect(displayWidth("Zoë")).toBe(3);
    expect(displayWidth("Adéyẹmí")).toBe(7);
    expect(displayWidth("王小梅")).toBe(6);
    expect(displayWidth("\u2068أمينة\u2069")).toBe(5);
    expect(displayWidth("5½ − 10\u00a0cm …")).toBe(12);
    expect(displayWidth("Ñandú\u00ad")).toBe(5);
    expect(padded("王", 4)).toBe("王  ");
  });

  it("breaks at spaces within its width", () => {
    const lines = wrapped("one two three four five six", 9, "  ");
    expect(lines).toEqual(["one two", "  three", "  four", "  five", "  six"]);
    expect(wrapped("unbroken", 3)).toEqual(["unbroken"]);
    expect(wrapped("  أمينة خليل 王小梅 Zoë", 14, "  ")).toEqual(["  أمينة خليل", "  王小梅 Zoë"]);
  });

  it("has no signs that nobody sees", () => {
    expect(plainText("a\u001b[1mb\u202ec\nd")).toBe("a [1mb c d");
    expect(plainText("\u2069\u2068a\u2068")).toBe("  a ");
  });

  it("has a fence round a name from right to left, and every column where it was", () => {
    expect(plainText(`1 ${fencedName("أمينة\u2069")} 5`)).toBe("1 \u2068أمينة \u2069 5");
    expect(fencedName("Zoë")).toBe("Zoë");
    const { camp } = exampleCamp("demo");
    const lines = summaryLines(planOf(camp), camp, { why: false });
    const from = lines.findIndex(({ text }) => text === "Berths");
    const rows = lines.slice(from + 1, from + 16);
    const columns = rows.slice(1).map(({ text }) => displayWidth(text.slice(0, text.indexOf(" to "))));
    expect(new Set(rows.map(({ text }) => text.includes("\u2068")))).toEqual(new Set([true, false]));
    expect(Math.max(...columns) - Math.min(...columns)).toBeLessThanOrEqual(1);
  });
});

describe("labels and widths for drawings", () => {
  it("say what the drawings' own words say", () => {
    expect(labels({ word: "verdict.clear" })).toBe("no rule broken");
  });

  it("take one sign for one sign, however it is made", () => {
    expect(measure("👩‍👩‍👧", 10, 400)).toBe(measure("👧", 10, 400));
    expect(measure("e\u0301", 10, 400)).toBeCloseTo(measure("e", 10, 400), 9);
    expect(measure("WW", 10, 700)).toBeGreaterThan(measure("ii", 10, 700));
  });
});

describe("what every summary says", () => {
  it("has one caution for each key, each a sentence", () => {
    expect(CAUTIONS.map(({ key }) => key)).toEqual([...CAUTION_KEYS]);
    for (const { text } of CAUTIONS) expect(text).toMatch(/^[A-Z].*\.$/);
  });

  it("goes from the verdict to the cautions in the order of doing", () => {
    const { camp } = exampleCamp("demo");
    const lines = summaryLines(planOf(camp), camp, { why: true });
    expect(lines[0]?.kind).toBe("verdict");
    expect(lines.filter(({ kind }) => kind === "heading").map(({ text }) => text)).toEqual([
      "Look on the ground",
      "Berths",
      "Tarps",
      "Kit short, and kept free",
      "Arrive and stop",
      "The night",
      "To cut",
      "Assumed",
      "Why",
      "Cautions",
    ]);
  });

  it("tells the assumptions of weight first, by name or by number", () => {
    const { camp } = exampleCamp("pairs");
    const names = namesOf(camp);
    const all = sayAssumptions(camp.defaultsUsed, names, "all");
    expect(all).toHaveLength(camp.defaultsUsed.length);
    expect(sayAssumptions(camp.defaultsUsed, names, "counted").at(-1)).toMatch(/^\d+ more, of less weight/);
    const one = [{ field: "sleepers[].mass_kg", value: 80, for: ["leila"] }];
    expect(sayAssumptions(one, names, "weighty")[0]).toContain("لیلا رضایی");
  });
});
