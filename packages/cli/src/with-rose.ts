import { tarpInFull, type Camp, type Plan, type PlannedBerth } from "@nightspan/core";

/** The plan with the rose of its wettest berth, which takes a longer search: told only to who asks why. */
export function withRose(plan: Plan, camp: Camp): Plan {
  const wettest = plan.berths.reduce<PlannedBerth | undefined>(
    (most, berth) => (wetOf(berth) > (most === undefined ? 0 : wetOf(most)) ? berth : most),
    undefined,
  );
  if (wettest?.tarp === undefined) return plan;
  const full = tarpInFull(camp, wettest);
  if (!full.ok || full.value.rose === undefined) return plan;
  const tarp = { ...wettest.tarp, rose: full.value.rose };
  return { ...plan, berths: plan.berths.map((berth) => (berth === wettest ? { ...berth, tarp } : berth)) };
}

function wetOf({ tarp }: PlannedBerth): number {
  return tarp === undefined ? 0 : tarp.wet.hammockM3S + tarp.wet.sleeperM3S + tarp.wet.underM3S;
}
