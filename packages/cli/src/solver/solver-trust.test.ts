import {
  searchBerths,
  succeed,
  type BerthSearchInput,
  type LinearSolution,
  type LinearSolver,
} from "@nightspan/core";
import { beforeAll, describe, expect, it } from "vitest";
import { loadSolver } from "./load-solver.ts";
import { bestByBruteForce, brokenRules, drawFrom, randomSearch } from "./random-search.fixture.ts";

let highs: LinearSolver;
beforeAll(async () => {
  highs = await loadSolver();
});

/** Searches that the parts alone do not settle, so that a solver is asked. */
function searches(): BerthSearchInput[] {
  return Array.from({ length: 60 }, (_, seed) =>
    randomSearch(drawFrom(seed), {
      places: 12,
      trees: 9,
      classes: 3,
      capacity: 1 + (seed % 3),
      conflictsInTen: 3,
    }),
  );
}

function answering(change: (solution: LinearSolution) => LinearSolution): {
  solver: LinearSolver;
  asked: () => number;
} {
  let count = 0;
  const solver: LinearSolver = {
    name: "changed",
    solve: (program, options) => {
      count++;
      const outcome = highs.solve(program, options);
      return outcome.ok ? succeed(change(outcome.value)) : outcome;
    },
  };
  return { solver, asked: () => count };
}

function keepsEveryRule(solver: LinearSolver): void {
  for (const input of searches()) {
    const best = bestByBruteForce(input);
    const found = searchBerths(input, { solver });
    expect(brokenRules(input, found.chosen)).toEqual([]);
    expect(found.placed).toBeLessThanOrEqual(best.placed);
    expect(found.bound).toBeGreaterThanOrEqual(best.placed);
    if (found.placed === best.placed) expect(found.lowerBoundUnits).toBeLessThanOrEqual(best.cost);
  }
}

describe("trust in the solver", () => {
  it("is needed for neither a layout nor a bound when every solve is refused", () => {
    keepsEveryRule({
      name: "refusing",
      solve: () => ({ ok: false, refusals: [{ field: "program", got: "", need: "a working solver" }] }),
    });
  });

  it("does not reach to layouts that break a rule", () => {
    const { solver, asked } = answering((solution) => ({ ...solution, x: solution.x.map(() => 1) }));
    keepsEveryRule(solver);
    expect(asked()).toBeGreaterThan(20);
  });

  it("does not reach to the prices of a relaxation: wrong ones only weaken the bound", () => {
    const { solver, asked } = answering((solution) =>
      solution.duals === undefined
        ? solution
        : { ...solution, duals: solution.duals.map((price) => 3 * price + 1) },
    );
    keepsEveryRule(solver);
    expect(asked()).toBeGreaterThan(20);
  });

  it("is not stretched to a solve that stopped at a limit", () => {
    const { solver, asked } = answering((solution) => ({
      ...solution,
      status: "limit",
      objective: Infinity,
      bound: -Infinity,
      x: solution.x.map(() => 0.5),
    }));
    keepsEveryRule(solver);
    expect(asked()).toBeGreaterThan(20);
  });
});
