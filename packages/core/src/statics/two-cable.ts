import type { Basis } from "../outcome/basis.ts";
import { refuseAll, succeed, type Outcome, type Refusal } from "../outcome/outcome.ts";
import { degrees, inDegrees, type Radians } from "../quantity/angle.ts";

export interface TwoCableInput {
  readonly loadN: number;
  /** Of each cable above level. */
  readonly left: Radians;
  readonly right: Radians;
}

export interface TwoCable {
  readonly leftN: number;
  readonly rightN: number;
  readonly basis: Basis;
}

/**
 * Pull in two straight cables that carry one load between them.
 *
 *   left = W cos β / sin(α + β),  right = W cos α / sin(α + β);  equal angles: W / (2 sin α)
 *
 * Shapes   scalars in, scalars out
 * Units    loadN [N], left, right [rad above level] → leftN, rightN [N]
 * Holds    W > 0, 0 < α, β ≤ 90°; both upright: W/2 each. Anything else is refused by field name
 * Error    exact for weightless straight cables; relative rounding below 1e-12 from 0.1° upwards
 * Source   two-cable (handbook/statics.md)
 */
export function twoCable({ loadN, left, right }: TwoCableInput): Outcome<TwoCable> {
  const failure = refuseAll([
    ...(loadN > 0 && loadN < Infinity ? [] : [refusal("loadN", loadN, "a positive, finite load in newtons")]),
    ...angleRefusals("left", left),
    ...angleRefusals("right", right),
  ]);
  if (failure !== undefined) return failure;
  const { leftN, rightN } = shares(loadN, left, right);
  return succeed({ leftN, rightN, basis: BASIS });
}

const UPRIGHT = degrees(90);
/** Angles went through a conversion: 90° may come out this much over [rad]. */
const SLACK = 1e-12;

function shares(loadN: number, left: Radians, right: Radians) {
  const [leftCos, rightCos] = [cosine(left), cosine(right)];
  const sine = Math.sin(left) * rightCos + leftCos * Math.sin(right);
  // Two upright cables: any split balances; the even one is the limit of equal angles.
  if (sine === 0) return { leftN: loadN / 2, rightN: loadN / 2 };
  return { leftN: (loadN * rightCos) / sine, rightN: (loadN * leftCos) / sine };
}

/** Cosine that is exactly 0 for an upright cable. */
function cosine(angle: Radians): number {
  return angle >= UPRIGHT - SLACK ? 0 : Math.cos(angle);
}

function angleRefusals(field: string, angle: Radians): readonly Refusal[] {
  if (angle > 0 && angle <= UPRIGHT + SLACK) return [];
  return [refusal(field, inDegrees(angle), "an angle above level of more than 0 and at most 90 degrees")];
}

function refusal(field: string, got: unknown, need: string): Refusal {
  return { field, got, need };
}

const BASIS: Basis = {
  rule: "two-cable",
  source: "two-cable",
  assumes: ["cables are straight and weigh nothing", "the load hangs free at one point"],
};
