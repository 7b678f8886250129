import { succeed, type Outcome } from "../../outcome/outcome.ts";
import type { Camp } from "../../plan/camp.ts";
import type { Plan } from "../../plan/plan.ts";
import { chooseLayout } from "../choose-layout.ts";
import type { LinearSolver } from "../linear-solver.ts";
import { byCodeUnit } from "../order.ts";
import type { KeptPin } from "../pins.ts";
import { planCamp, type PlanTools } from "../plan-camp.ts";
import { chooseInputOf, planOf, workOf } from "../plan-work.ts";
import { keepingAlso, prepareCamp, type PreparedCamp } from "../prepare-camp.ts";
import { givenIn } from "../redeal/dealt-changes.ts";
import { asPlanned } from "../survey-room.ts";
import { sparesAsked } from "../spare-sleepers.ts";
import { chooseRepair } from "./choose-repair.ts";
import { movedSleepers } from "./moved-sleepers.ts";
import type { PlanBefore, PlanRepair } from "./repair-types.ts";

/**
 * The least change that mends a plan after the camp has changed, beside the camp planned anew.
 *
 * First everybody stays whose berth still serves, and only the others look for one. Where that places as many as can
 * be, nobody fewer can move: those who moved had to. Else all are searched together, with a price on each move that
 * no cost of places outweighs. Pins go before everything. Where the house is silent, room for the survey is kept if the
 * plan before kept it.
 *
 * Shapes   the plan before, the camp after → two plans and who moves in each
 * Holds    any two; people who are new or gone are no moves. Never more moved than by planning anew with as many placed
 * Error    none where `fewest`
 * Source   layout-search (handbook/planning.md: repair)
 */
export function repairPlan(before: PlanBefore, asked: Camp, tools: PlanTools): Outcome<PlanRepair> {
  const camp = asPlanned(asked, before);
  const planned = planCamp(camp, tools);
  if (!planned.ok) return planned;
  const fresh = planned.value;
  const prepared = prepareCamp(camp, undefined, givenIn(fresh));
  const held = placesBefore(prepared, before);
  const freshMoved = movedSleepers(before, fresh, camp);
  const found = staying(prepared, held, fresh, tools) ?? fewestMoved(prepared, held, fresh, tools);
  const moved = movedSleepers(before, found.repaired, camp);
  const more = found.repaired.placed - fresh.placed;
  const isBetter = more > 0 || (more === 0 && moved.length <= freshMoved.length);
  const { repaired, fewest } = isBetter ? found : { repaired: fresh, fewest: false };
  return succeed({ repaired, moved: isBetter ? moved : freshMoved, fewest, fresh, freshMoved });
}

interface Found {
  readonly repaired: Plan;
  readonly fewest: boolean;
}

/** Everybody stays whose berth serves; nothing where that cannot be, or fewer are placed than can be. */
function staying(
  prepared: PreparedCamp,
  held: ReadonlyMap<string, number>,
  fresh: Plan,
  { solver, engine }: PlanTools,
): Found | undefined {
  const stay = whoCanStay(prepared, held);
  if (stay === undefined) return undefined;
  const tools = { engine, ...(solver === undefined ? {} : { solver }) };
  const { work, chosen } = chooseLayout(keepingAlso(prepared, stay), tools);
  const plan = planOf(work, chosen);
  return plan.placed < fresh.placed ? undefined : { repaired: beside(plan, fresh), fewest: true };
}

function fewestMoved(
  prepared: PreparedCamp,
  held: ReadonlyMap<string, number>,
  fresh: Plan,
  { solver, engine }: { readonly solver?: LinearSolver; readonly engine: string },
): Found {
  const work = workOf(prepared, engine);
  const chosen = chooseRepair(chooseInputOf(work, solver), held);
  const { fewest } = chosen;
  if (sparesAsked(prepared.camp) === 0) return { repaired: beside(planOf(work, chosen), fresh), fewest };
  // Spare berths are looked for round those who lie there now.
  const pinned = new Set(prepared.pinned.map(({ kit }) => kit));
  const kept = keepingAlso(
    prepared,
    chosen.seats.filter(({ kit }) => !pinned.has(kit)),
  );
  const tools = { engine, ...(solver === undefined ? {} : { solver }) };
  const spared = chooseLayout(kept, tools);
  return { repaired: beside(planOf(spared.work, spared.chosen), fresh), fewest };
}

/** Those whose berth before still serves; nothing where they no longer go with one another. */
function whoCanStay(prepared: PreparedCamp, held: ReadonlyMap<string, number>): KeptPin[] | undefined {
  const { deal, ground, pinned, desk, classes, allowed } = prepared;
  const keeping = new Set(pinned.map(({ kit }) => kit));
  const stay = deal.dealt.flatMap((kit): KeptPin[] => {
    const place = held.get(kit.sleeper.id);
    if (place === undefined || keeping.has(kit)) return [];
    const classIndex = classes.findIndex(({ members }) => members.includes(kit));
    const serves = allowed[classIndex]?.[place] === 1 && desk.hangOf(classIndex, place).ok;
    return serves ? [{ place, kit }] : [];
  });
  const taken = new Set(stay.map(({ place }) => place));
  const load = prepared.capacities.slice();
  for (const place of taken) {
    const { first = -1, second = -1 } = ground.places[place] ?? {};
    for (const anchor of [first, second]) load[anchor] = (load[anchor] ?? 0) - 1;
  }
  const clash = ground.conflicts.some(([a, b]) => taken.has(a) && taken.has(b));
  return clash || taken.size < stay.length || load.some((left) => left < 0) ? undefined : stay;
}

/** The place of the camp that each berth before had, where it is still one. */
function placesBefore({ ground }: PreparedCamp, { berths }: PlanBefore): Map<string, number> {
  const keyOf = (trees: readonly string[], pair?: string): string =>
    JSON.stringify([...[...trees].sort(byCodeUnit), pair]);
  const indexOf = new Map(
    ground.places.map(({ first, second, pair }, place) => [
      keyOf([ground.anchors[first]?.id ?? "", ground.anchors[second]?.id ?? ""], pair),
      place,
    ]),
  );
  return new Map(
    berths.flatMap(({ sleeper, headTree, footTree, pair }) => {
      const place = indexOf.get(keyOf([headTree, footTree], pair));
      return place === undefined ? [] : [[sleeper, place] as const];
    }),
  );
}

/** Bounds are those of the camp planned anew: they hold for every layout. */
function beside(plan: Plan, fresh: Plan): Plan {
  const { bound, lowerBound, robust } = fresh;
  const isLower = plan.placed === fresh.placed && lowerBound <= plan.cost;
  const lower = isLower ? lowerBound : 0;
  return {
    ...plan,
    bound,
    lowerBound: lower,
    gap: (plan.cost - lower) / Math.max(plan.cost, LEAST_COST),
    method: `repair, ${plan.method}`,
    ...(robust === undefined ? {} : { robust }),
  };
}

/** One unit of cost, in metres. */
const LEAST_COST = 1e-4;
