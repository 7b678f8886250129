import { describe, expect, it } from "vitest";
import { berthOn, BODY, PITCH, RECTANGLE, weatherOf } from "./berth.fixture.ts";
import { COVERED_SHARE, coveredWettings, findLowerBy, partShares, type PartShareInput } from "./lower-by.ts";
import { pitchTarp } from "./tarp-geometry.ts";
import type { Weather } from "./wetting.ts";

const { panels } = pitchTarp(RECTANGLE, { ...PITCH, headTieM: 2.2, footTieM: 2.3 }, berthOn());
const input = inputFor(weatherOf(3, 2.2));

function inputFor(weather: Weather): PartShareInput {
  const windsFrom = [-0.4, 0, 0.4];
  const open = coveredWettings({ body: BODY, panels: [], weather, windsFrom });
  return { body: BODY, panels, weather, windsFrom, open };
}

describe("a plain answer for each side and end", () => {
  it("tells the end that the rain blows into, and by how much to lower the tarp", () => {
    const shares = partShares(input);
    expect(shares.foot).toBeGreaterThan(COVERED_SHARE);
    const lowerM = findLowerBy(input, "foot", 0.8) ?? Number.NaN;
    expect(lowerM).toBeGreaterThan(0.05);
    const down = (downM: number) =>
      partShares({
        ...input,
        panels: panels.map(({ name, corners }) => ({
          name,
          corners: corners.map(([x, y, z]) => [x, y, z - downM] as const),
        })),
      }).foot;
    expect(down(lowerM)).toBeLessThan(COVERED_SHARE);
    expect(down(lowerM - 0.02)).toBeGreaterThanOrEqual(COVERED_SHARE);
  });

  it("says nothing where lowering alone does not do it", () => {
    expect(findLowerBy(inputFor(weatherOf(3, 12)), "foot", 0.5)).toBeUndefined();
    expect(findLowerBy(input, "foot", 0)).toBeUndefined();
  });
});
