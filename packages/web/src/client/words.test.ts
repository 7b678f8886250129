import { describe, expect, it } from "vitest";
import { asSentence, fill, WORDS } from "./words.ts";

/** Every text of the table with its place in it. */
function texts(table: object, place = "WORDS"): readonly (readonly [string, string])[] {
  return Object.entries(table).flatMap(([key, value]: [string, unknown]) => {
    if (typeof value === "string") return [[`${place}.${key}`, value] as const];
    return typeof value === "object" && value !== null ? texts(value, `${place}.${key}`) : [];
  });
}

describe("words", () => {
  it("fills every hole, and none is left open in silence", () => {
    expect(fill("{n} of {count}", { n: 3, count: 8 })).toBe("3 of 8");
    expect(() => fill("{n} of {count}", { n: 3 })).toThrow(/count/);
  });

  it("makes a sentence of a phrase, once", () => {
    expect(asSentence("trees looked at: 1 of 2")).toBe("Trees looked at: 1 of 2.");
    expect(asSentence("Already one.")).toBe("Already one.");
  });

  it("never promises: no word of safety, passing or holding stands in the table", () => {
    for (const [place, text] of texts(WORDS)) {
      expect(text, place).not.toMatch(/\b(safe(ly|ty)?|pass(es|ed)?|holds?|guarantee\w*|OK)\b/i);
    }
  });

  it("says no please, no oops and shouts nothing", () => {
    for (const [place, text] of texts(WORDS)) {
      expect(text, place).not.toMatch(/\b(please|oops|sorry)\b|successful|!/i);
    }
  });
});
