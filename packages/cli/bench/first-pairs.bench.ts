import { planCamp, type Camp } from "@nightspan/core";
import { ENGINE, openCamp } from "@nightspan/edge";
import { loadSolver } from "../src/solver/load-solver.ts";
import { campOf } from "./wishing-camp.fixture.ts";

/**
 * Time until there is something to show of a camp that is open: first the pairs of trees spoken for, then a plan with all
 * hangs. Aim: the first within 200 ms. Planning ends as soon as both are there; each case runs three times, the first of all
 * in a process that has just begun. Argument: wanted only where the name holds it.
 */
const WANTED_MS = 200;

const CASES = [3000, 10_000].flatMap((stems) =>
  [14, 100, 250, 1000].map((people) => ({ name: `${stems} stems, ${people} people`, stems, people })),
);

class Enough extends Error {}

interface Row {
  readonly pairsMs: number;
  readonly pairs: number;
  readonly planMs: number | undefined;
}

function measured(camp: Camp): Row {
  const start = performance.now();
  let [pairsMs, pairs, planMs] = [Infinity, 0, undefined as number | undefined];
  try {
    planCamp(camp, {
      engine: ENGINE,
      solver,
      onPairs: (found) => {
        if (pairsMs < Infinity) {
          if (camp.sleepers.length > 100) throw new Enough();
          return;
        }
        pairsMs = performance.now() - start;
        pairs = found.pairs.length;
      },
      onIncumbent: () => {
        planMs = performance.now() - start;
        throw new Enough();
      },
    });
  } catch (error) {
    if (!(error instanceof Enough)) throw error;
  }
  return { pairsMs, pairs, planMs };
}

const solver = await loadSolver();
let worst = 0;
for (const { name, stems, people } of CASES) {
  const opened = openCamp(campOf({ stems, people, groups: Math.ceil(people / 8), wishes: true, seed: 11 }));
  if (!opened.ok) throw new Error(JSON.stringify(opened.refusals));
  const rows = [1, 2, 3].map(() => measured(opened.value.camp));
  const told = rows.map(({ pairsMs }) => pairsMs.toFixed(0)).join(", ");
  const plans = rows.map(({ planMs }) => planMs?.toFixed(0) ?? "–").join(", ");
  console.log(
    `${name}: ${rows[0]?.pairs ?? 0} pairs after ${told} ms; a plan with all hangs after ${plans} ms`,
  );
  worst = Math.max(worst, ...rows.map(({ pairsMs }) => pairsMs));
}
console.log(`worst ${worst.toFixed(0)} ms, wanted ${WANTED_MS}`);
if (worst > WANTED_MS) process.exitCode = 1;
