import { byRule, compare, type Comparison, type Finding, type Verdict } from "../../outcome/finding.ts";
import type { Enough, HalfWarmth, WarmthHalf } from "../../plan/warmth-types.ts";
import { DEFAULTS } from "../../plan/defaults.ts";
import type { JudgedWarmth } from "./berth-warmth.ts";

/**
 * What is said of one berth's warmth. No degree and no age is in any of it: halves are told as ratios of what they are
 * to what they should be, and that only for the order of the list.
 */
export function warmthFindings(berthId: string, judged: JudgedWarmth): readonly Finding[] {
  const { warmth, farShort } = judged;
  const of = {
    source: "sleeper-balance",
    subject: `berth/${berthId}`,
    unit: "1",
    demand: 1,
    limit: 1,
  } as const;
  const at = { ...of, sense: "at-least" } as const;
  const { helps } = warmth;
  return [
    ...(["under", "over"] as const).map((half) => halfFinding(berthId, half, warmth[half])),
    byRule({ ...at, rule: "warmth.weaker-half", about: [warmth.weaker], depth: "why" }, "clear"),
    ...(helps === undefined
      ? []
      : [byRule({ ...at, rule: "warmth.helps", about: [helps.change, helps.half] }, "clear")]),
    ...(farShort
      ? [byRule({ ...at, rule: "warmth.far-short", demand: 0, about: [warmth.weaker] }, "do-not-hang")]
      : []),
    ...youthFindings(at, judged),
  ];
}

function halfFinding(berthId: string, half: WarmthHalf, { enough, item }: HalfWarmth): Finding {
  return enoughFinding(`berth/${berthId}`, half, enough, item);
}

/** Whether one half is enough, and what it is of. */
export function enoughFinding(
  subject: string,
  half: WarmthHalf,
  enough: Enough,
  item: string | undefined,
): Finding {
  const rule =
    item === undefined
      ? half === "under"
        ? "warmth.no-under"
        : "warmth.no-over"
      : (`${half}.enough` as const);
  return byRule(
    {
      rule,
      source: "sleeper-balance",
      subject: `${subject}/${half}`,
      sense: "at-least",
      demand: RANK[enough],
      limit: RANK.enough,
      unit: "1",
      about: item === undefined ? [enough] : [enough, item],
    },
    VERDICTS[enough],
  );
}

const RANK: Readonly<Record<Enough, number>> = { "not-enough": 0, borderline: 1, enough: 2 };
const VERDICTS: Readonly<Record<Enough, Verdict>> = {
  enough: "clear",
  borderline: "look-again",
  "not-enough": "look-again",
};

/** Both halves rated well below the low, a spare, somebody to look in: how many of the three there are. */
function youthFindings(at: Omit<Comparison, "rule">, { warmth }: JudgedWarmth): readonly Finding[] {
  if (warmth.by !== "youth-rule") return [];
  const isRated = warmth.under.enough === "enough" && warmth.over.enough === "enough";
  const met = [isRated, warmth.spare !== undefined, warmth.checkedBy !== undefined];
  const done = met.filter(Boolean).length;
  return [
    byRule(
      {
        ...at,
        rule: "warmth.youth-rule",
        demand: done,
        limit: met.length,
        about: [isRated ? "rated" : "not-rated", warmth.spare ?? "", warmth.checkedBy ?? ""],
      },
      done === met.length ? "clear" : "look-again",
    ),
  ];
}

/** Spare under layers of the store against one for every six sleepers. */
export function spareUnderFinding(spares: number, sleepers: number): Finding {
  const limit = Math.ceil(sleepers / DEFAULTS["warmth.sleepers_per_spare"].value);
  const spare: Comparison = {
    rule: "warmth.spare-per-six",
    source: "common-practice",
    subject: "camp",
    sense: "at-least",
    demand: spares,
    limit,
    unit: "1",
  };
  return spares >= limit ? byRule(spare, "clear") : { ...compare(spare), verdict: "look-again" };
}
