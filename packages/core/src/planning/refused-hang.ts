import { byRule, type Finding, type FindingUnit, type Sense } from "../outcome/finding.ts";
import type { Limit, Refusal } from "../outcome/outcome.ts";
import type { RuleKey } from "../outcome/rule-key.ts";
import { degrees } from "../quantity/angle.ts";
import type { HangLimits } from "../statics/hang-types.ts";
import type { DealtKit } from "./dealt-kit.ts";

/** A pair of trees at which a sleeper's hang was refused. */
export interface RefusedHang {
  readonly trees: readonly [string, string];
  readonly kit: DealtKit;
  readonly limits: HangLimits;
  readonly refusals: readonly Refusal[];
}

/** Why one sleeper cannot hang at one pair: a finding for each limit in the way, with the figures met there. */
export function refusedFindings(refused: RefusedHang): Finding[] {
  return refused.refusals.map((refusal) => findingOf(refused, refusal));
}

function findingOf(refused: RefusedHang, { binds, got, field }: Refusal): Finding {
  const { trees, kit, limits } = refused;
  const bound = binds === undefined ? undefined : BOUNDS[binds];
  const about = [...trees, binds ?? field];
  const subject = `sleeper/${kit.sleeper.id}`;
  if (bound === undefined || typeof got !== "number") return unusable(subject, about);
  const { rule, sense, unit } = bound;
  const demand = unit === "rad" ? degrees(got) : got;
  const limit = bound.limit(limits, kit);
  return byRule({ rule, source: "hang-chain", subject, sense, demand, limit, unit, about }, "do-not-hang");
}

/** An input that the hang cannot use at all: one fault where none is allowed. */
function unusable(subject: string, about: readonly string[]): Finding {
  return byRule(
    {
      rule: "hang.refused",
      source: "hang-chain",
      subject,
      sense: "at-most",
      demand: 1,
      limit: 0,
      unit: "1",
      about,
    },
    "do-not-hang",
  );
}

interface Bound {
  readonly rule: RuleKey;
  readonly sense: Sense;
  readonly unit: FindingUnit;
  readonly limit: (limits: HangLimits, kit: DealtKit) => number;
}

const AT_LEAST_M = { sense: "at-least", unit: "m" } as const;
const AT_MOST_M = { sense: "at-most", unit: "m" } as const;

/** How each limit of a hang reads as a finding. */
const BOUNDS: Readonly<Partial<Record<Limit, Bound>>> = {
  "trees-too-close": { rule: "hang.refused", ...AT_LEAST_M, limit: () => 0 },
  "sling-shortest": { rule: "sling.shortest", ...AT_LEAST_M, limit: (_, { suspension }) => suspension.minM },
  "sling-longest": {
    rule: "sling.longest",
    ...AT_MOST_M,
    limit: (_, { suspension }) => suspension.maxM ?? suspension.strapLengthM ?? Infinity,
  },
  "strap-reach": { rule: "strap.reach", ...AT_MOST_M, limit: ({ reachM }) => reachM ?? Infinity },
  "strap-height-cap": {
    rule: "strap.height-cap",
    ...AT_MOST_M,
    limit: ({ strapHeightMaxM }) => strapHeightMaxM ?? Infinity,
  },
  "low-point-cap": {
    rule: "low-point.cap",
    ...AT_MOST_M,
    limit: ({ lowPointMaxM }) => lowPointMaxM ?? Infinity,
  },
  "low-point-ground": { rule: "low-point.ground", ...AT_LEAST_M, limit: ({ lowPointMinM }) => lowPointMinM },
  "angle-flattest": {
    rule: "strap.angle-flattest",
    sense: "at-least",
    unit: "rad",
    limit: ({ angleMin }) => angleMin,
  },
  "angle-steepest": {
    rule: "strap.angle-steepest",
    sense: "at-most",
    unit: "rad",
    limit: ({ angleMax }) => angleMax,
  },
  "seat-lowest": { rule: "seat.height", ...AT_LEAST_M, limit: ({ seatHeightMinM }) => seatHeightMinM },
  "seat-highest": { rule: "seat.height", ...AT_MOST_M, limit: ({ seatHeightMaxM }) => seatHeightMaxM },
  "foot-raise-least": { rule: "foot.raise", ...AT_LEAST_M, limit: ({ footRaiseMinM }) => footRaiseMinM },
  "foot-raise-most": { rule: "foot.raise", ...AT_MOST_M, limit: ({ footRaiseMaxM }) => footRaiseMaxM },
};
