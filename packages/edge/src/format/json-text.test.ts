import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseJson } from "./json-text.ts";

function told(text: string): string {
  const parsed = parseJson(text);
  if (parsed.ok) return "no fault";
  return parsed.refusals.map(({ field, got, need }) => `${field}: ${String(got)}: ${need}`).join("\n");
}

describe("JSON text", () => {
  it.each([
    ["", "line 1, column 1: nothing at all: a value"],
    ['{"a": [1', 'line 1, column 9: the end of the text: a comma or "]"'],
    ['{"a": 1\n "b": 2}', 'line 2, column 2: "b":: a comma or "}"'],
    ['{"a": tru}', "line 1, column 7: tru}: a value"],
    ["[1,]", "line 1, column 4: ]: a value"],
    ['{"a": 1,}', "line 1, column 9: }: a field name in quotation marks"],
    ["{a: 1}", 'line 1, column 2: a:: a field name in quotation marks or "}"'],
    ['{"a" 1}', "line 1, column 6: 1}: a colon"],
    ['{"a": "x\ny"}', 'line 1, column 7: "x: a text that ends with a quotation mark on its own line'],
    ["{} x", "line 1, column 4: x: nothing more"],
    ["[1 2]", 'line 1, column 4: 2]: a comma or "]"'],
    ["[01]", 'line 1, column 3: 1]: a comma or "]"'],
    ["{\n\n]", 'line 3, column 1: ]: a field name in quotation marks or "}"'],
  ])("tells where %j stops being JSON", (text, fault) => {
    expect(told(text)).toBe(fault);
  });

  it("takes a byte-order mark for no fault", () => {
    expect(parseJson('\uFEFF{"a": 1}')).toEqual({ ok: true, value: { a: 1 } });
  });

  it("refuses more than 20 MB", () => {
    expect(told(`"${"x".repeat(20_000_000)}"`)).toContain("at most 20 MB");
  });

  it("reads whatever JSON writes, and finds a fault in it cut short at any place", () => {
    fc.assert(
      fc.property(fc.jsonValue(), fc.nat(), (value, cut) => {
        const text = JSON.stringify([value]);
        expect(parseJson(text)).toEqual({ ok: true, value: JSON.parse(text) as unknown });
        const short = text.slice(0, cut % text.length);
        const column = Number(/^line 1, column (\d+): /.exec(told(short))?.[1]);
        expect(column).toBeGreaterThan(0);
        expect(column).toBeLessThanOrEqual(short.length + 1);
      }),
      { seed: 1, numRuns: 300 },
    );
  });

  it("agrees with the engine on what is JSON when one sign is changed", () => {
    const signs = fc.constantFrom(
      "{",
      "}",
      "[",
      "]",
      ",",
      ":",
      '"',
      "0",
      "-",
      ".",
      "e",
      "+",
      " ",
      "\\",
      "t",
      "n",
    );
    fc.assert(
      fc.property(fc.jsonValue(), fc.nat(), signs, (value, at, sign) => {
        const text = JSON.stringify({ value }, null, 1);
        const place = at % text.length;
        const changed = text.slice(0, place) + sign + text.slice(place + 1);
        const isJson = parseJson(changed).ok;
        if (!isJson) expect(told(changed)).toMatch(/^line \d+, column \d+: /);
        expect(isJson).toBe(engineReads(changed));
      }),
      { seed: 1, numRuns: 500 },
    );
  });
});

function engineReads(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}
