import { kept, type Finding } from "../outcome/finding.ts";
import type { RuleKey } from "../outcome/rule-key.ts";
import type { SourceKey } from "../outcome/source-key.ts";
import type { Distance, PeopleDistances } from "./wish-measures.ts";

/**
 * Findings about who lies near whom. A group whose people all lie within its radius is told once, by the farthest of
 * them; whoever lies beyond it is told by name. Wishes that are met are told to who asks why.
 */
export function peopleFindings({ groups, near, apart, zones, ages }: PeopleDistances): Finding[] {
  return [
    ...groups.flatMap(({ group, members }) => {
      const beyond = members.filter(({ met }) => !met);
      if (beyond.length > 0) return beyond.map((one) => finding("people.group-radius", one, "at-most"));
      const [farthest] = [...members].sort((a, b) => b.apartM - a.apartM);
      return farthest === undefined
        ? []
        : [{ ...finding("people.group-radius", farthest, "at-most"), subject: `group/${group}` }];
    }),
    ...near.map((one) => finding("people.near", one, "at-most")),
    ...apart.map((one) => finding("people.apart", one, "at-least")),
    ...zones.map((one) => finding("people.zone", one, "at-least")),
    ...ages.map((one) => finding("people.adult-youth", one, "at-least")),
  ];
}

type PeopleRule = Extract<RuleKey, `people.${string}`>;

const SOURCES: Readonly<Record<PeopleRule, SourceKey>> = {
  "people.group-radius": "camp-file",
  "people.near": "common-practice",
  "people.apart": "common-practice",
  "people.zone": "common-practice",
  "people.adult-youth": "house-rules",
};

function finding(
  rule: PeopleRule,
  { sleeper, other, apartM, limitM, met, zonesM }: Distance,
  sense: "at-most" | "at-least",
): Finding {
  const told = kept(
    {
      rule,
      source: SOURCES[rule],
      subject: `sleeper/${sleeper}`,
      sense,
      demand: apartM,
      limit: limitM,
      unit: "m",
      about: zonesM === undefined ? [other] : [other, "zones-apart", String(zonesM)],
    },
    "look-again",
  );
  return met ? { ...told, depth: "why" } : told;
}
