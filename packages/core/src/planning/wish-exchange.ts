import { exchangedGroups, type Exchanged } from "./group-exchange.ts";
import { changedPlaces, searchWishes, type WishSearch } from "./wish-search.ts";
import type { WishSearchInput } from "./wish-state.ts";
import { wishScore } from "./wish-score.ts";

/**
 * The search for wishes from where people lie, and from where groups have changed places first. Where two who wish
 * each other near still lie apart after that, their groups change places again, not to where it came to nothing.
 *
 * Source   layout-search (handbook/layout.md: people)
 */
export function searchExchanged(input: WishSearchInput, goalUnits?: number): WishSearch {
  const barred = new Set<string>();
  let best: WishSearch | undefined;
  for (let round = 0; round < ROUNDS; round++) {
    const exchanged = exchangedGroups(input, barred);
    if (exchanged === undefined || exchanged.sides.some(({ side }) => barred.has(side))) break;
    const changed = changedPlaces({ ...input, start: exchanged.placeOf });
    if (best === undefined || changed.units < best.units) best = changed;
    const missed = sidesMissed(input, exchanged, changed);
    if (missed.length === 0) break;
    for (const side of missed) barred.add(side);
  }
  const found = searchWishes({ ...input, start: best?.placeOf ?? input.start }, goalUnits);
  if (best === undefined || found.amiss === 0) return found;
  const asDealt = searchWishes(input, goalUnits);
  return asDealt.units < found.units ? asDealt : found;
}

const ROUNDS = 20;

function sidesMissed(input: WishSearchInput, { sides }: Exchanged, { placeOf }: WishSearch): string[] {
  const score = wishScore(input.people, input.prices, placeOf, input.spots);
  return sides
    .filter(({ pair: [one, other] }) => score.missedNear(one).includes(other))
    .map(({ side }) => side);
}
