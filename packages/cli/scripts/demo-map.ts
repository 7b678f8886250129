import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { mapSheetScene, renderSvg } from "@nightspan/drawing";
import { labels, measure, readCamp } from "@nightspan/edge";
import { embeddedFaces } from "../src/papers/embedded-faces.ts";
import { planWithSolver } from "../src/plan-with-solver.ts";

const FOLDER = new URL("../../../handbook/pictures/", import.meta.url);
const DEMO = new URL("../../../examples/demo.camp.json", import.meta.url);

/**
 * Plans the demo camp and draws its map for the README and the handbook. Run by hand when the picture should show a newer
 * plan: npx tsx --conditions=camp-source packages/cli/scripts/demo-map.ts
 */
async function main(): Promise<void> {
  const opened = readCamp(readFileSync(DEMO, "utf8"));
  if (!opened.ok) throw new Error("the demo camp does not open");
  const { camp } = opened.value;
  const planned = await planWithSolver(camp);
  if (!planned.ok) throw new Error("the demo camp is not planned");
  const words = { labels, measure };
  const scene = mapSheetScene(planned.value, camp, { words, widthPx: 1200, heightPx: 640 });
  const file = { ...words, theme: "light", standalone: true } as const;
  const drawn = renderSvg(scene, { ...file, fontFaces: embeddedFaces(renderSvg(scene, file)) });
  mkdirSync(FOLDER, { recursive: true });
  writeFileSync(new URL("demo-map.svg", FOLDER), drawn);
}

await main();
