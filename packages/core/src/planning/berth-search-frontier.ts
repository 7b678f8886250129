import type { SearchComponent } from "./berth-search-components.ts";
import { listOf, sizeOf } from "./berth-search-lists.ts";
import { onesIn } from "./bits.ts";
import type { SearchModel } from "./berth-search-model.ts";

/** The chosen places of one way, last first. */
export interface Chain {
  readonly place: number;
  readonly rest: Chain | undefined;
}

/** For each number of berths the least cost at which a part of the wood holds them, and how. */
export interface Frontier {
  readonly cost: readonly number[];
  readonly chain: readonly (Chain | undefined)[];
}

/**
 * The exact frontier of one component: places are decided one after the other, and ways that agree on
 * every place still open are one state of which only the cheapest for each count lives on.
 *
 * Shapes   `cost`: one a place of the model → for n = 0 … most, the least cost of n berths
 * Holds    at most 30 places open at a time and a budget of states × counts; beyond that nothing is returned
 * Error    none
 * Source   layout-search (handbook/layout.md: deciding place by place)
 */
export function exactFrontier(
  model: SearchModel,
  component: SearchComponent,
  cost: Float64Array,
  most: number,
  budget: { left: number },
): Frontier | undefined {
  const slots = slotsOf(component);
  if (slots === undefined) return undefined;
  let states = new Map<number, Frontier>([[0, { cost: [0], chain: [undefined] }]]);
  for (let at = 0; at < component.places.length; at++) {
    const step = stepAt(model, component, slots, at);
    const units = cost[step.place] ?? 0;
    const next = new Map<number, Frontier>();
    for (const [mask, frontier] of states) {
      budget.left -= frontier.cost.length;
      merge(next, mask & step.stillOpen, frontier);
      if (isAllowed(step, mask))
        merge(next, (mask | step.bit) & step.stillOpen, extended(frontier, step.place, units, most));
    }
    if (budget.left < 0) return undefined;
    states = next;
  }
  return states.get(0);
}

interface Step {
  readonly place: number;
  readonly bit: number;
  readonly conflicts: number;
  /** Open places at each of the two trees, and how many hammocks it may carry. */
  readonly shared: readonly number[];
  readonly capacity: readonly number[];
  readonly stillOpen: number;
}

function stepAt(model: SearchModel, component: SearchComponent, slots: Slots, at: number): Step {
  const place = component.places[at] ?? 0;
  const conflicting = new Set(listOf(model.conflicts, place));
  const trees = [model.first[place] ?? 0, model.second[place] ?? 0];
  const shared = [0, 0];
  let conflicts = 0;
  for (const position of listOf(component.links, at)) {
    if (position > at) continue;
    const other = component.places[position] ?? 0;
    const bit = 1 << (slots.slot[position] ?? 0);
    if (conflicting.has(other)) conflicts |= bit;
    for (const [end, tree] of trees.entries()) {
      if (model.first[other] === tree || model.second[other] === tree) shared[end] = (shared[end] ?? 0) | bit;
    }
  }
  const own = slots.slot[at] ?? -1;
  return {
    place,
    bit: own < 0 ? 0 : 1 << own,
    conflicts,
    shared,
    capacity: trees.map((tree) => model.capacity[tree] ?? 0),
    stillOpen: slots.openAfter[at] ?? 0,
  };
}

function isAllowed({ conflicts, shared, capacity }: Step, mask: number): boolean {
  return (mask & conflicts) === 0 && shared.every((bits, end) => onesIn(mask & bits) < (capacity[end] ?? 0));
}

interface Slots {
  /** Bit of each position while it is open, −1 where it never is. */
  readonly slot: Int32Array;
  /** Bits still open once a position is decided. */
  readonly openAfter: Int32Array;
}

function slotsOf({ places, links }: SearchComponent): Slots | undefined {
  const slot = new Int32Array(places.length).fill(-1);
  const openAfter = new Int32Array(places.length);
  const undecided = Int32Array.from(places, (_, at) => sizeOf(links, at));
  let open = 0;
  for (let at = 0; at < places.length; at++) {
    if ((undecided[at] ?? 0) > 0) {
      const free = lowestZero(open);
      if (free >= MOST_OPEN) return undefined;
      slot[at] = free;
      open |= 1 << free;
    }
    for (const position of listOf(links, at)) {
      const left = (undecided[position] ?? 0) - 1;
      undecided[position] = left;
      if (left === 0 && position < at) open &= ~(1 << (slot[position] ?? 0));
    }
    openAfter[at] = open;
  }
  return { slot, openAfter };
}

/** Bits of a state; one less than a signed whole number of 32 bits has. */
const MOST_OPEN = 30;

function merge(states: Map<number, Frontier>, mask: number, frontier: Frontier): void {
  const known = states.get(mask);
  states.set(mask, known === undefined ? frontier : cheaperOf(known, frontier));
}

function cheaperOf(a: Frontier, b: Frontier): Frontier {
  const length = Math.max(a.cost.length, b.cost.length);
  const cost: number[] = [];
  const chain: (Chain | undefined)[] = [];
  for (let n = 0; n < length; n++) {
    const costA = a.cost[n] ?? Infinity;
    const costB = b.cost[n] ?? Infinity;
    cost.push(costB < costA ? costB : costA);
    chain.push(costB < costA ? b.chain[n] : a.chain[n]);
  }
  return { cost, chain };
}

function extended({ cost, chain }: Frontier, place: number, units: number, most: number): Frontier {
  const kept = Math.min(cost.length, most);
  const longer: number[] = [Infinity];
  const chains: (Chain | undefined)[] = [undefined];
  for (let n = 0; n < kept; n++) {
    longer.push((cost[n] ?? Infinity) + units);
    chains.push({ place, rest: chain[n] });
  }
  return { cost: longer, chain: chains };
}

function lowestZero(bits: number): number {
  let at = 0;
  while (((bits >> at) & 1) === 1) at++;
  return at;
}
