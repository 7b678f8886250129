import { degrees } from "../src/quantity/angle.ts";
import { newChainState, solveSlack, solveTaut } from "../src/statics/solve-chain.ts";
import { hang } from "../src/statics/hang.ts";
import { hangCore } from "../src/statics/hang-core.ts";
import { hangRig } from "../src/statics/hang-rig.ts";
import { screenHang } from "../src/statics/hang-screen.ts";
import type { HangInput } from "../src/statics/hang-types.ts";
import type { Chain } from "../src/statics/chain.ts";
import { inverseByDifferences } from "./differences-inverse.fixture.ts";

/**
 * The hang: one solve of 20 links, one inverse, and the inverse beside the same march inverted by finite
 * differences, all in one run. Each figure is the best of sixty short rounds, so that a busy machine counts for little.
 * Ends with code 1 where the inverse is not 3 times faster than the one by differences.
 */
const GATE = 3;

/** Best of many short rounds: on a busy machine some of them run undisturbed. */
function microseconds(runs: number, run: (index: number) => void): number {
  const round = Math.max(5, Math.ceil(runs / 20));
  for (let index = 0; index < runs; index++) run(index);
  let best = Infinity;
  for (let index = 0; index < ROUNDS; index++) best = Math.min(best, timed(round, run));
  return best;
}

const ROUNDS = 60;

function timed(runs: number, run: (index: number) => void): number {
  const start = performance.now();
  for (let index = 0; index < runs; index++) run(index);
  return ((performance.now() - start) / runs) * 1000;
}

/** A strap, 18 links of cloth with 800 N on them, a strap; 4 m wide. */
function twentyLinks(): Chain {
  const lengthM = new Float64Array(20).fill(3 / 18);
  lengthM[0] = 0.75;
  lengthM[19] = 0.75;
  const weightN = new Float64Array(21);
  weightN.fill(800 / 17, 2, 19);
  return {
    lengthM,
    stretchPerN: new Float64Array(20).fill(1 / 40_000),
    weightN,
    ridgeFromNode: 1,
    ridgeToNode: 19,
  };
}

function solveTimes(): { slack: number; taut: number } {
  const chain = twentyLinks();
  const ends = { firstLink: 0, endLink: 20, dxM: 4, dzM: 0.1 };
  const state = newChainState();
  const cold = () => {
    state.alongN = 640;
    state.upN = -400;
    solveSlack(chain, ends, state);
  };
  const slack = microseconds(20_000, cold);
  const taut = microseconds(20_000, () => {
    cold();
    state.ridgeAlongN = 160;
    state.ridgeUpN = 0;
    state.alongN += 80;
    solveTaut(chain, ends, { lengthM: 2.49, stretchPerN: 0 }, state);
  });
  if (!state.converged) throw new Error("the taut chain found no rest");
  return { slack, taut };
}

function inputWith(ridgelineM: number | undefined): HangInput {
  return {
    spanM: 4.3,
    head: { dbhM: 0.3, elevationM: 0 },
    foot: { dbhM: 0.3, elevationM: 0.2 },
    hammock: { lengthM: 3, massKg: 0.6, ...(ridgelineM === undefined ? {} : { ridgelineM }) },
    suspension: { type: "tied-webbing", minM: 0 },
    sleeper: { massKg: 80, statureM: 1.75 },
    targets: { angle: degrees(30), seatHeightM: 0.45, footRaiseM: 0.2 },
    limits: {
      angleMin: degrees(25),
      angleMax: degrees(35),
      reachM: 2.3,
      lowPointMinM: 0.2,
      seatHeightMinM: 0.35,
      seatHeightMaxM: 0.55,
      footRaiseMinM: 0.1,
      footRaiseMaxM: 0.3,
    },
  };
}

function inverseTimes(ridgelineM: number | undefined) {
  const input = inputWith(ridgelineM);
  const rig = hangRig(input);
  const core = hangCore(rig, input);
  if (!core.ok) throw new Error(JSON.stringify(core.refusals));
  const wanted = { clearM: 4, meanAngle: input.targets.angle, footRaiseM: 0.2, seatHeightM: 0.45 };
  const plain = inverseByDifferences(rig, wanted);
  const straps = [core.value.trial.setting.headStrapM, core.value.trial.setting.footStrapM];
  const apart = Math.max(...straps.map((strapM, index) => Math.abs(strapM - (plain.settings[index] ?? NaN))));
  if (!(apart < 1e-6)) throw new Error(`the two inverses differ by ${apart} m of strap`);
  return {
    inverse: microseconds(5_000, () => hangCore(rig, input)),
    differences: microseconds(200, () => inverseByDifferences(rig, wanted)),
    solves: plain.solves,
    full: microseconds(200, () => hang(input)),
  };
}

/** Pairs timed together, best of three. */
const STRETCH = 500;

function screenSeconds(): { seconds: number; serve: number } {
  const kits = [undefined, 2.49, 2.6].flatMap((ridgelineM) =>
    [0, 0.5].map((minM) => {
      const { hammock, sleeper, suspension, targets, limits } = inputWith(ridgelineM);
      return { hammock, sleeper, targets, limits, suspension: { ...suspension, minM } };
    }),
  );
  const pairs = Array.from({ length: 10_000 }, (_, index) => ({
    spanM: 2.7 + (index % 331) / 100,
    head: { dbhM: 0.15 + (index % 17) / 50, elevationM: (index % 7) / 10 },
    foot: { dbhM: 0.15 + (index % 23) / 60, elevationM: (index % 5) / 10 },
  }));
  let serve = 0;
  let seconds = 0;
  for (const kit of kits) {
    const screen = screenHang(kit);
    for (const pair of pairs) if (screen(pair).serves) serve++;
    for (let first = 0; first < pairs.length; first += STRETCH) {
      const some = pairs.slice(first, first + STRETCH);
      const once = () => timed(1, () => some.forEach((pair) => screen(pair)));
      seconds += Math.min(once(), once(), once()) / 1e6;
    }
  }
  return { seconds, serve };
}

function row(what: string, figure: string, aim: string): void {
  console.log(`${what.padEnd(58)}${figure.padStart(14)}   ${aim}`);
}

const solve = solveTimes();
row("one solve of 20 links, slack", `${solve.slack.toFixed(1)} µs`, "aim ≤ 50");
row("one solve of 20 links, taut (from the slack one)", `${solve.taut.toFixed(1)} µs`, "aim ≤ 150");
for (const ridgelineM of [undefined, 2.49]) {
  const name = ridgelineM === undefined ? "no ridgeline" : "taut ridgeline";
  const times = inverseTimes(ridgelineM);
  const ratio = times.differences / times.inverse;
  row(`one inverse with its seat, ${name}`, `${times.inverse.toFixed(1)} µs`, "aim ≤ 500");
  row(
    `  the same march by finite differences (${times.solves} solves)`,
    `${times.differences.toFixed(0)} µs`,
    "",
  );
  row("  ratio", `${ratio.toFixed(0)} ×`, `gate ≥ ${GATE}`);
  row(`one full hang: ok ranges, band, drawing, ${name}`, `${times.full.toFixed(0)} µs`, "aim ≤ 500");
  if (!(ratio >= GATE)) process.exitCode = 1;
}
const screened = screenSeconds();
row(
  "10,000 pairs × 6 kits screened",
  `${screened.seconds.toFixed(2)} s`,
  `aim ≤ 1 (${screened.serve} serve)`,
);
