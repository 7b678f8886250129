import { checks } from "@nightspan/checks";
import { describe, expect, it } from "vitest";
import rows from "./beaufort.checks.json" with { type: "json" };
import { beaufort } from "./beaufort.ts";

checks(rows, ({ wind_m_s }) => ({ force: beaufort(wind_m_s) }));

describe("the Beaufort scale", () => {
  it("ends at twelve", () => {
    expect(beaufort(80)).toBe(12);
  });

  it("takes a wind as printed, to a tenth", () => {
    expect(beaufort(5.44)).toBe(3);
    expect(beaufort(5.46)).toBe(4);
  });
});
