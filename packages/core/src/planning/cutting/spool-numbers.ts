/** One kind of spool: what it holds and how long it is, what of it is bought, how many there are. */
export interface SpoolKind {
  /** In the pieces' unit. */
  readonly capacity: number;
  readonly length: number;
  /** In whole steps of what is sold; 0 for what lies in the store. */
  readonly bought: number;
  readonly most: number;
}

export interface SpoolWish {
  readonly bought: number;
  readonly spools: number;
  /** What they must hold between them, in the pieces' unit. */
  readonly capacity: number;
}

/** So many of each kind, in the kinds' order. */
export interface SpoolNumbers {
  readonly counts: readonly number[];
  readonly length: number;
}

/**
 * Every choice of just so many spools with just so much bought that is long enough between them, the least length first.
 * `isAll` is false where there are too many to list.
 */
export function spoolNumbers(
  kinds: readonly SpoolKind[],
  wish: SpoolWish,
): { readonly choices: readonly SpoolNumbers[]; readonly isAll: boolean } {
  const choices: SpoolNumbers[] = [];
  const counts = kinds.map(() => 0);
  const roomiest = kinds.map((_, at) => Math.max(0, ...kinds.slice(at).map(({ capacity }) => capacity)));
  let steps = 0;
  const choose = (at: number, left: SpoolWish, length: number): void => {
    if (++steps > MOST_STEPS || left.capacity > left.spools * (roomiest[at] ?? 0)) return;
    const kind = kinds[at];
    if (kind === undefined) {
      if (left.spools === 0 && left.bought === 0) choices.push({ counts: [...counts], length });
      return;
    }
    const affordable = kind.bought > 0 ? Math.floor(left.bought / kind.bought) : Infinity;
    for (let count = Math.min(kind.most, left.spools, affordable); count >= 0; count--) {
      counts[at] = count;
      const rest = {
        bought: left.bought - count * kind.bought,
        spools: left.spools - count,
        capacity: left.capacity - count * kind.capacity,
      };
      choose(at + 1, rest, length + count * kind.length);
    }
    counts[at] = 0;
  };
  choose(0, wish, 0);
  return { choices: choices.sort((a, b) => a.length - b.length), isAll: steps <= MOST_STEPS };
}

const MOST_STEPS = 50_000;
