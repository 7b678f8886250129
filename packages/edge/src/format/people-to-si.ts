import { defaultEntry, type Group, type Sleeper } from "@nightspan/core";
import type { CampDocument, SleeperDocument } from "./camp-document.ts";
import type { DefaultsLedger } from "./defaults-ledger.ts";
import { present } from "./optional.ts";
import { findMassBand } from "./people-schema.ts";

export function sleeperToSi(sleeper: SleeperDocument, defaults: DefaultsLedger): Sleeper {
  const { id, name, stature_m: statureM } = sleeper;
  return present({
    id,
    name,
    massKg: massOf(sleeper) ?? defaults.take("sleepers[].mass_kg", id),
    statureM,
    ageYears: sleeper.age,
    sex: sleeper.sex,
    hand: sleeper.hand ?? defaults.take("sleepers[].hand", id),
    reachM: sleeper.reach_m ?? defaults.take("sleepers[].reach_m", id) * statureM,
    stepM: sleeper.step_m ?? defaults.take("sleepers[].step_m", id) * statureM,
    sleeps: sleeper.sleeps ?? defaults.take("sleepers[].sleeps", id),
    hat: sleeper.hat,
    group: sleeper.group,
    leads: sleeper.leads ?? defaults.take("sleepers[].leads", id),
    beginner: sleeper.beginner,
    near: sleeper.near ?? [],
    apart: sleeper.apart ?? [],
    kit: pinnedIds(sleeper.kit),
  });
}

export function groupToSi({ id, within_m, zone }: NonNullable<CampDocument["groups"]>[number]): Group {
  return present({ id, withinM: within_m, zone });
}

/** One step of a person [m]: their own where it was calibrated, else a share of their stature. */
export function stepOf({ step_m, stature_m }: SleeperDocument): number {
  return step_m ?? Number(defaultEntry("sleepers[].step_m").value) * stature_m;
}

/** A stated mass; of a band, the upper end, since it decides what must carry. */
function massOf({ mass_kg, mass_band }: SleeperDocument): number | undefined {
  return mass_kg ?? findMassBand(mass_band ?? "")?.[1];
}

function pinnedIds(pins: SleeperDocument["kit"]): readonly string[] {
  if (pins === undefined) return [];
  if (Array.isArray(pins)) return pins;
  return [pins.hammock, pins.suspension, pins.tarp, pins.under, pins.over].filter((id) => id !== undefined);
}
