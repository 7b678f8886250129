import type { Bottleneck, Knot } from "../../plan/explanation.ts";
import type { Plan } from "../../plan/plan.ts";
import { exclusionCliques } from "../berth-search-cliques.ts";
import { orderedComponent, searchComponents } from "../berth-search-components.ts";
import { exactFrontier } from "../berth-search-frontier.ts";
import { listOf } from "../berth-search-lists.ts";
import { searchModel, type SearchModel } from "../berth-search-model.ts";
import { byCodeUnit } from "../order.ts";
import type { PreparedCamp } from "../prepare-camp.ts";
import type { LinearSolver } from "../linear-solver.ts";
import { contestedPlaces, type Contested } from "./contested.ts";
import { knotCoverBySolver } from "./knot-cover-by-solver.ts";
import { knotCover, type KnotSet } from "./knot-cover.ts";

/**
 * What limits how many have a berth: knots of places that between them hold every place about which those without a
 * berth and those with one are at odds, and that allow no more people than lie there now.
 *
 *   placed there ≤ Σ most of the knots,  with equality: nobody else fits, however they change places
 *
 * A knot is a tree with the hammocks it may carry; a clique of places that exclude each other; or, where trees and
 * cliques do not add up, a whole part with what its exact frontier allows. These are the prices of the linear
 * relaxation wherever those are whole, found without a solver.
 *
 * Shapes   one plan → knots, those with most pairs for each berth first
 * Holds    nothing is told where everybody has a berth, where the kit or the hang is what is short, or where the
 *          knots found add up to more than lie there
 * Error    none: what is told is a proof
 * Source   layout-search (handbook/planning.md: what limits it)
 */
export function findBottleneck(
  prepared: PreparedCamp,
  plan: Plan,
  solver?: LinearSolver,
): Bottleneck | undefined {
  const contested = contestedPlaces(prepared, plan);
  if (contested.taken.length === 0) return undefined;
  const found = coverOf(prepared, contested, solver);
  if (found === undefined) return undefined;
  const knots = found.map((knot) => told(prepared, knot)).sort(mostCrowded);
  const crowded = knots.filter(({ pairs, most }) => pairs.length > most);
  const trees = [...new Set(crowded.flatMap((knot) => knot.trees))].sort(byCodeUnit);
  return trees.length === 0 ? undefined : { knots, trees, most: contested.taken.length };
}

/** The knots of a cover, part by part; by the solver where a part is too large for that. */
function coverOf(
  prepared: PreparedCamp,
  { places, taken }: Contested,
  solver: LinearSolver | undefined,
): readonly NamedKnot[] | undefined {
  const model = modelOf(prepared, places);
  const knots = knotsOf(model);
  const pick = (own: readonly NamedKnot[], indices: readonly number[]): NamedKnot[] =>
    indices.flatMap((index) => own[index] ?? []);
  const parts = partsOf(model, taken);
  if (parts === "holds more") return undefined;
  if (parts !== "too large") {
    return parts.flatMap((part) => {
      const inPart = new Set(part.places);
      const own = knots.filter((knot) => knot.places.every((place) => inPart.has(place)));
      const cover = knotCover([...part.places], part.taken, own);
      return cover === undefined
        ? [{ places: part.places, most: part.taken.length, why: "part" as const }]
        : pick(own, cover);
    });
  }
  const cover = solver && knotCoverBySolver(places, taken.length, knots, solver);
  return cover && pick(knots, cover);
}

/** The search over some places alone, for as many people as there are places. */
function modelOf({ camp, ground, capacities }: PreparedCamp, places: readonly number[]): SearchModel {
  const costUnits = new Float64Array(ground.places.length).fill(-1);
  for (const place of places) costUnits[place] = 0;
  return searchModel({
    trees: ground.anchors.length,
    places: ground.places,
    capacity: camp.rules.hammocksPerTree.value,
    capacities,
    conflicts: ground.conflicts,
    classes: [{ people: places.length, costUnits }],
  });
}

interface Part {
  readonly places: Int32Array;
  readonly taken: readonly number[];
}

/** The parts, each of which holds as many as it can; else that one could hold more, or is too large to tell. */
function partsOf(model: SearchModel, taken: readonly number[]): readonly Part[] | "holds more" | "too large" {
  const found = searchComponents(model, LARGEST_PART);
  if (found === undefined) return "too large";
  const free = new Float64Array(model.places);
  const budget = { left: MOST_STATES };
  const parts: Part[] = [];
  for (const places of found.members) {
    const frontier = exactFrontier(model, orderedComponent(places, found.links), free, places.length, budget);
    const inPart = new Set(places);
    const own = taken.filter((place) => inPart.has(place));
    if (frontier === undefined) return "too large";
    if (frontier.cost.length - 1 > own.length) return "holds more";
    parts.push({ places, taken: own });
  }
  return parts;
}

/** As in the search itself. */
const LARGEST_PART = 500;
const MOST_STATES = 1_000_000;

interface NamedKnot extends KnotSet {
  readonly why: Knot["why"];
}

/** Trees first, as they are told most easily; then cliques, the largest first; then single places. */
function knotsOf(model: SearchModel): readonly NamedKnot[] {
  const inUse = (place: number): boolean => listOf(model.ofPlace, place).length > 0;
  const trees = Array.from(model.capacity, (most, tree): NamedKnot => {
    return { places: listOf(model.atTree, tree).filter(inUse), most, why: "tree" };
  });
  const cliques = exclusionCliques(model).map((clique): NamedKnot => {
    return { places: clique.filter(inUse), most: 1, why: "strips" };
  });
  const singles = Array.from({ length: model.places }, (_, place) => place)
    .filter(inUse)
    .map((place): NamedKnot => ({ places: Int32Array.of(place), most: 1, why: "strips" }));
  const larger = (a: NamedKnot, b: NamedKnot): number => b.places.length - a.places.length;
  return [
    ...trees.filter(({ places, most }) => places.length > most).sort(larger),
    ...cliques.filter(({ places }) => places.length > 1).sort(larger),
    ...singles,
  ];
}

function told({ ground }: PreparedCamp, { places, most, why }: NamedKnot): Knot {
  const pairs = Array.from(places, (place): [string, string] => {
    const { first = -1, second = -1 } = ground.places[place] ?? {};
    return [ground.anchors[first]?.id ?? "", ground.anchors[second]?.id ?? ""];
  });
  const all = [...new Set(pairs.flat())].sort(byCodeUnit);
  const shared = all.filter((tree) => pairs.every((pair) => pair.includes(tree)));
  return { trees: why === "tree" ? shared.slice(0, 1) : all, pairs, most, why };
}

function mostCrowded(a: Knot, b: Knot): number {
  return b.pairs.length / b.most - a.pairs.length / a.most || byCodeUnit(a.trees.join(), b.trees.join());
}
