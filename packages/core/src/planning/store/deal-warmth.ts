import { leastTransport } from "../group-transport.ts";
import { greatestFlow, type Arc } from "./greatest-flow.ts";

/** One half of everybody's warmth: which lines there are, and how warm each person would be in each. */
export interface WarmthHalfTable {
  /** Pieces of each line; nothing at all is a line as well, with room for everybody. */
  readonly room: Int32Array;
  /** people × lines: by how much that half is better than asked, in whole hundredths of a kelvin; −Infinity where it must not be. */
  readonly margin: Float64Array;
  /** Mass of one piece of each line, in whole grams. */
  readonly massG: Int32Array;
}

export interface WarmthDeal {
  /** The line of each person. */
  readonly under: Int32Array;
  readonly over: Int32Array;
  /** Whether both halves of a person are enough. */
  readonly enough: Uint8Array;
  /** Whether no dealing with as few below has a larger least margin. */
  readonly isLeastProven: boolean;
  /** Whether no dealing does better by the whole order of `dealWarmth`, person by person and not half by half alone. */
  readonly proven: boolean;
}

/** Who comes first where not everybody can have enough: 2 before 1 before 0, whatever the numbers of each. */
export type ComesFirst = 0 | 1 | 2;

/**
 * Deals what is under and over: first that as few as can be are below what is asked in either half; then that as few as can be of
 * those are of 2, and then of 1; then that the least margin is the largest; then, of those below, that they come as near as can be (least sum of squares); then the least mass.
 *
 * The halves are dealt from different things, and a person is warm by the poorer. So each order is kept half by half, and
 * only who is below is about both: most people who can have enough of both is a flow from the one's lines through people to the
 * other's, and of flows as large the one that is worth most, somebody of 2 being worth more than all of 1. Where the margin need not suffer, no half is dealt warmer than the poorer half's least.
 *
 * Shapes   people × lines each → line of each person
 * Holds    at most a thousand people; margins below −60 K count as −60 K in the sum of squares
 * Error    exact where `proven`; how many are below, and how many of 2 and of 1, is always exact; the least margin where `isLeastProven`
 * Source   kit-dealing (handbook/kit.md)
 */
export function dealWarmth(
  people: number,
  under: WarmthHalfTable,
  over: WarmthHalfTable,
  first: readonly ComesFirst[] = [],
): WarmthDeal {
  const enough = mostWithBoth(people, under, over, first);
  const chosen = halvesDealt(people, under, over, enough);
  const isAll = enough.every((flag) => flag === 1);
  const free = isAll ? chosen : halvesDealt(people, under, over, new Uint8Array(people));
  const isLeastProven = poorerLeast(chosen) === poorerLeast(free);
  const isEachProven =
    isLeastProven &&
    chosen.under.leastMargin === free.under.leastMargin &&
    chosen.over.leastMargin === free.over.leastMargin &&
    chosen.under.cost + chosen.over.cost === free.under.cost + free.over.cost;
  const proven = isEachProven && (isAll || isOneHalf(under, over));
  return { under: chosen.under.lineOf, over: chosen.over.lineOf, enough, isLeastProven, proven };
}

/** With nobody bound to have enough no dealing has a larger one: each half's is the largest that it allows. */
function poorerLeast({ under, over }: ReturnType<typeof halvesDealt>): number {
  return Math.min(under.leastMargin, over.leastMargin);
}

/** Where one half leaves no choice and nobody short, the order of the other half is that of the people. */
function isOneHalf(under: WarmthHalfTable, over: WarmthHalfTable): boolean {
  return [under, over].some(({ room, margin }) => room.length === 1 && margin.every((value) => value >= 0));
}

interface HalfDealt {
  readonly lineOf: Int32Array;
  readonly leastMargin: number;
  readonly cost: number;
}

/** Both halves, where those of `enough` must have enough. */
function halvesDealt(people: number, under: WarmthHalfTable, over: WarmthHalfTable, enough: Uint8Array) {
  const leastUnder = largestLeast(people, under, enough);
  const leastOver = largestLeast(people, over, enough);
  const common = Math.max(0, Math.min(leastUnder, leastOver));
  return {
    under: leastMass(people, under, enough, Math.min(leastUnder, common)),
    over: leastMass(people, over, enough, Math.min(leastOver, common)),
  };
}

