import { searchBerths } from "../berth-search.ts";
import { chooseLayout, type ChosenLayout, type ChooseTools } from "../choose-layout.ts";
import type { DealtAnew } from "../../plan/dealt-anew-types.ts";
import type { LinearSolver } from "../linear-solver.ts";
import { prepareCamp, type PreparedCamp } from "../prepare-camp.ts";
import { isSpare } from "../spare-sleepers.ts";
import { dealtChanges } from "./dealt-changes.ts";
import { givenBy } from "./given-by.ts";
import { solveKitProgram, type KitProgram, type KitSolution } from "./kit-program.ts";
import { kitWays, type KitWays } from "./kit-ways.ts";
import { openWays } from "./open-ways.ts";
import { personTypes, type DealtTypes } from "./person-types.ts";
import type { KitGiven } from "./redeal-types.ts";
import { WayJudge } from "./way-judge.ts";

export interface DealtLayout {
  readonly layout: ChosenLayout;
  /** What each was given before the rest of the store; absent where the first dealing is kept. */
  readonly given?: KitGiven;
  readonly told?: DealtAnew;
}

/**
 * Deals hammocks and suspensions anew where somebody is left out and another dealing gives more people a berth.
 *
 * Kit is dealt before the places are known, so a long sling may have gone to whoever needed the short one. Where
 * people go without, place and kit are decided together; the dealing that places most and changes least is taken, if
 * it really places more. The bound is then of all dealings. One that only adds a berth "do not hang" is not taken,
 * and does not count.
 *
 * Shapes   the layout as dealt → one with at least as many people, and a bound over every dealing
 * Holds    any camp; kit kept for somebody stays theirs, pinned places stay
 * Error    exact where ways × places are at most 30,000; beyond, exchanges are looked for between berths as they lie
 * Source   layout-search (handbook/planning.md: kit dealt anew)
 */
export function dealAnew(first: ChosenLayout, prepared: PreparedCamp, tools: ChooseTools): DealtLayout {
  const dealt = personTypes(prepared);
  const before = peopleIn(first);
  if (before >= dealt.most || !isMixed(prepared, dealt)) return { layout: first };
  const given = kitWays(prepared, dealt);
  const { open, isAll } = openWays(prepared, dealt, given, first.chosen);
  const most = Math.min(dealt.most, mostPlaces(prepared, isAll ? open : undefined, dealt.most, tools.solver));
  const { solver } = tools;
  if (before >= most || solver === undefined || columnsIn(open) > MOST_COLUMNS) return bounded(first, most);
  const program = { prepared, dealt, ways: given.ways, open };
  const judge = new WayJudge(prepared, given, open);
  const better = searchDealings({ program, judge, given, solver }, before, tools);
  return better.found ?? bounded(first, isAll ? Math.min(most, better.bound ?? most) : most);
}

interface Dealings {
  readonly program: KitProgram;
  readonly judge: WayJudge;
  readonly given: KitWays;
  readonly solver: LinearSolver;
}

interface Searched {
  readonly found?: DealtLayout;
  readonly bound?: number;
}

/** Solves, closes what may not hang, and solves again, until a dealing really places more or none can. */
function searchDealings(
  { program, judge, given, solver }: Dealings,
  before: number,
  tools: ChooseTools,
): Searched {
  const { prepared, dealt } = program;
  let bound: number | undefined;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const solved = solveKitProgram(program, solver);
    if (solved === undefined) return { ...(bound === undefined ? {} : { bound }) };
    bound = Math.max(before, solved.bound);
    if (solved.seats.length <= before) return { bound };
    if (!judge.closeBad(solved.seats)) continue;
    const found = laidOut(prepared, dealt, given, solved, tools);
    if (peopleIn(found.layout) <= before) return { bound };
    const told = dealtChanges(prepared.deal, found.layout.work.deal, before);
    return { bound, found: { ...bounded(found.layout, bound), given: found.given, told } };
  }
  return { ...(bound === undefined ? {} : { bound }) };
}

/** The camp with kit as the solution has it, laid out afresh. */
function laidOut(
  prepared: PreparedCamp,
  dealt: DealtTypes,
  { ways }: KitWays,
  { seats }: KitSolution,
  tools: ChooseTools,
): Required<Pick<DealtLayout, "layout" | "given">> {
  const given = givenBy(prepared, dealt, ways, seats);
  return { given, layout: chooseLayout(prepareCamp(prepared.camp, undefined, given), tools) };
}

function bounded({ work, chosen }: ChosenLayout, most: number): DealtLayout {
  return { layout: { chosen, work: { ...work, mostDealt: most } } };
}

/** More than one kind of a part, or too few for all, so that it matters who has which. */
function isMixed({ deal }: PreparedCamp, { types, hammocks, suspensions }: DealtTypes): boolean {
  const kinds = Math.max(hammocks.length, suspensions.length);
  return kinds > 1 || (deal.short.length > 0 && types.length > 1);
}

/** How many could lie were the kit that each place wants there at once; with nothing known any place serves. */
export function mostPlaces(
  { camp, unbalanced }: PreparedCamp,
  open: readonly Uint8Array[] | undefined,
  people: number,
  solver: LinearSolver | undefined,
): number {
  const costUnits = Float64Array.from(unbalanced.places, (_, place) =>
    open === undefined || open.some((row) => row[place] === 1) ? 0 : -1,
  );
  const { bound } = searchBerths(
    {
      trees: unbalanced.anchors.length,
      places: unbalanced.places,
      capacity: camp.rules.hammocksPerTree.value,
      conflicts: unbalanced.conflicts,
      classes: [{ people, costUnits }],
    },
    solver === undefined ? {} : { solver },
  );
  return bound;
}

export function peopleIn({ chosen }: ChosenLayout): number {
  return chosen.seats.filter((seat) => !isSpare(seat)).length;
}

function columnsIn(open: readonly Uint8Array[]): number {
  return open.reduce((sum, row) => sum + row.reduce((ones, flag) => ones + flag, 0), 0);
}

/** A program of more columns is not solved in whole numbers. */
const MOST_COLUMNS = 12_000;
const MOST_ROUNDS = 60;
