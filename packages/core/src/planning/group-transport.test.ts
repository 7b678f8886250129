import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { drawFrom } from "../geometry/draw.fixture.ts";
import { leastTransport, type TransportInput } from "./group-transport.ts";
import { leastCostAssignment } from "./least-cost-assignment.ts";

const TASKS = fc.noBias(fc.nat({ max: 1_000_000 })).map((seed): TransportInput => {
  const draw = drawFrom(seed);
  const rows = draw(0, 6);
  const room = Int32Array.from({ length: draw(1, 4) }, () => draw(0, 3));
  const cost = Float64Array.from({ length: rows * room.length }, () =>
    draw(1, 5) === 1 ? Infinity : draw(0, 20),
  );
  return { rows, room, cost };
});

function totalOf({ room, cost }: TransportInput, columnOf: Iterable<number>): number {
  return [...columnOf].reduce((sum, column, row) => sum + (cost[row * room.length + column] ?? NaN), 0);
}

describe("leastTransport", () => {
  it("costs what an assignment costs in which each column stands once for each of its room", () => {
    let solved = 0;
    fc.assert(
      fc.property(TASKS, (task) => {
        const single = [...task.room].flatMap((room, column) => Array.from({ length: room }, () => column));
        const cost = (row: number, at: number): number =>
          task.cost[row * task.room.length + (single[at] ?? 0)] ?? NaN;
        const other =
          task.rows > single.length
            ? undefined
            : leastCostAssignment({ rows: task.rows, columns: single.length, cost });
        const found = leastTransport(task);
        expect(found === undefined).toBe(other === undefined);
        if (found === undefined || other === undefined) return;
        solved++;
        expect(totalOf(task, found)).toBe([...other].reduce((sum, at, row) => sum + cost(row, at), 0));
      }),
      { seed: 1, numRuns: 400 },
    );
    expect(solved).toBeGreaterThan(100);
  });

  it("fills no column beyond its room", () => {
    fc.assert(
      fc.property(TASKS, (task) => {
        const found = leastTransport(task);
        if (found === undefined) return;
        task.room.forEach((room, column) =>
          expect(found.filter((one) => one === column).length).toBeLessThanOrEqual(room),
        );
      }),
      { seed: 2, numRuns: 200 },
    );
  });
});
