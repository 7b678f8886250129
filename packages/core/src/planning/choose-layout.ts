import { chooseBerths, type ChosenBerths } from "./choose-berths.ts";
import type { DealtKit } from "./dealt-kit.ts";
import { countPlaced } from "./explain/count-placed.ts";
import type { LinearSolver } from "./linear-solver.ts";
import { byCodeUnit } from "./order.ts";
import { chooseInputOf, workOf, type Work } from "./plan-work.ts";
import { withMoreSleepers, type PreparedCamp } from "./prepare-camp.ts";
import { sparesAsked, spareLike } from "./spare-sleepers.ts";

export interface ChooseTools {
  readonly solver?: LinearSolver;
  readonly engine: string;
  readonly onIncumbent?: (work: Work, chosen: ChosenBerths) => void;
  /** Told of the places of layouts on the way, whatever hangs there. */
  readonly onPlaces?: (places: readonly number[]) => void;
}

/** A layout, and the camp it is of: with the spare berths that could be kept. */
export interface ChosenLayout {
  readonly work: Work;
  readonly chosen: ChosenBerths;
}

/**
 * Chooses berths for everybody, and with as many kept free as the house asks for or the ground allows.
 *
 * A spare berth is searched like one of the heaviest of the camp, who minds nobody. People go first: none is kept free
 * while somebody who has kit goes without, and one fewer is asked for as long as somebody would. What spare berths
 * cost counts with that of the others, since somebody may have to lie there.
 *
 * Shapes   a camp made ready → a layout of its people and of 0 … asked spare berths
 * Holds    never fewer people placed than without spare berths
 * Source   house-rules, layout-search (handbook/layout.md: spare berths)
 */
export function chooseLayout(prepared: PreparedCamp, tools: ChooseTools): ChosenLayout {
  const spared = withSpares(prepared, tools.solver);
  const layout = chosenIn(spared, tools);
  const isFull = layout.chosen.seats.length === spared.deal.dealt.length;
  return spared === prepared || isFull ? layout : chosenIn(prepared, tools);
}

function chosenIn(
  prepared: PreparedCamp,
  { engine, solver, onIncumbent, onPlaces }: ChooseTools,
): ChosenLayout {
  const work = workOf(prepared, engine);
  const told = onIncumbent && ((chosen: ChosenBerths) => onIncumbent(work, chosen));
  const input = chooseInputOf(work, solver);
  const telling = {
    ...(told === undefined ? {} : { onIncumbent: told }),
    ...(onPlaces === undefined ? {} : { onPlaces }),
  };
  return { work, chosen: chooseBerths({ ...input, ...telling }) };
}

/** The camp with so many more to place as berths can be kept free while everybody who has kit lies somewhere. */
function withSpares(prepared: PreparedCamp, solver: LinearSolver | undefined): PreparedCamp {
  const { camp, deal } = prepared;
  const [heaviest] = [...deal.dealt].sort(heaviestFirst);
  if (heaviest === undefined) return prepared;
  const people = deal.dealt.length;
  let spares = sparesAsked(camp);
  while (spares > 0) {
    const more = withMoreSleepers(
      prepared,
      Array.from({ length: spares }, (_, at) => spareLike(heaviest, at)),
    );
    const { placed, bound } = countPlaced(more, solver);
    if (placed === people + spares) return more;
    spares = Math.min(spares - 1, bound - people);
  }
  return prepared;
}

function heaviestFirst({ sleeper: a }: DealtKit, { sleeper: b }: DealtKit): number {
  return b.massKg - a.massKg || byCodeUnit(a.id, b.id);
}
