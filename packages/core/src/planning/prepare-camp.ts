import type { Camp } from "../plan/camp.ts";
import { keptHalfWidthM } from "../plan/house-rules.ts";
import type { RefusedPin } from "../plan/plan.ts";
import { allowedPlaces } from "./allowed-places.ts";
import { campPlaces, mergedPairs } from "./camp-places.ts";
import type { CampPlaces } from "./camp-places-types.ts";
import { dealKit, type KitDeal } from "./deal-kit.ts";
import type { DealtKit } from "./dealt-kit.ts";
import { fitClasses, type FitClass } from "./fit-classes.ts";
import { HangDesk } from "./hang-desk.ts";
import { keptForTarps } from "./kept-for-tarps.ts";
import { NO_GROUND } from "./no-ground.ts";
import { judgePins, type KeptPin } from "./pins.ts";
import { pullConflicts } from "./pull-conflicts.ts";
import { pullLimits } from "./pull-limits.ts";
import type { KitGiven } from "./redeal/redeal-types.ts";
import { keptForSurvey } from "./survey-room.ts";
import { coldestAirOf } from "./warmth/coldest-air-of.ts";

/** A camp made ready for the search: kit dealt, places found, hangs that are refused left out, pins set. */
export interface PreparedCamp {
  readonly camp: Camp;
  readonly deal: KitDeal;
  readonly ground: CampPlaces;
  /** The same without the pairs that the kit as dealt pulls too hard together. */
  readonly unbalanced: CampPlaces;
  /** Of those who look for a place, and behind them of those who keep one. */
  readonly classes: readonly FitClass[];
  /** How many classes look for a place. */
  readonly seeking: number;
  readonly desk: HangDesk;
  /** classes × places: whether the class may hang there as far as is known; never where a pin is in the way. */
  readonly allowed: readonly Uint8Array[];
  /** Hammocks that each tree may carry besides those of pins. */
  readonly capacities: Int32Array;
  readonly pinned: readonly PinnedSeat[];
  readonly pinsRefused: readonly RefusedPin[];
  /** Places at which the hang of every class is refused. */
  readonly refusedEverywhere: number;
}

export interface PinnedSeat {
  readonly place: number;
  readonly classIndex: number;
  readonly kit: DealtKit;
}

export function prepareCamp(
  stated: Camp,
  onPlaces?: (places: CampPlaces) => void,
  given?: KitGiven,
): PreparedCamp {
  const asked = keptForSurvey(stated);
  const { sleepers, kit, rules, night } = asked;
  const free = campPlaces(asked.ground ?? NO_GROUND, rules);
  onPlaces?.(free);
  const deal = dealKit(sleepers, kit, rules.strapWidthMinM.value, night, coldestAirOf(asked), given);
  const camp = keptForTarps(asked, deal.dealt);
  const isWider = keptHalfWidthM(camp.rules) > keptHalfWidthM(rules);
  const found = isWider ? campPlaces(camp.ground ?? NO_GROUND, camp.rules) : free;
  const { kept, refused, ground } = judgePins(camp, deal, found);
  return preparedFor({ camp, deal, ground, pinsRefused: refused }, kept);
}

/** The same camp with others who keep their places besides those pinned. */
export function keepingAlso(prepared: PreparedCamp, kept: readonly KeptPin[]): PreparedCamp {
  return preparedFor(prepared, [...prepared.pinned, ...kept]);
}

/** The same camp with more to find places for. */
export function withMoreSleepers(prepared: PreparedCamp, more: readonly DealtKit[]): PreparedCamp {
  const { deal, pinned } = prepared;
  return preparedFor({ ...prepared, deal: { ...deal, dealt: [...deal.dealt, ...more] } }, pinned);
}

function preparedFor(
  given: Pick<PreparedCamp, "camp" | "deal" | "ground" | "pinsRefused">,
  kept: readonly KeptPin[],
): PreparedCamp {
  const { camp, deal, ground: unbalanced, pinsRefused } = given;
  const keeping = new Set(kept.map(({ kit }) => kit));
  const seekers = fitClasses(
    deal.dealt.filter((kit) => !keeping.has(kit)),
    camp,
  );
  const classes = [...seekers, ...fitClasses([...keeping], camp)];
  const limits = pullLimits(unbalanced, camp.rules);
  const desk = new HangDesk(unbalanced.places, classes, limits);
  const { allowed, refusedEverywhere } = allowedPlaces(unbalanced.places, classes, desk);
  const hammocks = camp.rules.hammocksPerTree.value;
  const tooMuch = pullConflicts({ ground: unbalanced, classes, allowed, desk, limits, hammocks });
  const ground = { ...unbalanced, conflicts: mergedPairs(unbalanced.conflicts, tooMuch) };
  withoutPinned(allowed, seekers.length, ground, kept);
  return {
    camp,
    deal,
    ground,
    unbalanced,
    classes,
    seeking: seekers.length,
    desk,
    allowed,
    capacities: capacitiesBeside(ground, kept, camp.rules.hammocksPerTree.value),
    pinned: kept.map(({ place, kit }) => {
      return { place, kit, classIndex: classes.findIndex(({ members }) => members.includes(kit)) };
    }),
    pinsRefused,
    refusedEverywhere,
  };
}

/** Nobody else may lie at a pinned place nor across one, and whoever is pinned lies nowhere else. */
function withoutPinned(
  allowed: readonly Uint8Array[],
  seeking: number,
  { conflicts }: CampPlaces,
  kept: readonly KeptPin[],
): void {
  const pinned = new Set(kept.map(({ place }) => place));
  const across = conflicts.flatMap(([a, b]) => [
    ...(pinned.has(a) ? [b] : []),
    ...(pinned.has(b) ? [a] : []),
  ]);
  for (const [classIndex, row] of allowed.entries()) {
    if (classIndex >= seeking) row.fill(0);
    for (const place of [...pinned, ...across]) row[place] = 0;
  }
}

function capacitiesBeside(
  { anchors, places }: CampPlaces,
  kept: readonly KeptPin[],
  most: number,
): Int32Array {
  const left = new Int32Array(anchors.length).fill(Math.max(0, Math.floor(most)));
  for (const { place } of kept) {
    const { first = -1, second = -1 } = places[place] ?? {};
    for (const anchor of [first, second]) left[anchor] = Math.max(0, (left[anchor] ?? 0) - 1);
  }
  return left;
}
