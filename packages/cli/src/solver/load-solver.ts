import type { LinearSolver } from "@nightspan/core";
import { highsSolver, tableauSolver } from "@nightspan/edge";

/**
 * Loads HiGHS and makes a solver of it, or of the plain one where WebAssembly cannot run. Packages are imported on the
 * first call, so that commands without a search start faster.
 */
export async function loadSolver(): Promise<LinearSolver> {
  try {
    const { default: loadHighs } = await import("highs");
    return highsSolver(await loadHighs());
  } catch {
    return loadPlainSolver();
  }
}

/** The solver in plain JavaScript. */
export async function loadPlainSolver(): Promise<LinearSolver> {
  const { default: tableau } = await import("javascript-lp-solver");
  return tableauSolver(tableau, Date.now);
}
