import type { Sleeper } from "../plan/camp.ts";
import type { Hammock, OverInsulation, Suspension, Tarp, UnderInsulation } from "../plan/kit.ts";

/** What one sleeper hangs in; the hammock or suspension may be the assumed one. */
export interface DealtKit {
  readonly sleeper: Sleeper;
  readonly hammock: Hammock;
  readonly suspension: Suspension;
  readonly tarp?: Tarp;
  readonly under?: UnderInsulation;
  readonly over?: OverInsulation;
  /** Parts that stand for a store that lists none of their kind. */
  readonly assumed: readonly AssumedPart[];
}

export type AssumedPart = "hammock" | "suspension";
