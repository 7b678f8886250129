import { lowestOf, onesIn } from "./bits.ts";
import { listOf, type Lists } from "./berth-search-lists.ts";

/**
 * All cliques of two or more that cannot grow, by branching on a pivot with most neighbours left
 * (Bron and Kerbosch, with the pivot rule of Tomita and others).
 *
 * Shapes   graph: sorted neighbours of each node → sorted lists of nodes
 * Holds    nothing is returned once there are more than `most` of them
 * Source   layout-search
 */
export function maximalCliques(graph: Lists, nodes: number, most: number): readonly Int32Array[] | undefined {
  const found: Int32Array[] = [];
  for (let node = 0; node < nodes; node++) {
    const neighbours = listOf(graph, node);
    if (neighbours.length === 0) continue;
    if (neighbours.length <= BITS) branchInBits(graph, node, neighbours, found);
    else {
      const later = neighbours.filter((other) => other > node);
      const earlier = neighbours.filter((other) => other < node);
      if (!branch(graph, [node], later, earlier, found, most)) return undefined;
    }
    if (found.length > most) return undefined;
  }
  return found;
}

/** Neighbours that fit into one whole number. */
const BITS = 31;

/** The cliques whose lowest node is the given one, with its neighbours as bits. */
function branchInBits(graph: Lists, node: number, neighbours: Int32Array, found: Int32Array[]): void {
  const near = Int32Array.from(neighbours, (other) => bitsWithin(neighbours, listOf(graph, other)));
  let later = 0;
  for (let at = 0; at < neighbours.length; at++) if ((neighbours[at] ?? 0) > node) later |= 1 << at;
  const visit = (chosen: number, candidates: number, done: number): void => {
    if (candidates === 0) {
      if (done === 0) found.push(groupOf(node, neighbours, chosen));
      return;
    }
    let rest = candidates;
    let over = done;
    for (let open = candidates & ~pivotBits(near, candidates, done); open !== 0; open &= open - 1) {
      const at = lowestOf(open);
      const goesWith = near[at] ?? 0;
      visit(chosen | (1 << at), rest & goesWith, over & goesWith);
      rest &= ~(1 << at);
      over |= 1 << at;
    }
  };
  const all = neighbours.length === BITS ? 0x7fffffff : (1 << neighbours.length) - 1;
  visit(0, later, all & ~later);
}

/** Neighbours of the candidate or done node that goes with most candidates. */
function pivotBits(near: Int32Array, candidates: number, done: number): number {
  let pivot = 0;
  let most = -1;
  for (let open = candidates | done; open !== 0; open &= open - 1) {
    const goesWith = near[lowestOf(open)] ?? 0;
    const spared = onesIn(candidates & goesWith);
    if (spared > most) {
      most = spared;
      pivot = goesWith;
    }
  }
  return pivot;
}

/** Which of `list` stand in `other`, both sorted, as bits by position. */
function bitsWithin(list: Int32Array, other: Int32Array): number {
  let bits = 0;
  for (let i = 0, j = 0; i < list.length && j < other.length;) {
    const left = list[i] ?? 0;
    const right = other[j] ?? 0;
    if (left === right) bits |= 1 << i;
    if (left <= right) i++;
    if (right <= left) j++;
  }
  return bits;
}

function groupOf(node: number, neighbours: Int32Array, chosen: number): Int32Array {
  const group = new Int32Array(onesIn(chosen) + 1);
  group[0] = node;
  let at = 1;
  for (let open = chosen; open !== 0; open &= open - 1) group[at++] = neighbours[lowestOf(open)] ?? 0;
  return group;
}

/** Cliques of `chosen` with some of `candidates`, left out where one of `done` goes with all; false past the limit. */
function branch(
  graph: Lists,
  chosen: readonly number[],
  candidates: Int32Array,
  done: Int32Array,
  found: Int32Array[],
  most: number,
): boolean {
  if (candidates.length === 0) {
    if (done.length === 0) found.push(Int32Array.from(chosen).sort());
    return found.length <= most;
  }
  const spared = listOf(graph, pivotOf(graph, candidates, done));
  let rest = candidates;
  let over = done;
  for (const node of without(candidates, spared)) {
    const neighbours = listOf(graph, node);
    const goesOn = branch(
      graph,
      [...chosen, node],
      common(rest, neighbours),
      common(over, neighbours),
      found,
      most,
    );
    if (!goesOn) return false;
    rest = rest.filter((other) => other !== node);
    over = Int32Array.from([...over, node]).sort();
  }
  return true;
}

function pivotOf(graph: Lists, candidates: Int32Array, done: Int32Array): number {
  let pivot = candidates[0] ?? 0;
  let most = -1;
  for (const group of [candidates, done]) {
    for (const node of group) {
      const spared = common(candidates, listOf(graph, node)).length;
      if (spared > most) {
        most = spared;
        pivot = node;
      }
    }
  }
  return pivot;
}

/** What two sorted lists share. */
export function common(a: Int32Array, b: Int32Array): Int32Array {
  const both = new Int32Array(Math.min(a.length, b.length));
  let count = 0;
  for (let i = 0, j = 0; i < a.length && j < b.length;) {
    const left = a[i] ?? 0;
    const right = b[j] ?? 0;
    if (left === right) {
      both[count++] = left;
      i++;
      j++;
    } else if (left < right) i++;
    else j++;
  }
  return both.subarray(0, count);
}

function without(a: Int32Array, b: Int32Array): Int32Array {
  const gone = new Set(b);
  return a.filter((node) => !gone.has(node));
}
