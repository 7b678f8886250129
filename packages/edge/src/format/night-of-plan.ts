import type { LoggedNightDocument, LoggedSleeperDocument } from "./log-file.ts";
import { present } from "./optional.ts";

/** What somebody tells the morning after. */
export type MorningAnswer = Omit<LoggedSleeperDocument, "under" | "over"> & {
  readonly under?: NonNullable<LoggedSleeperDocument["under"]>["felt"];
  readonly over?: NonNullable<LoggedSleeperDocument["over"]>["felt"];
};

/** What is told of the whole night. */
export type NightTold = Pick<LoggedNightDocument, "date"> &
  Partial<Pick<LoggedNightDocument, "measured_low_c" | "note">>;

/** What a log needs of a plan file. */
export interface PlanOfNight {
  readonly camp: string;
  readonly night_clock?: { readonly low_c: number } | undefined;
  readonly berths: readonly {
    readonly sleeper: string;
    readonly warmth?: { readonly under: PlannedHalf; readonly over: PlannedHalf } | undefined;
  }[];
}

interface PlannedHalf {
  readonly margin_k?: number | undefined;
  readonly item?: string | undefined;
}

/**
 * A night for the log: people's answers, beside what the plan had reckoned for their kit. Under 16 the plan has no
 * margin, so the log has none.
 */
export function nightOfPlan(
  plan: PlanOfNight,
  told: NightTold,
  answers: readonly MorningAnswer[],
): LoggedNightDocument {
  const warmthOf = new Map(plan.berths.map(({ sleeper, warmth }) => [sleeper, warmth]));
  return present({
    camp: plan.camp,
    date: told.date,
    planned_low_c: plan.night_clock?.low_c,
    measured_low_c: told.measured_low_c,
    sleepers: answers.map(({ under, over, ...answer }) => {
      const warmth = warmthOf.get(answer.sleeper);
      return present({ ...answer, under: halfOf(under, warmth?.under), over: halfOf(over, warmth?.over) });
    }),
    note: told.note,
  });
}

function halfOf(
  felt: MorningAnswer["under"],
  planned: PlannedHalf | undefined,
): LoggedSleeperDocument["under"] {
  if (felt === undefined) return undefined;
  return present({ felt, margin_k: planned?.margin_k, item: planned?.item });
}
