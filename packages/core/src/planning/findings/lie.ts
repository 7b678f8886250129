import { kept, type Finding } from "../../outcome/finding.ts";
import { berthSubject, type BerthCase } from "./berth-case.ts";

/** Seat height, lowest cloth and raised foot end, against their ranges. */
export function lieFindings(berth: BerthCase): Finding[] {
  const { id, hang, limits } = berth;
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
    ...night(berth),
  ];
  if (limits.lowPointMaxM === undefined) return found;
  const cap = { ...low, rule: "low-point.cap", source: "house-rules", sense: "at-most" } as const;
  return [...found, kept({ ...cap, limit: limits.lowPointMaxM }, "do-not-hang")];
}

/** The lowest cloth in the morning, when straps have settled, and where they are nylon and wet besides. */
function night({ id, hang, limits }: BerthCase): Finding[] {
  if (hang.settling === undefined) return [];
  const { tenMinutesM, overnightM, wetNylonM } = hang.settling;
  const morningM = hang.lowPointM - tenMinutesM - overnightM;
  const of = {
    subject: berthSubject(id),
    source: "common-practice",
    unit: "m",
    sense: "at-least",
    limit: limits.lowPointMinM,
    depth: "why",
  } as const;
  const morning = kept({ ...of, rule: "low-point.morning", demand: morningM }, "look-again");
  if (wetNylonM === undefined) return [morning];
  const wet = { ...of, rule: "low-point.wet", source: "textile-tables", limit: 0 } as const;
  return [morning, kept({ ...wet, demand: morningM - wetNylonM }, "look-again")];
}
