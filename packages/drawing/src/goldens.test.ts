import { existsSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { scenes } from "../golden/scenes.ts";
import { plainLabels, plainMeasure, renderSvg } from "./index.ts";

const FOLDER = new URL("../golden/", import.meta.url);

/** A drawing that differs is written beside its golden; a person looks at it and runs `npm run golden -- NAME`. */
describe("goldens", () => {
  it("have unique names", () => {
    const names = scenes.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
  });

  it.each(scenes)("$name is drawn as it was accepted", ({ name, theme, draw }) => {
    const drawn = renderSvg(draw(), { labels: plainLabels, measure: plainMeasure, theme, standalone: true });
    const [kept, changed] = [new URL(`${name}.svg`, FOLDER), new URL(`${name}-changed.svg`, FOLDER)];
    const accepted = existsSync(kept) ? readFileSync(kept, "utf8") : undefined;
    if (drawn === accepted) rmSync(changed, { force: true });
    else writeFileSync(changed, drawn);
    expect(drawn === accepted, `${name} differs: look at golden/${name}-changed.svg`).toBe(true);
  });
});
