import { compare, kept, type Finding } from "../../outcome/finding.ts";
import type { Suspension } from "../../plan/kit.ts";
import { dropLoad } from "../../statics/drop-load.ts";
import { hangRig } from "../../statics/hang-rig.ts";
import { berthSubject, ENDS, named, type BerthCase, type End } from "./berth-case.ts";
import { DROP_TOLD_M, KNOT_KEEPS, SITTING_DOWN_HARD } from "./strength-figures.ts";

/**
 * Sitting down hard and the knots, against breaking strength and without the design factor, which covers them too.
 *
 *   2.13 × still pull ≤ breaking strength × what its knots leave
 *
 * Where only a rated load is known the breaking strength is taken as rated × design factor; the source says which.
 * A sling is spliced and hangs in its connector, so it has no knot. Of a part whose strength nobody knows, nothing.
 */
export function flopFindings(berth: BerthCase): Finding[] {
  return ENDS.flatMap((end) => flop(berth, end));
}

function flop({ id, kit, hang, camp }: BerthCase, end: End): Finding[] {
  const strength = breakingOf(kit.suspension, camp.rules.designFactor.value);
  if (strength === undefined) return [];
  return [
    compare({
      rule: "part.flop-in",
      source: strength.fromRated ? "sling-practice" : "ergonomics-2016",
      subject: berthSubject(id, `${end}-strap`),
      sense: "at-most",
      demand: SITTING_DOWN_HARD * hang[end].pullN,
      limit: strength.breakingN * (kit.suspension.type === "tied-webbing" ? KNOT_KEEPS : 1),
      unit: "N",
      about: named(kit.suspension.id),
    }),
  ];
}

interface Breaking {
  readonly breakingN: number;
  readonly fromRated: boolean;
}

function breakingOf({ breakingN, ratedLoadN }: Suspension, designFactor: number): Breaking | undefined {
  if (breakingN !== undefined) return { breakingN, fromRated: false };
  if (ratedLoadN !== undefined) return { breakingN: ratedLoadN * designFactor, fromRated: true };
  return undefined;
}

/**
 * How many times as hard a fall of a hand's breadth pulls, all of its energy going into the straps' stretch: an upper
 * bound, told and not judged, as nobody knows the stretch well. So it is told as what it is, at least as hard as sitting
 * down hard; nothing where it is not.
 *
 *   k = Σ EA/L · sin² angle
 */
export function dropFindings({ id, request, hang }: BerthCase): Finding[] {
  const { strapStretchPerN, weightN } = hangRig(request);
  const stiffnessNPerM = ENDS.reduce((sum, end) => {
    const { strapLengthM, downN, pullN } = hang[end];
    return sum + (downN / pullN) ** 2 / (strapStretchPerN * strapLengthM);
  }, 0);
  const drop = dropLoad({ weightN, dropM: DROP_TOLD_M, stiffnessNPerM });
  if (!drop.ok || drop.value.factor < SITTING_DOWN_HARD) return [];
  return [
    kept(
      {
        rule: "part.drop-in",
        source: "drop-energy",
        subject: berthSubject(id),
        sense: "at-least",
        demand: drop.value.factor,
        limit: SITTING_DOWN_HARD,
        unit: "1",
        depth: "why",
      },
      "look-again",
    ),
  ];
}
