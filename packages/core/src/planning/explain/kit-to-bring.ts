import type { Camp } from "../../plan/camp.ts";
import type { Counterfactual } from "../../plan/explanation.ts";
import type { Hammock, Suspension } from "../../plan/kit.ts";
import { ASSUMED_HAMMOCK, ASSUMED_SUSPENSION } from "../assumed-kit.ts";
import { chooseLayout } from "../choose-layout.ts";
import type { LinearSolver } from "../linear-solver.ts";
import { byCodeUnit } from "../order.ts";
import { prepareCamp, type PreparedCamp } from "../prepare-camp.ts";
import { dealAnew, mostPlaces, peopleIn } from "../redeal/deal-anew.ts";
import { piecesInUse } from "../store/pieces-in-use.ts";
import { ONE_MORE } from "./kit-change.ts";

type Part = Hammock | Suspension;

/** One line of the store, or the usual one of a kind, of which more may be brought. */
interface Bringable {
  readonly part: Part;
  /** Absent where it is the usual one, that the store has not. */
  readonly line?: string;
}

/**
 * What to bring so that more people lie somewhere: how many more of one line of hammocks or suspensions, or of the
 * usual one of a kind. The camp with them is planned as a fresh one would be, all kit dealt anew, and the fewest pieces
 * told that were found to place so many. Of each kind the line that places most is told, of those the fewest pieces.
 *
 * Shapes   one camp, how many are placed → at most one change a kind for the store's lines, one for the usual kit
 * Holds    any camp; nothing where places, whatever the kit, are all taken, nor without a solver, nor above 120 people
 * Error    `placed` is what a fresh plan of that camp places; fewer pieces than told may do as well
 * Source   layout-search (handbook/planning.md: what would change it)
 */
export function kitToBring(
  prepared: PreparedCamp,
  placed: number,
  solver: LinearSolver | undefined,
): Counterfactual[] {
  const { camp } = prepared;
  const people = camp.sleepers.length;
  if (solver === undefined || people > MOST_PEOPLE) return [];
  const missing = Math.min(people, mostPlaces(prepared, undefined, people, solver)) - placed;
  if (missing <= 0) return [];
  const told = KINDS.flatMap((kind) =>
    [linesOf(camp, kind), usualOf(camp, kind)].flatMap((choices) => {
      const found = choices.flatMap((one) => brought(camp, one, { placed, missing, solver }) ?? []);
      return found.sort((a, b) => b.gained - a.gained || piecesOf(a) - piecesOf(b)).slice(0, 1);
    }),
  );
  return told.filter((one) => !told.some((other) => isBetter(other, one)));
}

const KINDS = ["hammock", "suspension"] as const;
const MOST_PEOPLE = 120;
/** Lines of a kind that are tried, those with most pieces first. */
const MOST_LINES = 6;

interface Asked {
  readonly placed: number;
  /** How many pieces at most could help. */
  readonly missing: number;
  readonly solver: LinearSolver;
}

function brought(camp: Camp, { part, line }: Bringable, asked: Asked): Counterfactual | undefined {
  const { placed: before, missing, solver } = asked;
  const most = freshCount(withMore(camp, part, missing), solver);
  const gained = most.placed - before;
  if (gained <= 0) return undefined;
  const fewer = gained < missing ? freshCount(withMore(camp, part, gained), solver) : undefined;
  const isFewer = fewer !== undefined && fewer.placed >= most.placed;
  const [pieces, { placed, bound }] = isFewer ? [gained, fewer] : [missing, most];
  const has = camp.kit.find(({ id }) => id === line);
  const now = has === undefined ? 0 : piecesInUse(has);
  return {
    change: line === undefined ? "kind-more" : "line-more",
    about: [line ?? part.kind],
    from: line === undefined ? [] : [now],
    to: [now + pieces],
    unit: "1",
    placed,
    gained: placed - before,
    proven: placed === bound,
    advice: true,
  };
}

/** How many a fresh plan places, and the proven most of any dealing. */
function freshCount(camp: Camp, solver: LinearSolver): { readonly placed: number; readonly bound: number } {
  const prepared = prepareCamp(camp);
  const tools = { engine: "", solver };
  const { layout } = dealAnew(chooseLayout(prepared, tools), prepared, tools);
  const bound = layout.work.mostDealt ?? Math.min(layout.chosen.search.bound, prepared.deal.dealt.length);
  return { placed: peopleIn(layout), bound };
}

/** As a line of its own, so that the pieces and numbers of the store's line stay as they are. */
function withMore(camp: Camp, part: Part, count: number): Camp {
  const pieces: Part = { ...part, id: ONE_MORE, count, state: "in-use", numbers: [], inspections: [] };
  return { ...camp, kit: [...camp.kit, pieces] };
}

function linesOf({ kit }: Camp, kind: Part["kind"]): Bringable[] {
  return kit
    .flatMap((item) => (isPart(item) && item.kind === kind && piecesInUse(item) > 0 ? [item] : []))
    .sort((a, b) => piecesInUse(b) - piecesInUse(a) || byCodeUnit(a.id, b.id))
    .slice(0, MOST_LINES)
    .map((part) => ({ part, line: part.id }));
}

/** Where the store lists none of a kind, everybody is dealt the usual one already. */
function usualOf({ kit, rules }: Camp, kind: Part["kind"]): Bringable[] {
  if (!kit.some((item) => item.kind === kind)) return [];
  if (kind === "hammock") return [{ part: ASSUMED_HAMMOCK }];
  const strapWidthM = Math.max(ASSUMED_SUSPENSION.strapWidthM, rules.strapWidthMinM.value);
  return [{ part: { ...ASSUMED_SUSPENSION, strapWidthM } }];
}

function isPart(item: Camp["kit"][number]): item is Part {
  return item.kind === "hammock" || item.kind === "suspension";
}

/** The store's own line is told before the usual one that does no better. */
function isBetter(one: Counterfactual, than: Counterfactual): boolean {
  return (
    one.change === "line-more" &&
    than.change === "kind-more" &&
    one.gained >= than.gained &&
    piecesOf(one) <= piecesOf(than)
  );
}

function piecesOf({ from: [from = 0], to: [to = 0] }: Counterfactual): number {
  return to - from;
}
