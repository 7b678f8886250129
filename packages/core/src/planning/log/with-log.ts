import { learntOffset, type LearntHalf, type NightFelt } from "../../heat/learnt-offset.ts";
import type { Camp, Sleeper } from "../../plan/camp.ts";
import type { LearntRule, LearntWarmth, LoggedNight, LoggedSleeper } from "../../plan/log-types.ts";
import type { WarmthHalf } from "../../plan/warmth-types.ts";
import { isYoung } from "../warmth/warmth-margin.ts";

/** The same camp, its sleepers with what the log has taught about them; nights of others are left aside. */
export function withLog(camp: Camp, nights: readonly LoggedNight[]): Camp {
  const sleepers = camp.sleepers.map((sleeper) => {
    const learnt = learntOf(sleeper, nights);
    return learnt === undefined ? sleeper : { ...sleeper, learnt };
  });
  return { ...camp, sleepers };
}

/** What the log has taught about one sleeper; nothing where no night of theirs tells anything. */
export function learntOf(sleeper: Sleeper, nights: readonly LoggedNight[]): LearntWarmth | undefined {
  const own = nights.flatMap((night) =>
    night.sleepers
      .filter((logged) => logged.sleeper === sleeper.id && logged.leaveOut !== true)
      .map((logged) => ({ night, logged })),
  );
  if (isYoung(sleeper)) {
    const rule = (half: WarmthHalf) => youthRule(own.map(({ logged }) => logged[half]?.felt));
    const learnt = { by: "youth-rule", under: rule("under"), over: rule("over") } as const;
    return own.some(({ logged }) => (logged.under ?? logged.over) !== undefined) ? learnt : undefined;
  }
  const half = (key: WarmthHalf): LearntHalf => learntOffset(own.flatMap((one) => nightFelt(one, key)));
  const learnt = { by: "nights", under: half("under"), over: half("over") } as const;
  return learnt.under.nights + learnt.over.nights > 0 ? learnt : undefined;
}

interface OwnNight {
  readonly night: LoggedNight;
  readonly logged: LoggedSleeper;
}

/** A night whose air was measured counts by that air. One without a margin teaches nothing. */
function nightFelt({ night, logged }: OwnNight, half: WarmthHalf): readonly NightFelt[] {
  const { felt, marginK } = logged[half] ?? {};
  if (felt === undefined || marginK === undefined) return [];
  const { plannedLowK, measuredLowK } = night;
  const warmerK = plannedLowK === undefined || measuredLowK === undefined ? 0 : measuredLowK - plannedLowK;
  return [{ felt, marginK: marginK + warmerK }];
}

/** One cold or cool night is enough: nobody knows whether those that were right were mild. */
function youthRule(felt: readonly (string | undefined)[]): LearntRule {
  return felt.some((word) => word === "cold" || word === "cool") ? "warmer-than-the-rule" : "as-the-rule";
}
