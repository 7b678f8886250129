/** Who may lie where, asked only where it matters. */
export interface Seating {
  readonly sleepers: number;
  readonly berths: number;
  /** For one sleeper all berths, best first. */
  readonly preferred: (sleeper: number) => Int32Array;
  readonly serves: (sleeper: number, berth: number) => boolean;
}

/**
 * Gives each sleeper a berth that serves: in order, each the best one free, moving others on where needed.
 *
 * Shapes   sleepers in the order of their claim → one berth each, −1 for nobody's fault but the wood's
 * Holds    any who-serves-whom; as many are seated as can be (augmenting paths)
 * Source   layout-search (handbook/planning.md)
 */
export function seatSleepers(seating: Seating): Int32Array {
  const berthOf = new Int32Array(seating.sleepers).fill(-1);
  const sleeperOf = new Int32Array(seating.berths).fill(-1);
  for (let sleeper = 0; sleeper < seating.sleepers; sleeper++) {
    const free = firstFree(seating, sleeper, sleeperOf);
    if (free >= 0) {
      berthOf[sleeper] = free;
      sleeperOf[free] = sleeper;
    } else {
      moveOn(seating, sleeper, { berthOf, sleeperOf });
    }
  }
  return berthOf;
}

interface Seats {
  readonly berthOf: Int32Array;
  readonly sleeperOf: Int32Array;
}

function firstFree(seating: Seating, sleeper: number, sleeperOf: Int32Array): number {
  for (const berth of seating.preferred(sleeper)) {
    if (sleeperOf[berth] === -1 && seating.serves(sleeper, berth)) return berth;
  }
  return -1;
}

/** Breadth first through who could move where, until somebody finds a free berth. */
function moveOn(seating: Seating, claimant: number, { berthOf, sleeperOf }: Seats): void {
  const cameFrom = new Int32Array(seating.berths).fill(-1);
  const queue = [claimant];
  for (const sleeper of queue) {
    for (const berth of seating.preferred(sleeper)) {
      if (cameFrom[berth] !== -1 || !seating.serves(sleeper, berth)) continue;
      cameFrom[berth] = sleeper;
      const holder = sleeperOf[berth] ?? -1;
      if (holder !== -1) {
        queue.push(holder);
        continue;
      }
      let free = berth;
      for (;;) {
        const mover = cameFrom[free] ?? -1;
        const left = berthOf[mover] ?? -1;
        berthOf[mover] = free;
        sleeperOf[free] = mover;
        if (mover === claimant) return;
        free = left;
      }
    }
  }
}
