import type { Refusal } from "../outcome/outcome.ts";
import { under } from "../outcome/outcome.ts";
import { ICE_K } from "./heat-units.ts";
import type { HalvesInput, InsulatedHalf } from "./halves.ts";
import { personRefusals } from "./resting-heat.ts";
import type { SleepingPerson } from "./sleep-heat.ts";
import { within } from "./within.ts";

export interface SleeperBalanceInput extends HalvesInput {
  /** Absent: the standard woman for comfort, the standard man for the limit. */
  readonly person?: SleepingPerson;
}

/** Everything that keeps a balance from being struck, by field name. */
export function balanceRefusals(input: SleeperBalanceInput): readonly Refusal[] {
  const { night, top, bottom, topShareRatio, person } = input;
  return [
    ...named("night", [
      ...within("airK", night.airK, ICE_K - 60, ICE_K + 30),
      ...within("windMS", night.windMS, 0, 30),
      ...within("humidityRatio", night.humidityRatio, 0, 1),
      ...within("radiantK", night.radiantK, ICE_K - 80, ICE_K + 30),
    ]),
    ...named("top", halfRefusals(top)),
    ...named("bottom", [...halfRefusals(bottom), ...within("coveredRatio", bottom.coveredRatio, 0, 1)]),
    ...within("topShareRatio", topShareRatio, 0, 1),
    ...(person === undefined ? [] : named("person", personRefusals(person))),
  ];
}

function halfRefusals({ insulationM2KPerW, permeabilityMS, windMS = 0 }: InsulatedHalf): readonly Refusal[] {
  return [
    ...within("insulationM2KPerW", insulationM2KPerW, 0, 5),
    ...within("permeabilityMS", permeabilityMS, 0, 10),
    ...within("windMS", windMS, 0, 30),
  ];
}

function named(parent: string, refusals: readonly Refusal[]): readonly Refusal[] {
  return under(parent, { ok: false, refusals }).refusals;
}