/** Most people who can have enough under and over at once, and of as many those who come first. */
function mostWithBoth(
  people: number,
  under: WarmthHalfTable,
  over: WarmthHalfTable,
  first: readonly ComesFirst[],
): Uint8Array {
  const inNode = (person: number) => 2 + 2 * person;
  const underNode = (line: number) => inNode(people) + line;
  const overNode = (line: number) => underNode(under.room.length) + line;
  const arcs: Arc[] = [];
  for (let person = 0; person < people; person++) {
    const worth = [0, 1, people + 1][first[person] ?? 0] ?? 0;
    arcs.push({ from: inNode(person), to: inNode(person) + 1, room: 1, worth });
  }
  for (const [line, room] of under.room.entries()) arcs.push({ from: 0, to: underNode(line), room });
  for (const [line, room] of over.room.entries()) arcs.push({ from: overNode(line), to: 1, room });
  for (let person = 0; person < people; person++) {
    for (const line of enoughLines(under, person)) {
      arcs.push({ from: underNode(line), to: inNode(person), room: 1 });
    }
    for (const line of enoughLines(over, person)) {
      arcs.push({ from: inNode(person) + 1, to: overNode(line), room: 1 });
    }
  }
  const nodes = overNode(over.room.length);
  return Uint8Array.from(greatestFlow(nodes, arcs).flow.subarray(0, people));
}

function enoughLines({ room, margin }: WarmthHalfTable, person: number): number[] {
  return [...room.keys()].filter((line) => (margin[person * room.length + line] ?? -Infinity) >= 0);
}

/** The largest margin that everybody can have in one half at once, those of `enough` at least 0. */
function largestLeast(people: number, half: WarmthHalfTable, enough: Uint8Array): number {
  const levels = [...new Set(half.margin)].sort((a, b) => a - b);
  let low = 0;
  let high = levels.length - 1;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (isDealable(people, half, enough, levels[middle] ?? Infinity)) low = middle;
    else high = middle - 1;
  }
  return levels[low] ?? -Infinity;
}

/** Everybody has a line of at least the margin: as many can be sent from lines to people as there are. */
function isDealable(people: number, half: WarmthHalfTable, enough: Uint8Array, least: number): boolean {
  const { room, margin } = half;
  const arcs: Arc[] = [];
  for (const [line, pieces] of room.entries()) arcs.push({ from: 0, to: 2 + people + line, room: pieces });
  for (let person = 0; person < people; person++) {
    const atLeast = leastOf(enough, person, least);
    arcs.push({ from: 2 + person, to: 1, room: 1 });
    for (const line of room.keys()) {
      if ((margin[person * room.length + line] ?? -Infinity) < atLeast) continue;
      arcs.push({ from: 2 + people + line, to: 2 + person, room: 1 });
    }
  }
  return greatestFlow(2 + people + room.length, arcs).total === people;
}

function leastMass(people: number, half: WarmthHalfTable, enough: Uint8Array, least: number): HalfDealt {
  const lines = half.room.length;
  const cost = half.margin.map((margin, at) => {
    if (margin < leastOf(enough, Math.floor(at / lines), least) || margin === -Infinity) return Infinity;
    const shortTenths = Math.min(MOST_TENTHS, Math.ceil(Math.max(0, -margin) / 10));
    return shortTenths * shortTenths * GRAMS_PER_SQUARE + (half.massG[at % lines] ?? 0);
  });
  const lineOf = leastTransport({ rows: people, room: half.room, cost });
  if (lineOf === undefined) throw new Error("everybody may go without, and yet there is no dealing");
  let total = 0;
  let leastMargin = Infinity;
  for (const [person, line] of lineOf.entries()) {
    total += cost[person * lines + line] ?? 0;
    leastMargin = Math.min(leastMargin, half.margin[person * lines + line] ?? -Infinity);
  }
  return { lineOf, leastMargin, cost: total };
}

function leastOf(enough: Uint8Array, person: number, least: number): number {
  return enough[person] === 1 ? Math.max(0, least) : least;
}

/** A tenth of a kelvin squared outweighs the mass that a thousand people can carry. */
const GRAMS_PER_SQUARE = 1e7;
const MOST_TENTHS = 600;
