import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseJson } from "./json-text.ts";
import { keysTwice } from "./keys-twice.ts";

describe("fields written twice", () => {
  it("are told by path and line, wherever they stand and however they are spelt", () => {
    const text = [
      '{"sleepers": [{"id": "a"}, {"mass_kg": 70,',
      '"mass_kg": 160, "kit": {"x": [{}, [1, {"y": 1, "y": 2}]]}}],',
      '"name": "n", "n\\u0061me": "m", "__proto__": 1, "__proto__": 2}',
    ].join("\n");
    expect(keysTwice(text).map(({ field, got }) => [field, got])).toEqual([
      ["sleepers[1].mass_kg", "two values, on lines 1 and 2"],
      ["sleepers[1].kit.x[1][1].y", "two values, on lines 2 and 2"],
      ["name", "two values, on lines 3 and 3"],
      ["__proto__", "two values, on lines 3 and 3"],
    ]);
    const parsed = parseJson(text);
    expect(parsed.ok ? [] : parsed.refusals).toEqual(keysTwice(text));
  });

  it("are none in what JSON writes, whatever stands in its texts", () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        expect(keysTwice(JSON.stringify({ value, text: '"a": 1, "a": 2, {' }, null, 1))).toEqual([]);
      }),
      { seed: 1, numRuns: 300 },
    );
  });

  it("are found when any key of an object is written again at its end", () => {
    fc.assert(
      fc.property(fc.dictionary(fc.string(), fc.jsonValue(), { minKeys: 1 }), fc.nat(), (value, pick) => {
        const keys = Object.keys(value);
        const key = keys[pick % keys.length] ?? "";
        const text = `${JSON.stringify(value).slice(0, -1)},${JSON.stringify(key)}:0}`;
        expect(keysTwice(text)).toHaveLength(1);
      }),
      { seed: 1, numRuns: 300 },
    );
  });
});
