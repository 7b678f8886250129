import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { hallSet, type HallSet } from "./hall-set.ts";
import { spreadLines } from "./spread-lines.ts";

function setOf(table: readonly (readonly boolean[])[], room: readonly number[]): HallSet | undefined {
  const serves = (person: number, line: number) => table[person]?.[line] === true;
  const lines = room.map((_, line) => line);
  const given = spreadLines({
    people: table.map((_, person) => person),
    lines,
    roomOf: (line) => room[line] ?? 0,
    costOf: (person, line) => (serves(person, line) ? 0 : Infinity),
  });
  return hallSet({ room, serves, lineOf: Int32Array.from(given, (line) => line ?? -1) });
}

describe("hallSet", () => {
  it("names the two who want the one strong hammock, not the third who has another", () => {
    const table = [
      [true, false],
      [true, true],
      [true, false],
    ];
    expect(setOf(table, [1, 1])).toEqual({ people: [0, 2], lines: [0], pieces: 1, isFewest: true });
  });

  it("is nothing where everybody is served", () => {
    expect(setOf([[true], [true]], [2])).toBeUndefined();
  });

  it("holds more people than pieces, and no fewer people are short anywhere", () => {
    const room = fc.array(fc.integer({ min: 0, max: 2 }), { minLength: 3, maxLength: 3 });
    const table = fc.array(fc.array(fc.boolean(), { minLength: 3, maxLength: 3 }), {
      minLength: 1,
      maxLength: 5,
    });
    fc.assert(
      fc.property(table, room, (wants, pieces) => {
        const found = setOf(wants, pieces);
        const violating = subsets(wants.length).filter((people) => short(wants, pieces, people) > 0);
        if (found === undefined) return violating.length === 0;
        return (
          short(wants, pieces, found.people) === found.people.length - found.pieces &&
          found.people.length > found.pieces &&
          found.isFewest &&
          violating.every((people) => people.length >= found.people.length)
        );
      }),
      { seed: 1, numRuns: 300 },
    );
  });
});

describe("a crowd where lines differ in many ways", () => {
  /** Thirteen people, each with a line of their own, and two more who want the first of them. */
  const table = Array.from({ length: 15 }, (_, person) =>
    Array.from({ length: 13 }, (__, line) => line === (person < 13 ? person : 0)),
  );

  it("is told as the fewest found, and nobody in it can be left out", () => {
    expect(
      setOf(
        table,
        Array.from({ length: 13 }, () => 1),
      ),
    ).toMatchObject({ pieces: 1, isFewest: false });
  });
});

function short(
  table: readonly (readonly boolean[])[],
  room: readonly number[],
  people: readonly number[],
): number {
  const pieces = room.reduce(
    (sum, count, line) => sum + (people.some((person) => table[person]?.[line]) ? count : 0),
    0,
  );
  return people.length - pieces;
}

function subsets(size: number): number[][] {
  return Array.from({ length: 2 ** size }, (_, mask) =>
    Array.from({ length: size }, (__, person) => person).filter((person) => (mask >> person) % 2 === 1),
  );
}
