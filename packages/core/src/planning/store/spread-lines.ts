import { leastTransport } from "../group-transport.ts";

export interface SpreadInput<P, L> {
  readonly people: readonly P[];
  readonly lines: readonly L[];
  readonly roomOf: (line: L) => number;
  /** A whole number ≥ 0 below `WITHOUT`, or Infinity where the line does not serve this person. */
  readonly costOf: (person: P, line: L) => number;
}

/**
 * A line for each person: as many people served as can be, then for the least total cost.
 *
 * Shapes   people × lines → the line of each person, or undefined
 * Error    exact: whole costs, each below 1e12, and at most a thousand people
 * Source   kit-dealing (handbook/kit.md)
 */
export function spreadLines<P, L>({ people, lines, roomOf, costOf }: SpreadInput<P, L>): (L | undefined)[] {
  const columns = lines.length + 1;
  const cost = new Float64Array(people.length * columns).fill(WITHOUT);
  people.forEach((person, row) => {
    lines.forEach((line, column) => (cost[row * columns + column] = costOf(person, line)));
  });
  const room = Int32Array.from([...lines.map(roomOf), people.length]);
  const columnOf = leastTransport({ rows: people.length, room, cost });
  if (columnOf === undefined) throw new Error("everybody may go without, and yet there is no dealing");
  return people.map((_, row) => lines[columnOf[row] ?? -1]);
}

/** Going without costs more than any dealing for a thousand people may. */
const WITHOUT = 1e12;
