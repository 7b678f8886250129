import { byRule, compare, kept, type Comparison, type Finding } from "../../outcome/finding.ts";
import { berthSubject, ENDS, named, type BerthCase, type End } from "./berth-case.ts";
import { OWN_EYE_KEEPS } from "./strength-figures.ts";

/**
 * Each strength against what it is a strength against, never mixed: the maker's greatest user weight against the
 * body, a rated load against the pull, a breaking strength against the pull times the design factor. The factor
 * covers sitting down and knots; nothing multiplies it further. A part of which nobody knows any strength says so.
 */
export function strengthFindings(berth: BerthCase): Finding[] {
  return [
    ...weightAssumed(berth),
    ...userWeight(berth),
    onePerson(berth),
    ...ENDS.flatMap((end) => strap(berth, end)),
    width(berth),
  ];
}

/** Every strength was compared with a weight that nobody stated. */
function weightAssumed({ id, kit: { sleeper }, camp }: BerthCase): Finding[] {
  const assumed = camp.defaultsUsed.find(({ field }) => field === "sleepers[].mass_kg");
  if (assumed?.for.includes(sleeper.id) !== true) return [];
  return [
    byRule(
      {
        rule: "sleeper.weight-assumed",
        source: "camp-file",
        subject: berthSubject(id),
        sense: "at-least",
        demand: 0,
        limit: 1,
        unit: "1",
        about: [sleeper.id],
      },
      "look-again",
    ),
  ];
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

/**
 * One person only, as every figure is for one. A second, even for a moment, is refused: the maker allows but one, or
 * nobody reckoned with two.
 */
function onePerson({ id, kit }: BerthCase): Finding {
  const { hammock, sleeper } = kit;
  const isPlate = hammock.maxUserKg !== undefined && 2 * sleeper.massKg > hammock.maxUserKg;
  return kept(
    {
      rule: "part.one-person",
      source: isPlate ? "maker-plate" : "house-convention",
      subject: berthSubject(id, "hammock"),
      sense: "at-most",
      demand: 1,
      limit: 1,
      unit: "1",
      about: named(hammock.id),
      depth: "why",
    },
    "do-not-hang",
  );
}

function strap({ id, kit, hang, camp }: BerthCase, end: End): Finding[] {
  const { ratedLoadN, breakingN, throughOwnEye, id: item } = kit.suspension;
  const part = `${end}-strap`;
  const common = {
    subject: berthSubject(id, part),
    sense: "at-most",
    unit: "N",
    about: named(item),
  } as const;
  const { pullN } = hang[end];
  const found: Finding[] = [];
  if (ratedLoadN !== undefined) {
    const rated = throughOwnEye === true ? ownEye(ratedLoadN) : plate(ratedLoadN);
    found.push(compare({ rule: "part.working-load", ...common, demand: pullN, ...rated }));
  }
  if (breakingN !== undefined) {
    const demand = pullN * camp.rules.designFactor.value;
    found.push(compare({ rule: "part.breaking-load", ...common, demand, ...plate(breakingN) }));
  }
  return found.length > 0 ? found : [unknown(id, part, item)];
}

type Strength = Pick<Comparison, "source" | "limit">;

function plate(limit: number): Strength {
  return { source: "maker-plate", limit };
}

/** A strap through its own eye keeps a share of its rated load; its breaking strength is compared as it stands. */
function ownEye(ratedLoadN: number): Strength {
  return { source: "sling-practice", limit: OWN_EYE_KEEPS * ratedLoadN };
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
