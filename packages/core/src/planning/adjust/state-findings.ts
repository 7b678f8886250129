import { kept, type Comparison, type Finding } from "../../outcome/finding.ts";
import type { HangLimits } from "../../statics/hang-types.ts";
import type { HangState } from "./adjust-types.ts";

/** The limits of the hang against how it hangs now. Subjects: "hung", "hung/head-strap", "hung/foot-strap". */
export function stateFindings(state: HangState, limits: HangLimits): Finding[] {
  return [...straps(state, limits), ...lie(state, limits)];
}

function straps(state: HangState, limits: HangLimits): Finding[] {
  return (["head", "foot"] as const).flatMap((end) => {
    const { angle, strapHeightM } = state[end];
    const of = { subject: `hung/${end}-strap`, source: "house-rules" } as const;
    const found = [
      atLeast({ ...of, rule: "strap.angle-flattest", demand: angle, limit: limits.angleMin, unit: "rad" }),
      atMost({ ...of, rule: "strap.angle-steepest", demand: angle, limit: limits.angleMax, unit: "rad" }),
    ];
    if (limits.strapHeightMaxM === undefined) return found;
    const limit = limits.strapHeightMaxM;
    return [...found, atMost({ ...of, rule: "strap.height-cap", demand: strapHeightM, limit, unit: "m" })];
  });
}

function lie({ seatHeightM, lowPointM, footRaiseM }: HangState, limits: HangLimits): Finding[] {
  const of = { subject: "hung", source: "common-practice", unit: "m" } as const;
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
