import type { Finding, Verdict } from "../outcome/finding.ts";

/** A berth kept free for whoever must leave their own. */
export interface SpareBerth {
  /** "S1", "S2", … in the order of the map. */
  readonly id: string;
  readonly headTree: string;
  readonly footTree: string;
  readonly spanM: number;
  /** Head to foot, clockwise from north [rad]; absent where nobody knows. */
  readonly bearingRad?: number;
  /** Id of the stated pair this berth uses, where there is no map. */
  readonly pair?: string;
  readonly stepItOut: boolean;
  /** Who could hang there in their own kit, by id, sorted; the heaviest is always among them. */
  readonly serves: readonly string[];
  /** For the heaviest of the camp; not part of the plan's own verdict, for nobody lies there. */
  readonly verdict: Verdict;
  readonly findings: readonly Finding[];
}

/** Who looks after whom at night. */
export interface Buddy {
  readonly sleeper: string;
  /** Berth middle to berth middle [m]. */
  readonly apartM: number;
  /** Whether that is within calling distance. */
  readonly withinCall: boolean;
}
