import { DEFAULTS, findHangKit, pocketTable, type Camp, type Plan } from "@nightspan/core";
import type { PocketTable } from "./pocket-table-scene.ts";

/** The pocket table of everybody who has a berth, in the kit they would hang in, between trunks of the usual size. */
export function pocketTables(plan: Plan, camp: Camp): readonly PocketTable[] {
  return plan.berths.flatMap(({ sleeper: id }): readonly PocketTable[] => {
    const sleeper = camp.sleepers.find((person) => person.id === id);
    const kit = findHangKit(camp, id);
    if (sleeper === undefined || kit === undefined) return [];
    const { name, stepM, statureM: setterStatureM } = sleeper;
    const found = pocketTable({ kit, trunkM: TRUNK_M, stepM, setterStatureM, rules: camp.rules });
    return found.ok && found.value.length > 0 ? [{ rows: found.value, name, stepM, setterStatureM }] : [];
  });
}

const TRUNK_M = DEFAULTS["ground.pairs[].dbh_cm"].value / 100;
