import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formatFeet, parseLength } from "./lengths.ts";
import { formatPounds, parseMass } from "./masses.ts";

const metres = (text: string) => {
  const parsed = parseLength("--span", text);
  return parsed.ok ? parsed.value : NaN;
};
const kilograms = (text: string) => {
  const parsed = parseMass("--mass", text);
  return parsed.ok ? parsed.value : NaN;
};

describe("lengths and masses as people write them", () => {
  it.each([
    ["4.5", 4.5],
    [" 4.5 m", 4.5],
    ["450cm", 4.5],
    ["-0.3", -0.3],
    ["−30 cm", -0.3],
    ["14ft", 4.2672],
    ["14 ft 9 in", 4.4958],
    ["5'9\"", 1.7526],
    ["69in", 1.7526],
  ])("%s", (text, expected) => {
    expect(metres(text)).toBeCloseTo(expected, 12);
  });

  it.each([
    ["80", 80],
    ["80 kg", 80],
    ["175lb", 79.37866475],
    ["12st", 76.20351816],
  ])("%s", (text, expected) => {
    expect(kilograms(text)).toBeCloseTo(expected, 9);
  });

  it("refuses what is no length, and says what a comma should be", () => {
    for (const text of ["", "four", "4,5", "4.5 km", "4m5", "1e3", "Infinity"])
      expect(metres(text)).toBeNaN();
    const comma = parseLength("--span", "4,5");
    expect(comma.ok ? "" : comma.refusals[0]?.need).toContain("with a point and not a comma");
    for (const text of ["", "-80", "80 t", "heavy"]) expect(kilograms(text)).toBeNaN();
  });

  it("writes feet and inches that read back to half an inch", () => {
    fc.assert(
      fc.property(fc.double({ min: -20, max: 20, noNaN: true }), (lengthM) => {
        expect(Math.abs(metres(formatFeet(lengthM)) - lengthM)).toBeLessThanOrEqual(0.0127 + 1e-9);
      }),
      { seed: 1, numRuns: 200 },
    );
    expect(formatFeet(1.7526)).toBe("5\u00a0ft 9\u00a0in");
    expect(formatPounds(80)).toBe("176\u00a0lb");
  });
});
