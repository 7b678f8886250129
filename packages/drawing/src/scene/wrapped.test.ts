import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { plainLabels } from "../words/plain-labels.ts";
import { plainMeasure } from "../words/plain-measure.ts";
import { name } from "./names.ts";
import { brokenLines, wrapped } from "./wrapped.ts";

const words = { labels: plainLabels, measure: plainMeasure };

describe("brokenLines", () => {
  it("loses no letter and fits the width", () => {
    fc.assert(
      fc.property(fc.array(fc.stringMatching(/^[a-z]{1,14}$/), { minLength: 1, maxLength: 20 }), (pieces) => {
        const lines = brokenLines(name(pieces.join(" ")), 120, 15, 500, words);
        expect(lines.join("").replace(/ /g, "")).toBe(pieces.join(""));
        for (const line of lines) expect(plainMeasure(line, 15, 500)).toBeLessThanOrEqual(120);
      }),
      { seed: 1, numRuns: 200 },
    );
  });

  it("breaks a word that is wider than the line between graphemes", () => {
    expect(brokenLines(name("नीरानीरा"), 25, 15, 500, words).join("")).toBe("नीरानीरा");
  });
});

describe("wrapped", () => {
  it("cuts what would not fit in the lines allowed", () => {
    const set = wrapped(
      name("one two three four five six seven"),
      [0, 0],
      { size: 15, width: 60, leading: 20, mostLines: 2 },
      words,
    );
    expect(set.lines).toBe(2);
    expect(set.items.at(-1)).toMatchObject({ maxWidth: 60 });
  });
});
