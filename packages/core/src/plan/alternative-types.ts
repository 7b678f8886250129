import type { Finding } from "../outcome/finding.ts";
import type { Limit } from "../outcome/outcome.ts";
import type { Radians } from "../quantity/angle.ts";

/** Two trees at which straps come out too long or too short for a sleeper, and what else could be done about it. */
export interface HangAlternatives {
  readonly sleeper: string;
  readonly trees: readonly [string, string];
  readonly spanM: number;
  /** What stands in the way, or what made the straps hang at another angle than aimed at. */
  readonly binds: Limit;
  /** Those that serve first, the nearest to the angle aimed at before the others; then those that fail too. */
  readonly tries: readonly HangAlternative[];
}

/** One thing to do instead, and how it would hang; or why that fails too. */
export interface HangAlternative {
  readonly kind: AlternativeKind;
  /** The other hammock or suspension of the store, by id. */
  readonly item?: string;
  /** The other pair of trees. */
  readonly trees?: readonly [string, string];
  readonly spanM?: number;
  /** Absent where it fails too. */
  readonly hung?: AlternativeHang;
  /** Why it fails too; empty where it serves. */
  readonly because: readonly Finding[];
}

export type AlternativeKind =
  /** The sling hitched straight onto the tree strap, without shackle or carabiner. */
  | "connector-left-out"
  /** The hammock hitched straight onto the tree strap, which goes through its own eye; no sling. */
  | "strap-alone"
  | "other-hammock"
  | "other-suspension"
  | "other-pair";

/** How it would hang; its strength is not compared. */
export interface AlternativeHang {
  /** Mean of both straps below level. */
  readonly angle: Radians;
  readonly headStrapLengthM: number;
  readonly footStrapLengthM: number;
  readonly seatHeightM: number;
  /** The longer of the two lengths of webbing or tree strap that it takes [m]. */
  readonly webbingM: number;
}
