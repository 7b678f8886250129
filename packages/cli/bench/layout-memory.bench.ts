import { memoryUsage, resourceUsage } from "node:process";
import { berthPlaces, searchBerths } from "@nightspan/core";
import { highsSolver } from "@nightspan/edge";
import loadHighs from "highs";
import { OPEN_WOOD, stemMap } from "./stem-map.fixture.ts";

/**
 * What the search takes beyond the loaded solver and the wood, and time: the most memory that the process ever held,
 * less what it held before. Where starting up once held more than all that followed, this says too much, never too little.
 *
 * At most 100 MB, and proven, or it ends with code 1. Cases grow. The largest has no rival beside it: the solver's defaults on pairs do not end in a time worth waiting for.
 */
const CASES = [
  { name: "3,000 stems, 250 people", stems: 3000, people: 250 },
  { name: "10,000 stems, 1,000 people", stems: 10_000, people: 1000 },
  { name: "100,000 stems, 5,000 people", stems: 100_000, people: 5000 },
];

const WANTED_MB = 100;

const highs = await loadHighs();
for (const { name, stems, people } of CASES) {
  const ground = stemMap({ ...OPEN_WOOD, stems });
  const before = memoryUsage().rss / 1024 / 1024;
  const start = performance.now();
  const { places, conflicts } = berthPlaces(ground);
  const found = performance.now();
  const costUnits = Float64Array.from(places, ({ spanM }) => Math.round(1e4 * Math.abs(spanM - 4)));
  const { placed, proven, method } = searchBerths(
    { trees: stems, places, capacity: 2, conflicts, classes: [{ people, costUnits }] },
    { solver: highsSolver(highs) },
  );
  const end = performance.now();
  const more = mostHeldMB() - before;
  console.log(`${name}: ${more.toFixed(0)} MB more than before`);
  if (!(more <= WANTED_MB && proven)) process.exitCode = 1;
  console.log(
    `  places ${(found - start).toFixed(0)} ms, search ${(end - found).toFixed(0)} ms, ${placed} placed`,
  );
  console.log(`  ${method}, ${proven ? "proven" : "NOT proven"}`);
}

/** The most that the process has held so far. */
function mostHeldMB(): number {
  return resourceUsage().maxRSS / 1024;
}
