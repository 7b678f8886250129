import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { seatSleepers } from "./seat-sleepers.ts";

function seated(table: readonly (readonly boolean[])[], berths: number): Int32Array {
  const preferred = Int32Array.from({ length: berths }, (_, berth) => berth);
  return seatSleepers({
    sleepers: table.length,
    berths,
    preferred: () => preferred,
    serves: (sleeper, berth) => table[sleeper]?.[berth] ?? false,
  });
}

describe("seatSleepers", () => {
  it("gives the first claim the best berth", () => {
    expect([
      ...seated(
        [
          [true, true],
          [true, true],
        ],
        2,
      ),
    ]).toEqual([0, 1]);
  });

  it("moves somebody on where only that lets everybody lie", () => {
    expect([
      ...seated(
        [
          [true, true],
          [true, false],
        ],
        2,
      ),
    ]).toEqual([1, 0]);
  });

  it("leaves out whom no berth serves, and nobody else", () => {
    expect([
      ...seated(
        [
          [false, false],
          [true, false],
        ],
        2,
      ),
    ]).toEqual([-1, 0]);
  });

  it("seats as many as can be, each where it serves, none twice", () => {
    const table = fc.array(fc.array(fc.boolean(), { minLength: 5, maxLength: 5 }), { maxLength: 6 });
    fc.assert(
      fc.property(table, (serves) => {
        const found = [...seated(serves, 5)];
        const used = found.filter((berth) => berth >= 0);
        const lawful = found.every((berth, sleeper) => berth < 0 || serves[sleeper]?.[berth] === true);
        return lawful && new Set(used).size === used.length && used.length === most(serves, new Set());
      }),
      { seed: 1, numRuns: 300 },
    );
  });
});

function most([first, ...rest]: readonly (readonly boolean[])[], taken: ReadonlySet<number>): number {
  if (first === undefined) return 0;
  const choices = first.flatMap((serves, berth) =>
    serves && !taken.has(berth) ? [1 + most(rest, new Set([...taken, berth]))] : [],
  );
  return Math.max(most(rest, taken), ...choices);
}
