import { describe, expect, it } from "vitest";
import { contrastRatio } from "./contrast.ts";
import type { Sight } from "./colour-blind.ts";
import { lookDifference } from "./colour-difference.ts";
import { THEMES, type ColourToken, type ThemeName } from "./tokens.ts";

const SCREENS: readonly ThemeName[] = ["light", "dark", "red-night"];
const GROUNDS: readonly ColourToken[] = ["paper", "panel", "wood"];
const TEXTS: readonly ColourToken[] = ["ink", "soft", "cloth", "clear", "no"];
const GRAPHICS: readonly ColourToken[] = ["rule", "strap", "water"];
const TINTS: readonly ColourToken[] = ["cloth-tint", "look-tint", "no-tint", "water-tint"];
const SIGHTS: readonly Sight[] = ["usual", "protan", "deutan", "tritan"];

/** The least contrast of a colour over the grounds it may lie on. */
function worst(theme: ThemeName, token: ColourToken, grounds: readonly ColourToken[]): number {
  const colours = THEMES[theme];
  return Math.min(...grounds.map((ground) => contrastRatio(colours[token], colours[ground])));
}

describe.each(SCREENS)("colours of %s", (theme) => {
  it.each(TEXTS)("text in %s can be read on every ground: 7 to 1", (token) => {
    expect(worst(theme, token, GROUNDS)).toBeGreaterThanOrEqual(7);
  });

  it.each(GRAPHICS)("lines in %s can be seen on every ground: 3 to 1", (token) => {
    expect(worst(theme, token, GROUNDS)).toBeGreaterThanOrEqual(3);
  });

  it("words on fills can be read", () => {
    expect(worst(theme, "on-action", ["cloth", "no", "ink"])).toBeGreaterThanOrEqual(7);
    expect(worst(theme, "look-ink", ["look"])).toBeGreaterThanOrEqual(7);
  });

  it.each(TINTS)("ink on %s keeps nearly all its contrast", (token) => {
    expect(worst(theme, "ink", [token])).toBeGreaterThanOrEqual(theme === "red-night" ? 7 : 11);
  });
});

/** The least difference between any two colours that share a drawing, over all kinds of sight. */
function leastDifference(theme: ThemeName, tokens: readonly ColourToken[]): number {
  const colours = THEMES[theme];
  const pairs = tokens.flatMap((one, index) => tokens.slice(index + 1).map((other) => [one, other] as const));
  const all = SIGHTS.flatMap((sight) =>
    pairs.map(([one, other]) => lookDifference(colours[one], colours[other], sight)),
  );
  return Math.min(...all);
}

describe.each(["light", "dark"] as const)("colour-blind sight of %s", (theme) => {
  it("tells the three verdict fills apart", () => {
    expect(leastDifference(theme, ["clear", "look", "no"])).toBeGreaterThanOrEqual(6);
  });

  it("tells cloth, strap, refusal, water and ink apart", () => {
    expect(leastDifference(theme, ["cloth", "strap", "no", "water", "ink"])).toBeGreaterThanOrEqual(6);
  });
});

describe("one ink", () => {
  it("is black and white alone", () => {
    expect(new Set(Object.values(THEMES["one-ink"]))).toEqual(new Set(["#000000", "#FFFFFF"]));
  });
});
