import { degrees, type HangInput } from "@nightspan/core";
import { present } from "./optional.ts";

type Maybe<K extends string> = Readonly<Partial<Record<K, number | undefined>>>;

/** Parts of what a hang is asked for, from the file's names and units: the plan file and the model door write them alike. */

export function treeInSi(tree: Readonly<Record<"dbh_cm" | "elevation_m", number>>): HangInput["head"] {
  return { dbhM: tree.dbh_cm / 100, elevationM: tree.elevation_m };
}

export function hammockInSi(
  hammock: Readonly<Record<"length_m" | "mass_kg", number>> & Maybe<"ridgeline_m" | "ea_n">,
): HangInput["hammock"] {
  return present({
    lengthM: hammock.length_m,
    ridgelineM: hammock.ridgeline_m,
    massKg: hammock.mass_kg,
    eaN: hammock.ea_n,
  });
}

export function suspensionInSi(
  suspension: Pick<HangInput["suspension"], "type"> &
    Readonly<Record<"min_m", number>> &
    Maybe<"max_m" | "ea_n" | "wraps" | "connector_m" | "owned_m"> & {
      readonly through_own_eye?: boolean | undefined;
    },
): HangInput["suspension"] {
  return present({
    type: suspension.type,
    minM: suspension.min_m,
    maxM: suspension.max_m,
    eaN: suspension.ea_n,
    wraps: suspension.wraps,
    throughOwnEye: suspension.through_own_eye,
    connectorM: suspension.connector_m,
    ownedM: suspension.owned_m,
  });
}

export function sleeperInSi(
  sleeper: Readonly<Record<"mass_kg" | "stature_m", number>>,
): HangInput["sleeper"] {
  return { massKg: sleeper.mass_kg, statureM: sleeper.stature_m };
}

export function targetsInSi(
  targets: Readonly<Record<"angle_deg" | "foot_raise_m", number>> & Maybe<"seat_height_m">,
): HangInput["targets"] {
  return present({
    angle: degrees(targets.angle_deg),
    seatHeightM: targets.seat_height_m,
    footRaiseM: targets.foot_raise_m,
  });
}
