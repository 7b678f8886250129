import { kept, type Finding } from "../../outcome/finding.ts";
import { berthSubject, type BerthCase } from "./berth-case.ts";

/** Seat height, lowest cloth and raised foot end, against their ranges. */
export function lieFindings({ id, hang, limits }: BerthCase): Finding[] {
  const of = { subject: berthSubject(id), source: "common-practice", unit: "m" } as const;
  const seat = { ...of, rule: "seat.height", demand: hang.seatHeightM } as const;
  const raise = { ...of, rule: "foot.raise", demand: hang.footRaiseM } as const;
  const low = { ...of, demand: hang.lowPointM } as const;
  const found = [
    kept({ ...seat, sense: "at-least", limit: limits.seatHeightMinM }, "look-again"),
    kept({ ...seat, sense: "at-most", limit: limits.seatHeightMaxM }, "look-again"),
    kept({ ...raise, sense: "at-least", limit: limits.footRaiseMinM }, "look-again"),
    kept({ ...raise, sense: "at-most", limit: limits.footRaiseMaxM }, "look-again"),
    kept({ ...low, rule: "low-point.ground", sense: "at-least", limit: limits.lowPointMinM }, "do-not-hang"),
  ];
  if (limits.lowPointMaxM === undefined) return found;
  const cap = { ...low, rule: "low-point.cap", source: "house-rules", sense: "at-most" } as const;
  return [...found, kept({ ...cap, limit: limits.lowPointMaxM }, "do-not-hang")];
}
