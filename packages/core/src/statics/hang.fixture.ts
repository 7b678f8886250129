import { degrees } from "../quantity/angle.ts";
import type { HangInput, HangLimits } from "./hang-types.ts";

export const WIDE_LIMITS: HangLimits = {
  angleMin: degrees(25),
  angleMax: degrees(35),
  lowPointMinM: 0.1,
  seatHeightMinM: 0.3,
  seatHeightMaxM: 0.6,
  footRaiseMinM: 0,
  footRaiseMaxM: 0.4,
};

export interface HangFixture {
  readonly spanM?: number;
  readonly headDbhM?: number;
  readonly footDbhM?: number;
  /** Ground at the foot tree above the ground at the head tree [m]. */
  readonly footGroundM?: number;
  readonly hammock?: Partial<HangInput["hammock"]>;
  readonly suspension?: Partial<HangInput["suspension"]>;
  readonly sleeper?: Partial<HangInput["sleeper"]>;
  readonly targets?: Partial<HangInput["targets"]>;
  readonly limits?: Partial<HangLimits>;
}

/** An ordinary hang on level ground; a test states what differs. */
export function hangInput(given: HangFixture = {}): HangInput {
  return {
    spanM: given.spanM ?? 4.2,
    head: { dbhM: given.headDbhM ?? 0.3, elevationM: 0 },
    foot: { dbhM: given.footDbhM ?? 0.3, elevationM: given.footGroundM ?? 0 },
    hammock: { lengthM: 3, massKg: 0.6, ...given.hammock },
    suspension: { type: "tied-webbing", minM: 0, ...given.suspension },
    sleeper: { massKg: 80, statureM: 1.75, ...given.sleeper },
    targets: { angle: degrees(30), footRaiseM: 0.2, ...given.targets },
    limits: { ...WIDE_LIMITS, ...given.limits },
  };
}
