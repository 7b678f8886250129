import type { Camp } from "../plan/camp.ts";
import { DEFAULTS } from "../plan/defaults.ts";
import type { HouseRules } from "../plan/house-rules.ts";
import type { Suspension } from "../plan/kit.ts";
import { degrees, radians } from "../quantity/angle.ts";
import type { HangKit, HangPair } from "../statics/hang-screen.ts";
import type { HangEnd, HangInput, HangLimits } from "../statics/hang-types.ts";
import type { CampPlace } from "./camp-places-types.ts";
import type { DealtKit } from "./dealt-kit.ts";

/** Which end of a place is the head: as somebody chose, else the lower ground, the first by id where equal or unknown. */
export function headIsSecond({ fallM, headSecond }: CampPlace): boolean {
  return headSecond ?? (fallM !== undefined && fallM > 0);
}

/** The two trees of a place as the hang sees them; unknown ground is level. */
export function hangPair(place: CampPlace): HangPair {
  const [first, second] = place.dbhM;
  const fallM = place.fallM ?? 0;
  const ends: readonly [HangEnd, HangEnd] = [
    { dbhM: first, elevationM: Math.max(0, fallM) },
    { dbhM: second, elevationM: Math.max(0, -fallM) },
  ];
  const [head, foot] = headIsSecond(place) ? [ends[1], ends[0]] : ends;
  return { spanM: place.spanM, head, foot };
}

/** The kit, the sleeper, what is aimed at and what bounds it: all of a hang but the trees. */
export function hangKit(kit: DealtKit, limits: HangLimits): HangKit {
  return { ...rigRequest(kit), targets: targetsOf(limits), limits };
}

/** The part of a request that does not depend on the place. */
export function rigRequest({
  hammock,
  suspension,
  sleeper,
}: DealtKit): Pick<HangInput, "hammock" | "suspension" | "sleeper"> {
  const { lengthM, ridgelineM, massKg, eaN } = hammock;
  return {
    hammock: {
      lengthM,
      massKg: massKg ?? DEFAULTS["kit.hammock.mass_kg"].value,
      ...(ridgelineM === undefined ? {} : { ridgelineM }),
      ...(eaN === undefined ? {} : { eaN }),
    },
    suspension: {
      type: suspension.type,
      minM: suspension.minM,
      ...(suspension.maxM === undefined ? {} : { maxM: suspension.maxM }),
      ...(suspension.eaN === undefined ? {} : { eaN: suspension.eaN }),
      ...roundTheTree(suspension),
    },
    sleeper: { massKg: sleeper.massKg, statureM: sleeper.statureM },
  };
}

/** How the strap goes round the trunk, what joins it to the sling, and how much of it there is. */
function roundTheTree(suspension: Suspension): Partial<HangInput["suspension"]> {
  const { wraps, throughOwnEye, connectorM, strapLengthM } = suspension;
  return {
    ...(wraps === undefined ? {} : { wraps }),
    ...(throughOwnEye === undefined ? {} : { throughOwnEye }),
    ...(connectorM === undefined ? {} : { connectorM }),
    ...(strapLengthM === undefined ? {} : { ownedM: strapLengthM }),
  };
}

/**
 * What bounds the hang of a sleeper: the house rules, the sleeper's own stature for the seat, and the reach of the
 * tallest in the camp, who helps where the sleeper's own does not do.
 */
export function hangLimits(
  { rules, sleepers }: Pick<Camp, "rules" | "sleepers">,
  statureM: number,
): HangLimits {
  const { strapHeightMaxM, lowPointMaxM } = rules;
  return {
    angleMin: radians(rules.angleMinRad.value),
    angleMax: radians(rules.angleMaxRad.value),
    reachM: sleepers.reduce((most, { reachM }) => Math.max(most, reachM), 0),
    ...(strapHeightMaxM === undefined ? {} : { strapHeightMaxM: strapHeightMaxM.value }),
    ...(lowPointMaxM === undefined ? {} : { lowPointMaxM: lowPointMaxM.value }),
    lowPointMinM: lowPointLeast(rules),
    seatHeightMinM: DEFAULTS["hang.seat_least"].value * statureM,
    seatHeightMaxM: DEFAULTS["hang.seat_most"].value * statureM,
    footRaiseMinM: DEFAULTS["hang.foot_raise_least_m"].value,
    footRaiseMaxM: DEFAULTS["hang.foot_raise_most_m"].value,
  };
}

function lowPointLeast({ lowPointMaxM }: HouseRules): number {
  return Math.min(DEFAULTS["hang.low_point_least_m"].value, lowPointMaxM?.value ?? Infinity);
}

/** The angle of the table, moved inside the house's own range where that lies elsewhere. */
function targetsOf({ angleMin, angleMax }: HangLimits): HangInput["targets"] {
  const wanted = degrees(DEFAULTS["hang.angle_deg"].value);
  return {
    angle: radians(Math.min(Math.max(wanted, angleMin), angleMax)),
    footRaiseM: DEFAULTS["hang.foot_raise_m"].value,
  };
}
