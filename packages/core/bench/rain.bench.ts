import { chanceFrom } from "../src/numeric/seeded.ts";
import { findBestPitch } from "../src/shelter/best-pitch.ts";
import { berthOn, BODY, PITCH, RECTANGLE, weatherOf } from "../src/shelter/berth.fixture.ts";
import { speedAtShare } from "../src/shelter/falling-rain.ts";
import { rainRose } from "../src/shelter/rain-rose.ts";
import { rainShade } from "../src/shelter/rain-shade.ts";
import { pitchTarp } from "../src/shelter/tarp-geometry.ts";
import { wetMap } from "../src/shelter/wet-map.ts";
import { wetting } from "../src/shelter/wetting.ts";

/**
 * Rain under a tarp: how many rays a plain Monte Carlo needs for the accuracy of the quadrature, in this very run; and how
 * long a wet map, a rose and a pitch search take, the best of several rounds.
 * A ray of the quadrature is one patch seen along the wind: all its drop sizes and gusts at once. Both see a patch by its middle.
 * Ends with code 1 where Monte Carlo needs fewer than 20 times as many rays.
 */
const GATE = 20;

const WEATHER = weatherOf(3, 3, 7);
const FROM = 0.3;
const { panels } = pitchTarp(RECTANGLE, PITCH, berthOn());

/** Share of the open rain that reaches the hammock. */
function byQuadrature(): { share: number; rays: number } {
  const open = wetting(BODY, [], WEATHER, FROM).wholeM2;
  return { share: wetting(BODY, panels, WEATHER, FROM).wholeM2 / open, rays: BODY.patches.length };
}

/**
 * The plain way: a patch by its area, a wind by its share, a drop by the water that falls; one ray each, weighted by what
 * it brings to the patch.
 */
function byMonteCarlo(rays: number, seed: number): number {
  const chance = chanceFrom(seed);
  const [upX, upY] = [Math.cos(FROM), Math.sin(FROM)];
  const shade = rainShade(panels, upX, upY);
  const sizes = BODY.patches.map(({ area }) => Math.hypot(...area));
  const whole = sizes.reduce((sum, size) => sum + size, 0);
  let [wet, open] = [0, 0];
  for (let ray = 0; ray < rays; ray++) {
    const patch = BODY.patches[chosen(sizes, whole * chance.even())];
    const wind = WEATHER.winds[chosen(SHARES, chance.even())];
    if (patch === undefined || wind === undefined) continue;
    const slope = wind.windMS / speedAtShare(WEATHER.rain, chance.even());
    const brings = patch.area[2] + slope * (patch.area[0] * upX + patch.area[1] * upY);
    if (brings <= 0) continue;
    const weight = brings / Math.hypot(...patch.area);
    open += weight;
    if (!isShaded(shade(patch.middle), slope)) wet += weight;
  }
  return wet / open;
}

const SHARES = WEATHER.winds.map(({ share }) => share);

function chosen(sizes: readonly number[], at: number): number {
  let sum = 0;
  const index = sizes.findIndex((size) => (sum += size) >= at);
  return index < 0 ? sizes.length - 1 : index;
}

function isShaded(ranges: readonly number[], slope: number): boolean {
  return ranges.some((low, index) => index % 2 === 0 && slope >= low && slope <= (ranges[index + 1] ?? 0));
}

/** Root mean square error of Monte Carlo with so many rays, over runs of its own, against the mean of all of them. */
function spreadOf(rays: number, runs: number): { mean: number; error: number } {
  const shares = Array.from({ length: runs }, (_, run) => byMonteCarlo(rays, run + 1));
  const mean = shares.reduce((sum, share) => sum + share, 0) / runs;
  const square = shares.reduce((sum, share) => sum + (share - mean) ** 2, 0) / (runs - 1);
  return { mean, error: Math.sqrt(square) };
}

function milliseconds(rounds: number, run: () => void): number {
  let best = Infinity;
  for (let round = 0; round < rounds; round++) {
    const start = performance.now();
    run();
    best = Math.min(best, performance.now() - start);
  }
  return best;
}

function row(what: string, figure: string, aim: string): void {
  console.log(`${what.padEnd(62)}${figure.padStart(14)}   ${aim}`);
}

const RAYS = 4_000;
const RUNS = 200;
const exact = byQuadrature();
const plain = spreadOf(RAYS, RUNS);
// How far the quadrature is off, no better than Monte Carlo of all runs together can tell.
const off = Math.max(Math.abs(exact.share - plain.mean), plain.error / Math.sqrt(RUNS));
const needed = RAYS * (plain.error / off) ** 2;
const ratio = needed / exact.rays;
row("share of the open rain, by quadrature", `${(exact.share * 100).toFixed(3)} %`, `${exact.rays} rays`);
row(`  by Monte Carlo, ${RUNS} runs of ${RAYS} rays`, `${(plain.mean * 100).toFixed(3)} %`, "");
row("  error of the quadrature, at most", `${(off * 100).toFixed(4)} %`, "");
row("  rays that Monte Carlo needs for it", needed.toFixed(0), "");
row("  ratio", `${ratio.toFixed(0)} ×`, `gate ≥ ${GATE}`);
if (!(ratio >= GATE)) process.exitCode = 1;

const grid = { fromXM: -1, fromYM: -2, zM: 0.8, cellM: 0.1, columns: 62, rows: 40 };
const map = milliseconds(12, () => wetMap(grid, panels, WEATHER, [0, -0.39, 0.39, -0.79, 0.79]));
row("wet map of one berth, 2480 cells × 5 winds", `${map.toFixed(1)} ms`, "aim ≤ 20");
row(
  "rose, 36 winds",
  `${milliseconds(20, () => rainRose(BODY, panels, WEATHER)).toFixed(1)} ms`,
  "aim ≤ 200",
);
for (const effort of ["few", "many"] as const) {
  let looked = 0;
  const search = milliseconds(5, () => {
    looked = findBestPitch({ ...searchInput(), effort })?.looked ?? 0;
  });
  row(`pitch search, ${looked} pitches`, `${search.toFixed(0)} ms`, effort === "many" ? "aim ≤ 300" : "");
}

function searchInput() {
  return {
    choices: [{ item: "tarp", cut: RECTANGLE, massKg: 0.8 }],
    site: {
      berth: berthOn(),
      body: BODY,
      weather: WEATHER,
      windsFrom: [-0.79, -0.39, 0, 0.39, 0.79],
      gustMS: 7,
      surrounding: "wood",
      cord: { setN: 80, eaN: 20_000 },
      strapRise: { head: 0.53, foot: 0.63 },
    },
    reachM: 2.1,
    overhangM: 0.15,
    headroomM: 0.15,
    ventM2: 1.5,
    rainWeight: 1,
  } as const;
}
