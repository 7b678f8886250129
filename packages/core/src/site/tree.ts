/** What is known of a tree's health. Only "healthy" and "not-looked-at" may become anchors. */
export type TreeCondition = "not-looked-at" | "healthy" | "doubtful" | "dead";

/** Who looked, and on which civil day ("2027-05-14"). */
export interface Looked {
  readonly by: string;
  readonly on: string;
}

/** One stem of the survey. x east, y north [m]; `dbhM` is the diameter at breast height [m]. */
export interface Tree {
  readonly id: string;
  readonly xM: number;
  readonly yM: number;
  readonly dbhM: number;
  readonly condition: TreeCondition;
  readonly species?: string;
  readonly lookedAt?: Looked;
  readonly heightM?: number;
  readonly elevationM?: number;
  readonly leanRad?: number;
  /** What is written on the tape; the id where nothing else is given. */
  readonly tag: string;
  /** False where a rule or the leader keeps this tree out. */
  readonly use: boolean;
}
