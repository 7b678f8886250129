import { describe, expect, it } from "vitest";
import { colourTokens, tokensCss } from "./tokens-css.ts";
import { THEMES } from "./tokens.ts";

describe("tokensCss", () => {
  it("names every colour in every theme of the screen, and binds it to shapes", () => {
    const css = tokensCss();
    for (const token of colourTokens()) {
      for (const theme of ["light", "dark", "red-night"] as const) {
        expect(css).toContain(`--ns-${token}: ${THEMES[theme][token]};`);
      }
      expect(css).toContain(`.ns-fill-${token} {\n  fill: var(--ns-${token});\n}`);
      expect(css).toContain(`.ns-stroke-${token} {\n  stroke: var(--ns-${token});\n}`);
    }
  });
});
