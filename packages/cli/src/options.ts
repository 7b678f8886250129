/** The options of each command as the command line gives them. */

export interface PlanOptions {
  readonly json?: boolean;
  readonly out?: string;
  readonly force?: boolean;
  readonly why?: boolean;
  /** A saved plan to mend. */
  readonly from?: string;
  /** A log of nights to learn from. */
  readonly log?: string;
}

export interface LogOptions {
  /** The saved plan of the night that is written down. */
  readonly plan?: string;
  readonly date?: string;
  /** Answers of several, in JSON. */
  readonly answers?: string;
  readonly sleeper?: string;
  readonly under?: string;
  readonly over?: string;
  readonly woke?: string;
  readonly trouble?: string;
  readonly leaveOut?: boolean;
  readonly note?: string;
  readonly measuredLow?: string;
  /** The camp whose sleepers are told of. */
  readonly camp?: string;
  readonly why?: boolean;
}

export interface BerthOptions {
  readonly span?: string;
  readonly steps?: string;
  readonly step?: string;
  readonly stature?: string;
  readonly mass?: string;
  readonly fall?: string;
  readonly trunk?: string;
  readonly hammock?: string;
  readonly ridgeline?: string;
  readonly sling?: string;
  readonly table?: boolean;
  readonly json?: boolean;
}

export interface AdjustOptions {
  readonly berth: string;
  readonly measured?: string;
  readonly symptom?: string;
  readonly json?: boolean;
}

export interface ImportOptions {
  readonly into: string;
  readonly skipBad?: boolean;
  /** A file that says where in somebody else's JSON a forecast stands. */
  readonly mapping?: string;
}
