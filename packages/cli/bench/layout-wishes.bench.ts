import { planCamp } from "@nightspan/core";
import { ENGINE, openCamp } from "@nightspan/edge";
import { loadSolver } from "../src/solver/load-solver.ts";
import { campOf } from "./wishing-camp.fixture.ts";

/**
 * Whole plans of camps whose people have groups and wishes, everybody within 25 m of the leader: time, gap to the proven
 * bound, wishes not met and people out of reach. Time is of the whole plan with every hang; opening the camp and loading
 * the solver are left out.
 */
const WANTED = { seconds: 5, gap: 0.02 };
const SEEDS = [11, 12, 13];

const CASES = [
  { name: "3,000 stems, 250 people, 32 groups, 72 wishes", stems: 3000, people: 250, groups: 32 },
  { name: "3,000 stems, 250 people, 72 wishes, no groups", stems: 3000, people: 250, groups: 0 },
  { name: "3,000 stems, 14 people, 2 groups, 4 wishes", stems: 3000, people: 14, groups: 2 },
  { name: "800 stems, 60 people, 8 groups, 17 wishes", stems: 800, people: 60, groups: 8 },
];

const solver = await loadSolver();
for (const { name, ...size } of CASES) {
  console.log(`${name} (wanted: at most ${WANTED.seconds} s, gap ${100 * WANTED.gap} %)`);
  for (const seed of SEEDS) {
    const opened = openCamp(campOf({ ...size, wishes: true, seed }));
    if (!opened.ok) throw new Error(JSON.stringify(opened.refusals));
    const start = performance.now();
    const plan = planCamp(opened.value.camp, { engine: ENGINE, solver });
    const seconds = (performance.now() - start) / 1000;
    if (!plan.ok) throw new Error(JSON.stringify(plan.refusals));
    const { placed, cost, lowerBound, gap, costTerms = [] } = plan.value;
    const amiss = (term: string): number => costTerms.find((one) => one.name === term)?.measure ?? 0;
    console.log(
      `  wood ${seed}: ${seconds.toFixed(2)} s, ${placed} placed, cost ${cost.toFixed(3)} of at least ${lowerBound.toFixed(3)}, ` +
        `gap ${(100 * gap).toFixed(2)} %, ${amiss("wish")} wishes not met, ${amiss("far")} out of reach`,
    );
  }
}
