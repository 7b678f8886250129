import { chance } from "./berth-search-chance.ts";
import { costOf, isNear, searchAroundHubs, type Hub } from "./group-around-hubs.ts";
import { hubKinds, layoutWorth, nearestGroups, type GroupLayout } from "./group-layout.ts";
import { conflictLists, freePart } from "./group-part.ts";
import type { GroupSearchInput } from "./group-types.ts";
import type { LinearSolver } from "./linear-solver.ts";

export interface NeighbourhoodOptions {
  readonly steps: number;
  /** Price of one who lies out of reach. */
  readonly farUnits: number;
  /** Where to stop: nothing can be better. */
  readonly goal: number;
  readonly solver?: LinearSolver;
}

/**
 * Betters a layout of groups: the hub of one group moves to another place near it, and its people and those of the
 * groups beside it look for the best berths anew, while all others stay.
 *
 * Holds    seeded and limited by steps; proves nothing
 * Source   layout-search (handbook/layout.md: groups)
 */
export function searchNeighbourhoods(
  input: GroupSearchInput,
  start: GroupLayout,
  options: NeighbourhoodOptions,
): GroupLayout {
  const { below } = chance(1);
  const links = conflictLists(input);
  let best = start;
  let since = 0;
  for (let step = 0; step < options.steps && best.worth > options.goal && since < GIVE_UP; step++) {
    since++;
    const hub = best.hubs[below(best.hubs.length)];
    if (hub === undefined) break;
    const freed = new Set(nearestGroups(input, best.hubs, hub, 1 + below(MOST_BESIDE)));
    const stay = best.seats.filter(({ kind }) => !freed.has(input.kinds[kind]?.group ?? -1));
    const part = freePart(input, links, freed, best.hubs, stay);
    const moved = movedHub(input, hub, part, best.hubs, below);
    if (moved === undefined) continue;
    const hubs = best.hubs.flatMap((one) => (one.group === hub.group ? [moved] : [one]));
    const own = hubs.filter(({ group }) => freed.has(group));
    const { solver } = options;
    const stayWorth = layoutWorth(input, best.hubs, stay, options.farUnits);
    const found = searchAroundHubs(input, own, {
      within: part,
      ceilingUnits: best.worth - stayWorth,
      farUnits: options.farUnits,
      ...(solver === undefined ? {} : { solver }),
    });
    const seats = [...stay, ...found.seats];
    if (seats.length < best.seats.length) continue;
    const worth = layoutWorth(input, hubs, seats, options.farUnits);
    if (worth < best.worth) since = 0;
    if (worth <= best.worth) best = { hubs, seats, worth };
  }
  return best;
}

/** Steps without gain after which it ends. */
const GIVE_UP = 200;

/** Most groups that look anew beside the one whose hub moves. */
const MOST_BESIDE = 2;

/** Another place for a hub, near the one it has. */
function movedHub(
  input: GroupSearchInput,
  hub: Hub,
  part: { readonly places: readonly number[] },
  hubs: readonly Hub[],
  below: (n: number) => number,
): Hub | undefined {
  if (part.places.length === 0) return undefined;
  for (let draw = 0; draw < DRAWS; draw++) {
    const place = part.places[below(part.places.length)] ?? -1;
    if (hubs.some((one) => one.place === place) || !isNear(input, hub.group, place, hub.place)) continue;
    const kinds = hubKinds(input, hub.group).filter((kind) => costOf(input, kind, place) >= 0);
    const kind = kinds[below(Math.max(1, kinds.length))];
    if (kind !== undefined) return { group: hub.group, place, kind };
  }
  return undefined;
}

const DRAWS = 20;
