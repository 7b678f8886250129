import type { LinearSolver } from "@nightspan/core";
import { highsSolver } from "@nightspan/edge";

/** Loads HiGHS and makes a solver of it. The package is imported on the first call, so that commands without a search start faster. */
export async function loadSolver(): Promise<LinearSolver> {
  const { default: loadHighs } = await import("highs");
  return highsSolver(await loadHighs());
}
