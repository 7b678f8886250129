/** How many berths each part of the wood gives, and what they cost together. */
export interface Split {
  readonly counts: Int32Array;
  readonly cost: number;
}

/**
 * Shares a number of berths out among independent parts at the least total cost.
 *
 * Parts whose next berth never costs less than the one before give theirs in order of cost; the others
 * are joined one by one, best cost for each number, and last the two kinds meet.
 *
 * Shapes   costs[part][n]: least cost of n berths there, n = 0 … its most → berths a part
 * Holds    0 ≤ target ≤ the sum of what the parts can give; some numbers may be impossible (∞)
 * Error    none in whole units
 * Source   layout-search
 */
export function leastSplit(costs: readonly (readonly number[])[], target: number): Split {
  const convex = costs.flatMap((list, part) => (isConvex(list) ? [part] : []));
  const others = costs.flatMap((list, part) => (isConvex(list) ? [] : [part]));
  const gains = gainsOf(costs, convex);
  const joined = join(
    others.map((part) => costs[part] ?? []),
    target,
  );
  let best = { fromOthers: 0, cost: Infinity };
  const convexCost = [0];
  for (const { gain } of gains) convexCost.push((convexCost.at(-1) ?? 0) + gain);
  for (const [count, cost] of joined.cost.entries()) {
    const total = cost + (convexCost[target - count] ?? Infinity);
    if (total < best.cost) best = { fromOthers: count, cost: total };
  }
  const counts = new Int32Array(costs.length);
  for (const { part } of gains.slice(0, target - best.fromOthers)) counts[part] = (counts[part] ?? 0) + 1;
  let left = best.fromOthers;
  for (let at = others.length - 1; at >= 0; at--) {
    const taken = joined.taken[at]?.[left] ?? 0;
    counts[others[at] ?? 0] = taken;
    left -= taken;
  }
  return { counts, cost: best.cost };
}

interface Gain {
  readonly part: number;
  readonly gain: number;
}

function gainsOf(costs: readonly (readonly number[])[], parts: readonly number[]): readonly Gain[] {
  const gains = parts.flatMap((part) => {
    const list = costs[part] ?? [];
    return list.slice(1).map((cost, n) => ({ part, gain: cost - (list[n] ?? 0) }));
  });
  return gains.sort((a, b) => a.gain - b.gain || a.part - b.part);
}

function isConvex(list: readonly number[]): boolean {
  let before = -Infinity;
  for (let n = 1; n < list.length; n++) {
    const gain = (list[n] ?? 0) - (list[n - 1] ?? 0);
    if (!(gain >= before && gain < Infinity)) return false;
    before = gain;
  }
  return true;
}

interface Joined {
  readonly cost: Float64Array;
  /** For each part and number: how many that part gives. */
  readonly taken: readonly Int32Array[];
}

function join(lists: readonly (readonly number[])[], most: number): Joined {
  let cost = Float64Array.of(0);
  const taken: Int32Array[] = [];
  for (const list of lists) {
    const length = Math.min(most + 1, cost.length + list.length - 1);
    const next = new Float64Array(length).fill(Infinity);
    const from = new Int32Array(length);
    for (let n = 0; n < list.length; n++) {
      const units = list[n] ?? Infinity;
      const end = Math.min(cost.length, length - n);
      for (let before = 0; before < end; before++) {
        const total = (cost[before] ?? Infinity) + units;
        if (total >= (next[before + n] ?? Infinity)) continue;
        next[before + n] = total;
        from[before + n] = n;
      }
    }
    cost = next;
    taken.push(from);
  }
  return { cost, taken };
}
