import type { LinearSolver } from "@nightspan/core";
import { highsSolver, tableauSolver } from "@nightspan/edge";

/** Thrown where a search asks for a solver that is not loaded yet. */
class SolverWanted extends Error {}

/** Stands in for the solver until one is needed: most camps are proven without it. */
const STAND_IN: LinearSolver = {
  name: "stand-in",
  solve: () => {
    throw new SolverWanted();
  },
};

let loaded: Promise<LinearSolver | undefined> | undefined;

/** The solver: the plain one where this browser runs no WebAssembly; undefined where neither can be loaded. */
export function loadSolver(): Promise<LinearSolver | undefined> {
  loaded ??= load();
  return loaded;
}

async function load(): Promise<LinearSolver | undefined> {
  try {
    const { default: loadHighs } = await import("highs");
    return highsSolver(await loadHighs());
  } catch {
    return loadPlain();
  }
}

/** The solver in plain JavaScript: slower, and fetched only where it is needed. */
async function loadPlain(): Promise<LinearSolver | undefined> {
  try {
    const { default: tableau } = await import("javascript-lp-solver");
    return tableauSolver(tableau, Date.now);
  } catch {
    return undefined;
  }
}

export interface Solved<T> {
  readonly value: T;
  /** Whether the solver took part. */
  readonly solved: boolean;
}

/**
 * Does a piece of work that may turn out to need the solver. Where that is not likely it is begun without
 * one and, if it asks for it after all, done again with the solver. Where the browser cannot run the solver,
 * it is done without any.
 */
export async function withSolver<T>(
  likely: boolean,
  work: (solver: LinearSolver | undefined) => T,
): Promise<Solved<T>> {
  try {
    if (!likely) return { value: work(STAND_IN), solved: false };
  } catch (error) {
    if (!(error instanceof SolverWanted)) throw error;
  }
  const solver = await loadSolver();
  return { value: work(solver), solved: solver !== undefined };
}
