import { byRule, compare, kept, type Finding } from "../../outcome/finding.ts";
import { berthSubject, ENDS, type BerthCase, type End } from "./berth-case.ts";

/**
 * Each strength against what it is a strength against, never mixed: the maker's greatest user weight against the
 * body, a rated load against the pull, a breaking strength against the pull times the design factor. The factor
 * covers sitting down and knots; nothing multiplies it further. A part of which nobody knows any strength says so.
 */
export function strengthFindings(berth: BerthCase): Finding[] {
  return [...userWeight(berth), ...ENDS.flatMap((end) => strap(berth, end)), width(berth)];
}

function userWeight({ id, kit }: BerthCase): Finding[] {
  const { hammock, sleeper } = kit;
  if (hammock.maxUserKg === undefined) return [unknown(id, "hammock", hammock.id)];
  return [
    compare({
      rule: "part.user-weight",
      source: "maker-plate",
      subject: berthSubject(id, "hammock"),
      sense: "at-most",
      demand: sleeper.massKg,
      limit: hammock.maxUserKg,
      unit: "kg",
      about: named(hammock.id),
    }),
  ];
}

function strap({ id, kit, hang, camp }: BerthCase, end: End): Finding[] {
  const { ratedLoadN, breakingN, id: item } = kit.suspension;
  const part = `${end}-strap`;
  const common = {
    source: "maker-plate",
    subject: berthSubject(id, part),
    sense: "at-most",
    unit: "N",
    about: named(item),
  } as const;
  const { pullN } = hang[end];
  const found: Finding[] = [];
  if (ratedLoadN !== undefined) {
    found.push(compare({ rule: "part.working-load", ...common, demand: pullN, limit: ratedLoadN }));
  }
  if (breakingN !== undefined) {
    const demand = pullN * camp.rules.designFactor.value;
    found.push(compare({ rule: "part.breaking-load", ...common, demand, limit: breakingN }));
  }
  return found.length > 0 ? found : [unknown(id, part, item)];
}

/** How many of the part's strengths are known: none. */
function unknown(id: string, part: string, item: string): Finding {
  return byRule(
    {
      rule: "part.strength-unknown",
      source: "maker-plate",
      subject: berthSubject(id, part),
      sense: "at-least",
      demand: 0,
      limit: 1,
      unit: "1",
      about: named(item),
    },
    "look-again",
  );
}

function width({ id, kit, camp }: BerthCase): Finding {
  return kept(
    {
      rule: "strap.width",
      source: "house-rules",
      subject: berthSubject(id, "straps"),
      sense: "at-least",
      demand: kit.suspension.strapWidthM,
      limit: camp.rules.strapWidthMinM.value,
      unit: "m",
      about: named(kit.suspension.id),
    },
    "do-not-hang",
  );
}

/** The item's id; an assumed item has none. */
function named(item: string): string[] {
  return item === "" ? [] : [item];
}
