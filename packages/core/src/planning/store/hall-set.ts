import { leastTransport } from "../group-transport.ts";
import { fewestShort } from "./fewest-short.ts";
import type { HallInput } from "./hall-input.ts";

export interface HallSet {
  readonly people: readonly number[];
  readonly lines: readonly number[];
  /** Fewer than there are people. */
  readonly pieces: number;
  /** Whether no set of fewer people has too few pieces. */
  readonly isFewest: boolean;
}

/**
 * A set of people who have fewer pieces between them than they are: why somebody must go without.
 *
 * Whoever goes without starts it; those who hold what would serve them join, and so on. Of a crowd of up to sixty each is
 * then left out who need not be in it, so that no smaller set lies within. Where lines differ in at most twelve ways in whom
 * they serve, `fewestShort` gives the smallest of all.
 *
 * Shapes   people × lines → the smallest set, or nothing where all are served
 * Error    none: |people| > pieces by count; a set elsewhere may be smaller still where not `isFewest`
 * Source   kit-dealing (handbook/kit.md)
 */
export function hallSet(input: HallInput): HallSet | undefined {
  if (input.lineOf.every((line) => line !== -1)) return undefined;
  const fewest = fewestShort(input);
  return fewest === undefined ? fewestFound(input) : setOf(input, fewest, true);
}

function fewestFound(input: HallInput): HallSet | undefined {
  let smallest: HallSet | undefined;
  const seen = new Set<string>();
  for (const [person, line] of input.lineOf.entries()) {
    if (line !== -1) continue;
    const crowd = crowdAround(input, person);
    const key = crowd.linesKey;
    if (seen.has(key)) continue;
    seen.add(key);
    const set = shrunk(input, crowd.people);
    if (set.people.length < (smallest?.people.length ?? Infinity)) smallest = set;
  }
  return smallest;
}

function crowdAround({ room, serves, lineOf }: HallInput, start: number) {
  const people = [start];
  const lines = new Set<number>();
  for (const person of people) {
    for (const line of room.keys()) {
      if (lines.has(line) || !serves(person, line)) continue;
      lines.add(line);
      for (const [other, held] of lineOf.entries()) if (held === line) people.push(other);
    }
  }
  return { people, linesKey: [...lines].sort((a, b) => a - b).join(" ") };
}

function shrunk(input: HallInput, crowd: readonly number[]): HallSet {
  let people = crowd;
  for (const person of crowd.length > MOST_SHRUNK ? [] : crowd.toReversed()) {
    const fewer = people.filter((one) => one !== person);
    if (!canServe(input, fewer)) people = fewer;
  }
  return setOf(input, people, false);
}

function setOf(input: HallInput, people: readonly number[], isFewest: boolean): HallSet {
  const lines = [...input.room.keys()].filter((line) => people.some((person) => input.serves(person, line)));
  const pieces = lines.reduce((sum, line) => sum + (input.room[line] ?? 0), 0);
  return { people: [...people].sort((a, b) => a - b), lines, pieces, isFewest };
}

function canServe({ room, serves }: HallInput, people: readonly number[]): boolean {
  const cost = people.flatMap((person) => room.map((_, line) => (serves(person, line) ? 0 : Infinity)));
  const found = leastTransport({
    rows: people.length,
    room: Int32Array.from(room),
    cost: Float64Array.from(cost),
  });
  return found !== undefined;
}

/** Nobody reads more names than this, and each costs a dealing of all. */
const MOST_SHRUNK = 60;
