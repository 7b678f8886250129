import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { inDegrees, radians } from "../quantity/angle.ts";
import { DEFAULTS } from "./defaults.ts";
import { defaultsPage } from "./defaults-page.fixture.ts";
import { presetRules, RULE_DEFAULTS, type RuleDefault } from "./rule-defaults.ts";

describe("the table of defaults", () => {
  it("is what the handbook prints", () => {
    const page = readFileSync(new URL("../../../../handbook/defaults.md", import.meta.url), "utf8");
    expect(page).toBe(defaultsPage());
  });

  it("gives a reason for every line", () => {
    for (const [key, { why }] of Object.entries({ ...DEFAULTS, ...RULE_DEFAULTS })) {
      expect(why.length, key).toBeGreaterThan(5);
    }
  });
});

describe("presetRules", () => {
  it("turns the file's units into SI", () => {
    const usual = presetRules("usual");
    expect(usual.trunkMinM.value).toBeCloseTo(0.2, 12);
    expect(usual.strapWidthMinM.value).toBeCloseTo(0.025, 12);
    expect(inDegrees(radians(usual.angleMinRad.value))).toBeCloseTo(25, 12);
    expect(usual.spanMaxM).toEqual({ value: 5, source: "usual" });
  });

  it("leaves out a cap that a preset does not set", () => {
    expect(presetRules("usual").strapHeightMaxM).toBeUndefined();
    expect(presetRules("cautious").strapHeightMaxM?.value).toBe(1.83);
  });

  it("makes cautious no looser than usual, field by field", () => {
    const table: Readonly<Record<string, RuleDefault>> = RULE_DEFAULTS;
    const looseUp = [
      "span_max_m",
      "hammocks_per_tree",
      "strap_height_max_m",
      "low_point_max_m",
      "angle_max_deg",
    ];
    for (const [field, { cautious, usual }] of Object.entries(table)) {
      if (field === "span_ideal_m") continue;
      if (looseUp.includes(field)) expect(cautious ?? Infinity, field).toBeLessThanOrEqual(usual ?? Infinity);
      else expect(cautious ?? 0, field).toBeGreaterThanOrEqual(usual ?? 0);
    }
  });
});
