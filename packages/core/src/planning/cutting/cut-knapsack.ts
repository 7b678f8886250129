import type { CutProblem } from "./cutting-types.ts";

/** The best filling of every capacity up to the greatest: worth[c] for capacity c, and how it is made. */
export interface Fillings {
  readonly worth: Float64Array;
  cutsAt(capacity: number): Int32Array;
}

/** One step of the table: so many pieces of one width at once. */
interface Lot {
  readonly piece: number;
  readonly count: number;
  readonly width: number;
  readonly worth: number;
}

/**
 * Most worth that fits each capacity, with no more of a width than is wanted.
 *
 *   f(c) = max Σ price·a, Σ width·a ≤ c, 0 ≤ a ≤ demand, a whole
 *
 * Each width is split into lots of 1, 2, 4 … and a rest, so that every count can be made; then one pass a lot.
 *
 * Shapes   widths, prices → capacity + 1 worths
 * Holds    whole widths > 0; prices of 0 or less are left out
 * Error    rounding of sums of prices
 * Source   pattern-cutting (handbook/kit.md)
 */
export function bestFillings(problem: CutProblem, price: Float64Array, capacity: number): Fillings {
  const lots = lotsOf(problem, price, capacity);
  const worth = new Float64Array(capacity + 1);
  const taken = lots.map((lot) => addLot(lot, worth));
  return {
    worth,
    cutsAt: (room) => {
      const cuts = new Int32Array(problem.widths.length);
      let left = room;
      for (let index = lots.length - 1; index >= 0; index--) {
        const lot = lots[index];
        if (lot === undefined || taken[index]?.[left] !== 1) continue;
        cuts[lot.piece] = (cuts[lot.piece] ?? 0) + lot.count;
        left -= lot.width;
      }
      return cuts;
    },
  };
}

function addLot({ width, worth: gain }: Lot, worth: Float64Array): Uint8Array {
  const taken = new Uint8Array(worth.length);
  for (let room = worth.length - 1; room >= width; room--) {
    const filled = (worth[room - width] ?? 0) + gain;
    if (!(filled > (worth[room] ?? 0) + LEAST_GAIN)) continue;
    worth[room] = filled;
    taken[room] = 1;
  }
  return taken;
}

function lotsOf({ widths, demand }: CutProblem, price: Float64Array, capacity: number): Lot[] {
  const lots: Lot[] = [];
  for (const [piece, width] of widths.entries()) {
    const each = price[piece] ?? 0;
    if (!(each > LEAST_GAIN)) continue;
    let left = Math.min(demand[piece] ?? 0, Math.floor(capacity / width));
    for (let size = 1; left > 0; size *= 2) {
      const count = Math.min(size, left);
      lots.push({ piece, count, width: width * count, worth: each * count });
      left -= count;
    }
  }
  return lots;
}

const LEAST_GAIN = 1e-12;
