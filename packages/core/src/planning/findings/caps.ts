import { kept, type Comparison, type Finding } from "../../outcome/finding.ts";
import type { Limit } from "../../outcome/outcome.ts";
import { degrees } from "../../quantity/angle.ts";
import { hangCore } from "../../statics/hang-core.ts";
import { hangRig } from "../../statics/hang-rig.ts";
import type { HangLimits } from "../../statics/hang-types.ts";
import { berthSubject, type BerthCase } from "./berth-case.ts";

/**
 * What a house cap on the height of straps or of the low point costs here: the same hang without that cap beside the
 * one planned. A cap makes straps hang flatter and so pull harder, or brings the seat down. Told and not judged, the
 * angle and the pull have limits of their own: so each is told as it must be, no steeper, no weaker and no higher than
 * without the cap.
 */
export function capFindings(berth: BerthCase): Finding[] {
  const { strapHeightMaxM, lowPointMaxM } = berth.limits;
  return [
    ...(strapHeightMaxM === undefined ? [] : costs(berth, "strap-height-cap", { strapHeightMaxM: Infinity })),
    ...(lowPointMaxM === undefined ? [] : costs(berth, "low-point-cap", { lowPointMaxM: Infinity })),
  ];
}

/** Differences up to these are not told. Source: house-convention, what a hand can set. */
const LEAST_ANGLE = degrees(0.5);
const LEAST_SEAT_M = 0.01;

function costs(berth: BerthCase, cap: Limit, without: Partial<HangLimits>): Finding[] {
  const free = freed(berth, without);
  if (free === undefined) return [];
  const { head, foot, seatHeightM } = berth.hang;
  const of = { source: "hang-chain", subject: berthSubject(berth.id), about: [cap] } as const;
  const found: Finding[] = [];
  const angle = (head.angle + foot.angle) / 2;
  if (free.angle - angle > LEAST_ANGLE) {
    const demand = Math.max(head.pullN, foot.pullN);
    found.push(
      told({ ...of, rule: "cap.angle", sense: "at-most", demand: angle, limit: free.angle, unit: "rad" }),
    );
    found.push(told({ ...of, rule: "cap.pull", sense: "at-least", demand, limit: free.pullN, unit: "N" }));
  }
  if (free.seatHeightM - seatHeightM > LEAST_SEAT_M) {
    const limit = free.seatHeightM;
    found.push(told({ ...of, rule: "cap.seat", sense: "at-most", demand: seatHeightM, limit, unit: "m" }));
  }
  return found;
}

function told(comparison: Comparison): Finding {
  return kept(comparison, "look-again");
}

interface FreeHang {
  readonly angle: number;
  /** Of the strap that pulls harder. */
  readonly pullN: number;
  readonly seatHeightM: number;
}

function freed({ request }: BerthCase, without: Partial<HangLimits>): FreeHang | undefined {
  const core = hangCore(hangRig(request), { ...request, limits: { ...request.limits, ...without } });
  if (!core.ok) return undefined;
  const { straps, figures } = core.value.trial;
  const { alongN, headDownN, footDownN } = straps.lying;
  return {
    angle: straps.meanAngle,
    pullN: Math.hypot(alongN, Math.max(headDownN, footDownN)),
    seatHeightM: figures.seatHeightM,
  };
}
