import { readFileSync } from "node:fs";
import { join } from "node:path";
import { ENGLISH } from "@nightspan/drawing";
import { readCamp } from "@nightspan/edge";
import { expect, it } from "vitest";
import { exampleText, ROOT } from "../testing.fixture.ts";

/** Drawn by `scripts/demo-map.ts`; here it is held to the demo camp as it is now. */
it("the picture of the demo camp shows that camp: every tree, every sleeper, every caution, no weight and no pull", () => {
  const svg = readFileSync(join(ROOT, "handbook/pictures/demo-map.svg"), "utf8");
  const opened = readCamp(exampleText("demo"));
  if (!opened.ok) throw new Error("the demo camp does not open");
  const { ground, sleepers, name } = opened.value.camp;
  const words = svg.replaceAll(/base64,[^)]*/g, "");
  const said = words.replaceAll(/<[^>]*>/g, " ").replaceAll(/\s+/g, " ");
  expect(said).toContain(name);
  for (const sleeper of sleepers) expect(said).toContain(sleeper.name);
  for (const { id } of ground?.trees ?? []) expect(words).toContain(`data-ref="tree/${id}"`);
  for (const [key, caution] of Object.entries(ENGLISH)) {
    if (key.startsWith("caution.")) expect(said).toContain(caution);
  }
  expect(said).not.toMatch(/\d\s?(?:kg|N)\b/);
  expect(svg).toContain("data:font/woff2;base64,");
  expect(svg.length).toBeLessThan(160_000);
});
