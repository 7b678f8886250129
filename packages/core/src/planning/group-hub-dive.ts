import { dualBound } from "./dual-bound.ts";
import { hubProgram, type HubProgram, type HubTask } from "./group-hub-program.ts";
import type { LinearProgram, LinearSolution, LinearSolver } from "./linear-solver.ts";

/** A place for each hub, with how many lie round it. */
export interface FoundHub {
  readonly sort: number;
  readonly place: number;
  readonly people: number;
}

export interface HubDive {
  /** No layout costs less, in units; −∞ where the solver gave none. */
  readonly bound: number;
  /** Hubs of a layout that may cost less than the ceiling, largest group first; nothing where none was found. */
  readonly hubs: readonly FoundHub[] | undefined;
  /** How many relaxations were solved. */
  readonly solves: number;
}

export interface DiveOptions {
  /** A layout that costs as much is of no use [units]. */
  readonly ceilingUnits: number;
  readonly mostSolves: number;
  readonly solver: LinearSolver;
}

/**
 * Looks for hubs by the relaxation of the hub program: hubs that are whole in it stay, then the one that is nearest to
 * whole is fixed and the relaxation solved again, until all are whole.
 *
 * The first relaxation bounds every layout; it is worked out again from its row prices. The dive ends where a
 * relaxation shows that nothing below the ceiling is left that way.
 *
 * Source   layout-search (handbook/layout.md: groups)
 */
export function diveForHubs(task: HubTask, { ceilingUnits, mostSolves, solver }: DiveOptions): HubDive {
  const made = hubProgram(task);
  const first = relaxed(made.program, solver);
  if (first === undefined) return { bound: -Infinity, hubs: undefined, solves: 1 };
  const dual = dualBound(made.program, first.duals ?? new Float64Array(made.program.rows));
  const bound = Math.ceil(dual.bound - BOUND_SLACK);
  let shares: Float64Array | undefined = first.x;
  const fixed = new Set<number>();
  let solves = 1;
  for (; solves <= mostSolves && shares !== undefined; solves++) {
    const next = fixNext(made, shares, fixed);
    if (next === "whole") return { bound, hubs: hubsIn(made, shares), solves };
    const solved = relaxed(withFixed(made.program, fixed), solver);
    shares = solved === undefined || solved.objective >= ceilingUnits - BOUND_SLACK ? undefined : solved.x;
  }
  return { bound, hubs: undefined, solves };
}

/**
 * The hubs of the best whole solution: the way back out of a dive whose first hubs left no room for the others.
 * Nothing where the solver does not prove it.
 *
 * Source   layout-search (handbook/layout.md: groups)
 */
export function wholeHubs(task: HubTask, solver: LinearSolver): Omit<HubDive, "solves"> {
  const made = hubProgram(task);
  const solved = solver.solve(made.program, { integral: true, presolve: true });
  if (!solved.ok || solved.value.status !== "optimal") return { bound: -Infinity, hubs: undefined };
  const { bound, x } = solved.value;
  return { bound: Math.ceil(bound - BOUND_SLACK), hubs: hubsIn(made, x) };
}

const BOUND_SLACK = 1e-6;
const WHOLE_SLACK = 1e-5;

function relaxed(program: LinearProgram, solver: LinearSolver): LinearSolution | undefined {
  const solved = solver.solve(program, { integral: false, presolve: false });
  return solved.ok && solved.value.status === "optimal" ? solved.value : undefined;
}

/** Adds all hubs that are whole, and where some are not, the one that is most so. */
function fixNext({ hubs }: HubProgram, shares: Float64Array, fixed: Set<number>): "whole" | "fixed" {
  let most = -1;
  for (const { column } of hubs) {
    const share = shares[column] ?? 0;
    if (share > 1 - WHOLE_SLACK) fixed.add(column);
    else if (share > WHOLE_SLACK && (most < 0 || share > (shares[most] ?? 0))) most = column;
  }
  if (most < 0) return "whole";
  fixed.add(most);
  return "fixed";
}

/** The program with some columns at one. */
function withFixed(program: LinearProgram, fixed: ReadonlySet<number>): LinearProgram {
  const columns = [...fixed];
  const entries = program.indices.length;
  return {
    ...program,
    rows: program.rows + columns.length,
    rowLower: Float64Array.from([...program.rowLower, ...columns.map(() => 1)]),
    rowUpper: Float64Array.from([...program.rowUpper, ...columns.map(() => 1)]),
    starts: Int32Array.from([...program.starts, ...columns.map((_, at) => entries + at + 1)]),
    indices: Int32Array.from([...program.indices, ...columns]),
    values: Float64Array.from([...program.values, ...columns.map(() => 1)]),
  };
}

function hubsIn({ hubs }: HubProgram, shares: Float64Array): FoundHub[] {
  const found = hubs.filter(({ column }) => (shares[column] ?? 0) > 0.5);
  return found
    .map(({ sort, place, round }) => ({
      sort,
      place,
      people: round.reduce((sum, one) => sum + (shares[one] ?? 0), 0),
    }))
    .sort((a, b) => b.people - a.people || a.place - b.place);
}
