import { LENGTH_SLACK_M } from "../quantity/constants.ts";
import type { GroundXY } from "../site/obstacle.ts";
import { listsOf, type Lists } from "./berth-search-lists.ts";

/**
 * For each place all others within so far of it, by middles; whoever's middle nobody knows has none and is none's.
 *
 * Source   layout-search (handbook/layout.md: people)
 */
export function placesNear(spots: readonly (GroundXY | undefined)[], withinM: number): Lists {
  const reachM = withinM + LENGTH_SLACK_M;
  const known = spots.flatMap((at, place) => (at === undefined ? [] : [{ place, at }]));
  known.sort((a, b) => a.at[0] - b.at[0] || a.place - b.place);
  return listsOf(spots.length, (tell) => {
    for (const [index, one] of known.entries()) {
      for (let next = index + 1; next < known.length; next++) {
        const other = known[next];
        if (other === undefined) break;
        const east = other.at[0] - one.at[0];
        if (east > reachM) break;
        const north = other.at[1] - one.at[1];
        if (east * east + north * north > reachM * reachM) continue;
        tell(one.place, other.place);
        tell(other.place, one.place);
      }
    }
  });
}
