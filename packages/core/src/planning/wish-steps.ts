import { listOf } from "./berth-search-lists.ts";
import {
  allServed,
  burdenOfMoves,
  costOfMove,
  costOfMoves,
  type Move,
  type WishState,
} from "./wish-state.ts";

/** How far a step may go: people change places only, or may take one that is free too. */
export type StepReach = "changes" | "free places too";

/**
 * The step for one person that saves most: to another place, or with somebody they wish near to two places near each
 * other. Of steps that save as much the one after which people lie better is taken.
 *
 * Shapes   → moves one after the other; undefined where no step saves anything
 */
export function bestStep(state: WishState, person: number, reach: StepReach): readonly Move[] | undefined {
  const best: Best = { units: -MINDED, burden: 0, moves: undefined };
  const look = (moves: readonly Move[]): void => {
    const [only] = moves;
    const units =
      moves.length === 1 && only !== undefined ? costOfMove(state, ...only) : costOfMoves(state, moves);
    if (units === undefined || units > best.units || !allServed(state, moves)) return;
    const burden = burdenOfMoves(state, moves);
    if (units === best.units && best.moves !== undefined && burden >= best.burden) return;
    Object.assign(best, { units, burden, moves });
  };
  for (const to of placesFor(state, person)) if (isInReach(state, person, to, reach)) look([[person, to]]);
  if (best.moves !== undefined) return best.moves;
  for (const other of state.score.missedNear(person)) lookInPairs(state, [person, other], reach, look);
  return best.moves;
}

interface Best {
  units: number;
  burden: number;
  moves: readonly Move[] | undefined;
}

/** A step must save at least so much [units]. */
const MINDED = 1;

/** Where a person might better lie: near those whom they miss, and anywhere if something else is amiss. */
function placesFor({ score, near, placeOf, personAt }: WishState, person: number): Iterable<number> {
  const missed = score.missedNear(person);
  if (missed.length === 0 || score.isAmissElse(person)) return personAt.keys();
  const found = new Set(missed.flatMap((other) => [...listOf(near, placeOf[other] ?? -1)]));
  return [...found].sort((a, b) => a - b);
}

function isInReach({ personAt, placeOf }: WishState, person: number, to: number, reach: StepReach): boolean {
  if (to === placeOf[person]) return false;
  return reach === "free places too" || (personAt[to] ?? -1) >= 0;
}

/** Both go to two places near each other, of their own groups or free. */
function lookInPairs(
  state: WishState,
  [person, other]: readonly [number, number],
  reach: StepReach,
  look: (moves: readonly Move[]) => void,
): void {
  const { input, near, personAt, placeOf, budget } = state;
  const { groupOf } = input.people;
  const isOwn = (of: number, to: number): boolean => {
    const there = personAt[to] ?? -1;
    return there >= 0 ? groupOf[there] === groupOf[of] : reach === "free places too";
  };
  for (const to of personAt.keys()) {
    if (budget.left <= 0) return;
    if (!isOwn(person, to) || to === placeOf[other]) continue;
    for (const beside of listOf(near, to)) {
      if (!isOwn(other, beside) || beside === placeOf[person]) continue;
      look(
        to === placeOf[person]
          ? [[other, beside]]
          : [
              [person, to],
              [other, beside],
            ],
      );
    }
  }
}
