import { kept, type Comparison, type Finding } from "../../outcome/finding.ts";
import { degrees } from "../../quantity/angle.ts";
import type { HangLimits } from "../../statics/hang-types.ts";
import type { HangState } from "./adjust-types.ts";

/** The limits of the hang against how it hangs now. Subjects: "berth/hung", "berth/hung/head-strap", "berth/hung/foot-strap". */
export function stateFindings(state: HangState, limits: HangLimits): Finding[] {
  return [
    ...ENDS.flatMap((end) => [...angles(end, state, limits), ...heights(end, state, limits)]),
    ...lie(state, limits),
  ];
}

const ENDS = ["head", "foot"] as const;
type End = (typeof ENDS)[number];

function angles(end: End, state: HangState, { angleMin, angleMax }: HangLimits): Finding[] {
  const of = { subject: `berth/hung/${end}-strap`, source: "house-rules", unit: "rad" } as const;
  const demand = state[end].angle;
  const broken = Math.max(angleMin - demand, demand - angleMax) > ANGLE_READ ? "do-not-hang" : "look-again";
  return [
    kept({ ...of, rule: "strap.angle-flattest", sense: "at-least", demand, limit: angleMin }, broken),
    kept({ ...of, rule: "strap.angle-steepest", sense: "at-most", demand, limit: angleMax }, broken),
  ];
}

/** Nobody reads an angle better than this on the spot; up to so much past a limit is looked at again. Source: common-practice. */
const ANGLE_READ = degrees(1);

function heights(end: End, state: HangState, { strapHeightMaxM }: HangLimits): Finding[] {
  if (strapHeightMaxM === undefined) return [];
  const of = { subject: `berth/hung/${end}-strap`, source: "house-rules", unit: "m" } as const;
  const demand = state[end].strapHeightM;
  return [atMost({ ...of, rule: "strap.height-cap", demand, limit: strapHeightMaxM })];
}

function lie({ seatHeightM, lowPointM, footRaiseM }: HangState, limits: HangLimits): Finding[] {
  const of = { subject: "berth/hung", source: "common-practice", unit: "m" } as const;
  const seat = { ...of, rule: "seat.height", demand: seatHeightM } as const;
  const raise = { ...of, rule: "foot.raise", demand: footRaiseM } as const;
  const found = [
    atLeast({ ...of, rule: "low-point.ground", demand: lowPointM, limit: limits.lowPointMinM }),
    kept({ ...seat, sense: "at-least", limit: limits.seatHeightMinM }, "look-again"),
    kept({ ...seat, sense: "at-most", limit: limits.seatHeightMaxM }, "look-again"),
    kept({ ...raise, sense: "at-least", limit: limits.footRaiseMinM }, "look-again"),
    kept({ ...raise, sense: "at-most", limit: limits.footRaiseMaxM }, "look-again"),
  ];
  if (limits.lowPointMaxM === undefined) return found;
  return [...found, atMost({ ...of, rule: "low-point.cap", demand: lowPointM, limit: limits.lowPointMaxM })];
}

function atLeast(of: Omit<Comparison, "sense">): Finding {
  return kept({ ...of, sense: "at-least" }, "do-not-hang");
}

function atMost(of: Omit<Comparison, "sense">): Finding {
  return kept({ ...of, sense: "at-most" }, "do-not-hang");
}
