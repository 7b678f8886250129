/** Places of which at most `most` can be used at once. */
export interface KnotSet {
  readonly places: Int32Array;
  readonly most: number;
}

/**
 * Covers places with knots that allow no more between them than lie there now: the proof that nobody else can.
 *
 * As many lie at the places as the knots allow, so each knot of such a cover holds exactly its most of those taken,
 * and each taken place lies in one knot of the cover. Others are left out from the start; what is left is tried knot
 * by knot, always for the place that fewest of them hold.
 *
 * Shapes   places, the taken ones among them, knots in the order in which they are wanted → indices of knots
 * Holds    nothing is returned where there is no such cover, or the steps allowed are used up
 * Source   layout-search (handbook/planning.md: what limits it)
 */
export function knotCover(
  places: readonly number[],
  taken: readonly number[],
  knots: readonly KnotSet[],
  mostSteps = MOST_STEPS,
): number[] | undefined {
  const isTaken = new Set(taken);
  const usable = [...knots.keys()].filter((index) => {
    const knot = knots[index];
    return (
      knot !== undefined &&
      knot.places.reduce((sum, place) => sum + (isTaken.has(place) ? 1 : 0), 0) === knot.most
    );
  });
  const holding = new Map<number, number[]>(places.map((place) => [place, []]));
  for (const index of usable) for (const place of knots[index]?.places ?? []) holding.get(place)?.push(index);
  const search: Search = { places, isTaken, knots, holding, budget: { left: mostSteps } };
  return extended(search, []);
}

const MOST_STEPS = 20_000;

interface Search {
  readonly places: readonly number[];
  readonly isTaken: ReadonlySet<number>;
  readonly knots: readonly KnotSet[];
  readonly holding: ReadonlyMap<number, readonly number[]>;
  readonly budget: { left: number };
}

function extended(search: Search, chosen: readonly number[]): number[] | undefined {
  if (--search.budget.left < 0) return undefined;
  const covered = new Set(chosen.flatMap((index) => [...(search.knots[index]?.places ?? [])]));
  const open = search.places.filter((place) => !covered.has(place));
  if (open.length === 0) return [...chosen];
  const used = new Set([...covered].filter((place) => search.isTaken.has(place)));
  let fewest: readonly number[] | undefined;
  for (const place of open) {
    const fitting = (search.holding.get(place) ?? []).filter((index) => isApart(search, index, used));
    if (fewest === undefined || fitting.length < fewest.length) fewest = fitting;
    if (fewest.length === 0) return undefined;
  }
  for (const index of fewest ?? []) {
    const found = extended(search, [...chosen, index]);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** A taken place counts in one knot alone. */
function isApart({ knots, isTaken }: Search, index: number, used: ReadonlySet<number>): boolean {
  return (knots[index]?.places ?? []).every((place) => !isTaken.has(place) || !used.has(place));
}
