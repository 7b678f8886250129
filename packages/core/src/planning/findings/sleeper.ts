import { byRule, kept, type Finding } from "../../outcome/finding.ts";
import { DEFAULTS } from "../../plan/defaults.ts";
import { CLOTH_OVER_STATURE_M } from "../assumed-kit.ts";
import { berthSubject, named, type BerthCase } from "./berth-case.ts";

/** Whether a hammock is for this sleeper at all, and this one long enough. */
export function sleeperFindings(berth: BerthCase): Finding[] {
  return [...smallChild(berth), clothLength(berth)];
}

/** Somebody younger than hammocks are for. An age is nobody's business on paper, so the finding carries none. */
function smallChild({ id, kit: { sleeper } }: BerthCase): Finding[] {
  if (sleeper.ageYears === undefined || sleeper.ageYears >= DEFAULTS["hang.age_least_years"].value) return [];
  return [
    byRule(
      {
        rule: "sleeper.small-child",
        source: "health-canada-2010",
        subject: berthSubject(id),
        sense: "at-most",
        demand: 1,
        limit: 0,
        unit: "1",
        about: [sleeper.id],
      },
      "look-again",
    ),
  ];
}

/** Cloth too short for the stature folds the knees and squeezes the shoulders. */
function clothLength({ id, kit: { hammock, sleeper } }: BerthCase): Finding {
  return kept(
    {
      rule: "hammock.length",
      source: "common-practice",
      subject: berthSubject(id, "hammock"),
      sense: "at-least",
      demand: hammock.lengthM,
      limit: sleeper.statureM + CLOTH_OVER_STATURE_M,
      unit: "m",
      about: named(hammock.id),
    },
    "look-again",
  );
}
