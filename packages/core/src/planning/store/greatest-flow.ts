/** One arc of a network; `room` is what may flow through it. */
export interface Arc {
  readonly from: number;
  readonly to: number;
  readonly room: number;
  /** Of as much flow the one that is worth most is found: what a unit in this arc adds, whole; absent: nothing. */
  readonly worth?: number;
}

/**
 * Most that can flow from node 0 to node 1, and of as much the flow that is worth most.
 *
 * Shortest ways first, all of one length at a time. Then whatever can go round in a ring and be worth more for it goes round, until
 * there is no such ring: then no flow of the same size is worth more.
 *
 * Shapes   arcs → flow in each arc
 * Holds    whole rooms ≥ 0, whole worths
 * Error    exact
 * Source   kit-dealing (handbook/kit.md)
 */
export function greatestFlow(nodes: number, arcs: readonly Arc[]): { total: number; flow: Int32Array } {
  const net = new Network(nodes, arcs);
  let total = 0;
  while (net.measure()) {
    for (let sent = net.send(0, Infinity); sent > 0; sent = net.send(0, Infinity)) total += sent;
  }
  if (arcs.some(({ worth = 0 }) => worth !== 0)) while (net.turnRing());
  return { total, flow: net.flow() };
}

class Network {
  private readonly arcs: readonly Arc[];
  /** Arc i forward at 2 i, back at 2 i + 1. */
  private readonly left: Int32Array;
  private readonly target: Int32Array;
  private readonly outOf: number[][];
  private readonly depth: Int32Array;
  private readonly next: Int32Array;

  constructor(nodes: number, arcs: readonly Arc[]) {
    this.arcs = arcs;
    this.left = new Int32Array(2 * arcs.length);
    this.target = new Int32Array(2 * arcs.length);
    this.outOf = Array.from({ length: nodes }, () => []);
    this.depth = new Int32Array(nodes);
    this.next = new Int32Array(nodes);
    arcs.forEach(({ from, to, room }, index) => {
      this.left[2 * index] = room;
      this.target[2 * index] = to;
      this.target[2 * index + 1] = from;
      this.outOf[from]?.push(2 * index);
      this.outOf[to]?.push(2 * index + 1);
    });
  }

  /** How far each node is from the start; false where the end cannot be reached. */
  measure(): boolean {
    this.depth.fill(-1);
    this.next.fill(0);
    this.depth[0] = 0;
    const reached = [0];
    for (const node of reached) {
      for (const half of this.outOf[node] ?? []) {
        const to = this.target[half] ?? 0;
        if ((this.left[half] ?? 0) <= 0 || this.depth[to] !== -1) continue;
        this.depth[to] = (this.depth[node] ?? 0) + 1;
        reached.push(to);
      }
    }
    return this.depth[1] !== -1;
  }

  /** Sends along one way of the measured length. */
  send(node: number, room: number): number {
    if (node === 1) return room;
    const outgoing = this.outOf[node] ?? [];
    for (let at = this.next[node] ?? 0; at < outgoing.length; at++) {
      this.next[node] = at;
      const half = outgoing[at] ?? 0;
      const to = this.target[half] ?? 0;
      const left = this.left[half] ?? 0;
      if (left <= 0 || this.depth[to] !== (this.depth[node] ?? 0) + 1) continue;
      const sent = this.send(to, Math.min(room, left));
      if (sent <= 0) continue;
      this.left[half] = left - sent;
      const back = half ^ 1;
      this.left[back] = (this.left[back] ?? 0) + sent;
      return sent;
    }
    this.next[node] = outgoing.length;
    return 0;
  }

  /** Sends one unit round a ring that is worth more than nothing; false where there is none. */
  turnRing(): boolean {
    const cameBy = new Int32Array(this.outOf.length).fill(-1);
    const worth = new Float64Array(this.outOf.length);
    while (this.reachDearer(worth, cameBy)) {
      const node = this.onRing(cameBy);
      if (node === undefined) continue;
      let at = node;
      do {
        const half = cameBy[at] ?? 0;
        this.left[half] = (this.left[half] ?? 0) - 1;
        this.left[half ^ 1] = (this.left[half ^ 1] ?? 0) + 1;
        at = this.target[half ^ 1] ?? 0;
      } while (at !== node);
      return true;
    }
    return false;
  }

  /** One pass over all arcs with room: ways to each node that are worth more. */
  private reachDearer(worth: Float64Array, cameBy: Int32Array): boolean {
    let isMore = false;
    for (const [half, left] of this.left.entries()) {
      if (left <= 0) continue;
      const own = this.arcs[half >> 1]?.worth ?? 0;
      const to = this.target[half] ?? 0;
      const reached = (worth[this.target[half ^ 1] ?? 0] ?? 0) + (half % 2 === 0 ? own : -own);
      if (reached <= (worth[to] ?? 0)) continue;
      worth[to] = reached;
      cameBy[to] = half;
      isMore = true;
    }
    return isMore;
  }

  /** A node that its own way comes back to. */
  private onRing(cameBy: Int32Array): number | undefined {
    const seenFrom = new Int32Array(cameBy.length).fill(-1);
    for (const start of cameBy.keys()) {
      let node = start;
      while (seenFrom[node] === -1) {
        seenFrom[node] = start;
        const half = cameBy[node] ?? -1;
        if (half === -1) break;
        node = this.target[half ^ 1] ?? 0;
      }
      if (seenFrom[node] === start && (cameBy[node] ?? -1) !== -1) return node;
    }
    return undefined;
  }

  flow(): Int32Array {
    return Int32Array.from(this.arcs, ({ room }, index) => room - (this.left[2 * index] ?? 0));
  }
}
