import { ICE_K } from "../src/heat/heat-units.ts";
import { balanceOf } from "../src/heat/sleeper-balance.ts";
import type { SleeperBalanceInput } from "../src/heat/balance-input.ts";
import type { Camp, Night, Sleeper } from "../src/plan/camp.ts";
import type { OverInsulation, UnderInsulation } from "../src/plan/kit.ts";
import { presetRules } from "../src/plan/rule-defaults.ts";
import { berthWarmth } from "../src/planning/warmth/berth-warmth.ts";
import { nightAirs } from "../src/planning/warmth/night-airs.ts";
import { warmthMargin } from "../src/planning/warmth/warmth-margin.ts";

/**
 * The balance of one sleeper, the margin that the store deals by, and the warmth of one berth with its sixteen hours.
 * Each figure is the best of sixty short rounds, so that a busy machine counts for little.
 */
function microseconds(runs: number, run: (index: number) => void): number {
  for (let index = 0; index < runs; index++) run(index);
  let best = Infinity;
  for (let round = 0; round < ROUNDS; round++) {
    const start = performance.now();
    for (let index = 0; index < runs; index++) run(index);
    best = Math.min(best, ((performance.now() - start) / runs) * 1000);
  }
  return best;
}

const ROUNDS = 60;

function asleep(index: number): SleeperBalanceInput {
  const airK = ICE_K - 10 + (index % 20);
  return {
    night: { airK, windMS: (index % 7) / 2, humidityRatio: 0.8, radiantK: airK - (index % 12) },
    top: { insulationM2KPerW: 0.4 + (index % 11) / 10, permeabilityMS: 0.008 },
    bottom: { insulationM2KPerW: 0.2 + (index % 13) / 10, permeabilityMS: 0.05, coveredRatio: 0.8 },
    topShareRatio: 0.65,
    head: "hat",
  };
}

const NIGHT: Night = {
  lowK: ICE_K + 3,
  windMS: 4,
  gustMS: 8,
  windHeightM: 10,
  rainMmH: 0,
  humidityRatio: 0.85,
  cloudRatio: 0.3,
};

const SLEEPER: Sleeper = {
  id: "s",
  name: "s",
  massKg: 70,
  statureM: 1.75,
  ageYears: 40,
  sex: "m",
  hand: "right",
  reachM: 2.1,
  stepM: 0.7,
  sleeps: "usual",
  leads: false,
  near: [],
  apart: [],
  kit: [],
};

const CAMP: Camp = {
  name: "bench",
  rules: presetRules("usual"),
  sleepers: [SLEEPER],
  groups: [],
  kit: [],
  night: NIGHT,
  defaultsUsed: [],
};

const under: UnderInsulation = { id: "u", kind: "under", count: 1, state: "in-use", limitK: ICE_K };
const over: OverInsulation = { id: "o", kind: "over", count: 1, state: "in-use", comfortK: ICE_K };

function row(what: string, figure: string, aim: string): void {
  console.log(`${what.padEnd(58)}${figure.padStart(14)}   ${aim}`);
}

const inputs = Array.from({ length: 50 }, (_, index) => asleep(index));
const balance = microseconds(50, (index) => balanceOf(inputs[index] ?? asleep(index)));
row("one balance of a sleeper: flows, comfort, limit, extreme", `${balance.toFixed(1)} µs`, "aim ≤ 100");
const margin = microseconds(50, () => warmthMargin(SLEEPER, NIGHT, under, over));
row("one margin that the store deals by", `${margin.toFixed(1)} µs`, "aim ≤ 100");
const airs = nightAirs(CAMP, NIGHT);
const berth = microseconds(10, () => berthWarmth(SLEEPER, { under, over }, airs, {}));
row("the warmth of one berth, sixteen hours", `${berth.toFixed(0)} µs`, "");
