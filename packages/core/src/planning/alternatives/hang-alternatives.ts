import type { HangAlternative, HangAlternatives } from "../../plan/alternative-types.ts";
import type { Limit } from "../../outcome/outcome.ts";
import { DEFAULTS } from "../../plan/defaults.ts";
import { degrees } from "../../quantity/angle.ts";
import type { CampPlace } from "../camp-places-types.ts";
import type { DealtKit } from "../dealt-kit.ts";
import type { PreparedCamp } from "../prepare-camp.ts";
import { alternativeKits } from "./alternative-kits.ts";
import { treesOf, tryHang } from "./try-hang.ts";

/** Limits on the lengths of straps, for which there is something else to try. */
export const STRAP_TROUBLES: readonly Limit[] = ["sling-shortest", "sling-longest", "trees-too-close"];

export interface AlternativesInput {
  readonly prepared: Pick<PreparedCamp, "camp" | "ground">;
  readonly place: number;
  readonly kit: DealtKit;
  readonly binds: Limit;
  /** Places where somebody else lies. */
  readonly occupied: ReadonlySet<number>;
}

/**
 * What else could be done where straps come out too long or too short for two trees: fewer parts in line, another
 * hammock or suspension of the store, another pair near by that is free. Each is hung anew and told with the angle and
 * the seat it comes to, or with why it fails too.
 *
 * Shapes   one sleeper at one place → at most 8 tries, those that serve first
 * Holds    any place of the camp; things of the store are tried whoever holds them
 * Error    as `hang`; strengths are not compared
 * Source   hang-chain, common-practice (handbook/statics.md)
 */
export function hangAlternatives(input: AlternativesInput): HangAlternatives | undefined {
  const { prepared, kit, binds } = input;
  const { camp, ground } = prepared;
  const place = ground.places[input.place];
  if (place === undefined) return undefined;
  const here = alternativeKits(camp, kit).map(({ kit: other, ...named }): HangAlternative => {
    return { ...named, ...tryHang(camp, ground, place, other) };
  });
  const tries = [...here, ...nearPairs(input, place)];
  return {
    sleeper: kit.sleeper.id,
    trees: treesOf(ground, place),
    spanM: place.spanM,
    binds,
    tries: tries.sort(nearestToAim).slice(0, MOST_TRIES),
  };
}

/** No more than a person reads. */
const MOST_TRIES = 8;
const PAIRS_TRIED = 3;

function nearestToAim(a: HangAlternative, b: HangAlternative): number {
  const [offA, offB] = [offAim(a), offAim(b)];
  return offA === offB ? 0 : offA - offB;
}

function offAim({ hung }: HangAlternative): number {
  return hung === undefined ? Infinity : Math.abs(hung.angle - AIM);
}

const AIM = degrees(DEFAULTS["hang.angle_deg"].value);

/** The pairs nearest to this one at which nobody lies nor could be in the way. */
function nearPairs(
  { prepared, kit, occupied: taken, ...input }: AlternativesInput,
  from: CampPlace,
): HangAlternative[] {
  const { camp, ground } = prepared;
  const barred = new Set(
    ground.conflicts.flatMap(([a, b]) => [...(taken.has(a) ? [b] : []), ...(taken.has(b) ? [a] : [])]),
  );
  const load = new Map<number, number>();
  for (const place of taken) {
    const { first = -1, second = -1 } = ground.places[place] ?? {};
    for (const anchor of [first, second]) load.set(anchor, (load.get(anchor) ?? 0) + 1);
  }
  const isFull = (anchor: number): boolean => (load.get(anchor) ?? 0) >= camp.rules.hammocksPerTree.value;
  return ground.places
    .map((there, place) => ({ there, place, awayM: awayM(from, there) }))
    .filter(
      ({ there, place }) =>
        place !== input.place &&
        !taken.has(place) &&
        !barred.has(place) &&
        !isFull(there.first) &&
        !isFull(there.second),
    )
    .sort((a, b) => a.awayM - b.awayM || a.place - b.place)
    .slice(0, PAIRS_TRIED)
    .map(({ there }) => ({
      kind: "other-pair",
      trees: treesOf(ground, there),
      spanM: there.spanM,
      ...tryHang(camp, ground, there, kit),
    }));
}

/** From middle to middle on the map; by the difference of spans where there is none. */
function awayM({ middle: a, spanM }: CampPlace, { middle: b, ...there }: CampPlace): number {
  if (a === undefined || b === undefined) return Math.abs(there.spanM - spanM);
  return Math.hypot(b[0] - a[0], b[1] - a[1]);
}
