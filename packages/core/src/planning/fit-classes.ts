import type { Camp } from "../plan/camp.ts";
import type { HangLimits } from "../statics/hang-types.ts";
import type { DealtKit } from "./dealt-kit.ts";
import { hangLimits, rigRequest } from "./hang-request.ts";
import { byCodeUnit } from "./order.ts";

/** Sleepers whose hang is the same at every place: same parts, same weight, same stature. */
export interface FitClass {
  /** Leaders first, then by id. */
  readonly members: readonly [DealtKit, ...DealtKit[]];
  readonly limits: HangLimits;
}

/** The classes of a deal, those with leaders first, then by the id of the first member. */
export function fitClasses(dealt: readonly DealtKit[], camp: Pick<Camp, "rules" | "sleepers">): FitClass[] {
  const byKey = new Map<string, [DealtKit, ...DealtKit[]]>();
  for (const kit of [...dealt].sort(leadersFirst)) {
    const key = JSON.stringify([rigRequest(kit), kit.suspension.strapLengthM]);
    const members = byKey.get(key);
    if (members === undefined) byKey.set(key, [kit]);
    else members.push(kit);
  }
  return [...byKey.values()].map((members) => ({
    members,
    limits: hangLimits(camp, members[0].sleeper.statureM),
  }));
}

function leadersFirst({ sleeper: a }: DealtKit, { sleeper: b }: DealtKit): number {
  return Number(b.leads) - Number(a.leads) || byCodeUnit(a.id, b.id);
}
