import { searchModel, type SearchModel } from "../berth-search-model.ts";
import { programOf, ruleRows, type SearchRow } from "../berth-search-program.ts";
import type { LinearSolver } from "../linear-solver.ts";
import type { PreparedCamp } from "../prepare-camp.ts";
import type { DealtTypes } from "./person-types.ts";
import type { KitWay } from "./redeal-types.ts";

/** One person of a type, dealt a way, at a place. */
export interface KitSeat {
  readonly way: number;
  readonly place: number;
}

export interface KitProgram {
  readonly prepared: PreparedCamp;
  readonly dealt: DealtTypes;
  readonly ways: readonly KitWay[];
  /** ways × places: 1 where it may hang as far as is known. */
  readonly open: readonly Uint8Array[];
}

export interface KitSolution {
  readonly seats: readonly KitSeat[];
  /** Nothing of these columns places more. */
  readonly bound: number;
}

/**
 * Place and kit decided together: who lies where in which hammock and suspension, so that most lie somewhere, and of
 * those dealings the one that changes least.
 *
 * Shapes   (people alike × hammock × suspension) × places → one seat for each person placed
 * Holds    a program small enough for whole numbers; pairs that pull a tree too hard together are not looked at
 * Error    exact, where the solver ends
 * Source   layout-search (handbook/planning.md: kit dealt anew)
 */
export function solveKitProgram(input: KitProgram, solver: LinearSolver): KitSolution | undefined {
  const { dealt, ways } = input;
  const model = modelOf(input);
  const worth = 1 + 2 * input.prepared.camp.sleepers.length;
  const wayOf = (column: number): number => model.columnCost[column] ?? -1;
  const cost = Float64Array.from(model.columnCost, (way) => changesOf(ways[way]) - worth);
  const rows = [...ruleRows(model), ...typeRows(model, input), ...stockRows(model, input)];
  const { program, columns } = programOf(cost, rows);
  const solved = solver.solve(program, { integral: true, presolve: true });
  if (!solved.ok || solved.value.status !== "optimal") return undefined;
  const seats = [...columns].flatMap((column, at) => {
    if ((solved.value.x[at] ?? 0) < HALF) return [];
    return [{ way: wayOf(column), place: model.columnPlace[column] ?? -1 }];
  });
  // All changes together weigh less than one person.
  return { seats, bound: Math.min(dealt.most, Math.ceil(-solved.value.bound / worth - SLACK)) };
}

const HALF = 0.5;
const SLACK = 1e-6;

function changesOf(way: KitWay | undefined): number {
  return Number(way?.hammock.asDealt === false) + Number(way?.suspension.asDealt === false);
}

/** Each way is a class of its own, told apart by its index in place of a cost. */
function modelOf({ prepared, dealt, ways, open }: KitProgram): SearchModel {
  const { camp, unbalanced } = prepared;
  return searchModel({
    trees: unbalanced.anchors.length,
    places: unbalanced.places,
    capacity: camp.rules.hammocksPerTree.value,
    conflicts: unbalanced.conflicts,
    classes: ways.map(({ type }, way) => ({
      people: dealt.types[type]?.members.length ?? 0,
      costUnits: Float64Array.from(open[way] ?? [], (flag) => (flag === 1 ? way : -1)),
    })),
  });
}

/** No more of a type than there are; whoever keeps a place is given it. */
function typeRows(model: SearchModel, { dealt, ways }: KitProgram): SearchRow[] {
  return dealt.types.map(({ members, place }, type) => ({
    columns: columnsWhere(model, (way) => ways[way]?.type === type),
    lower: place === undefined ? -Infinity : 1,
    upper: members.length,
  }));
}

function stockRows(model: SearchModel, { dealt, ways }: KitProgram): SearchRow[] {
  const rows = (kind: "hammock" | "suspension", groups: readonly { readonly pieces: number }[]) =>
    groups.map(({ pieces }, group) => ({
      columns: columnsWhere(model, (way) => ways[way]?.[kind].group === group),
      lower: -Infinity,
      upper: pieces,
    }));
  return [...rows("hammock", dealt.hammocks), ...rows("suspension", dealt.suspensions)];
}

function columnsWhere({ columnCost }: SearchModel, isIn: (way: number) => boolean): Int32Array {
  return Int32Array.from(columnCost.keys()).filter((column) => isIn(columnCost[column] ?? -1));
}
