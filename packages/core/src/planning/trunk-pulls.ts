import type { Hang } from "../statics/hang-types.ts";
import { reversed } from "./bearing.ts";
import type { CampPlace } from "./camp-places-types.ts";
import { headIsSecond } from "./hang-request.ts";

/** What one berth does to one of its trees. */
export interface TrunkPull {
  /** Number of the berth. */
  readonly berth: string;
  readonly sidewaysN: number;
  /** The strap above the ground [m]. */
  readonly heightM: number;
  /** From the tree to the berth's other tree, clockwise from north [rad]; absent: nobody knows. */
  readonly towardsRad?: number;
}

export interface HungBerth {
  readonly id: string;
  readonly place: CampPlace;
  readonly hang: Hang;
}

/** All that pulls at each tree of a plan, by the index of its anchor, in the order of the berths. */
export function trunkPulls(berths: readonly HungBerth[]): ReadonlyMap<number, readonly TrunkPull[]> {
  const byAnchor = new Map<number, TrunkPull[]>();
  for (const berth of berths) {
    for (const [anchor, pull] of pullsOf(berth)) {
      const known = byAnchor.get(anchor);
      if (known === undefined) byAnchor.set(anchor, [pull]);
      else known.push(pull);
    }
  }
  return byAnchor;
}

function pullsOf({ id, place, hang }: HungBerth): readonly (readonly [anchor: number, pull: TrunkPull])[] {
  const [atFirst, atSecond] = headIsSecond(place) ? [hang.foot, hang.head] : [hang.head, hang.foot];
  const { bearingRad } = place;
  const [onwards, back] =
    bearingRad === undefined ? [{}, {}] : [{ towardsRad: bearingRad }, { towardsRad: reversed(bearingRad) }];
  const pull = ({ sidewaysN, strapHeightM }: Hang["head"]) => ({
    berth: id,
    sidewaysN,
    heightM: strapHeightM,
  });
  return [
    [place.first, { ...pull(atFirst), ...onwards }],
    [place.second, { ...pull(atSecond), ...back }],
  ];
}
