import type { Sleeper } from "../../plan/camp.ts";
import type { Hammock, Suspension } from "../../plan/kit.ts";

/** Lines of a kind that hang alike and carry as much: it does not matter which of them somebody has. */
export interface LineGroup<L> {
  readonly lines: readonly [L, ...L[]];
  /** Pieces that nobody has kept for them; Infinity where the store lists none and the usual one is assumed. */
  readonly pieces: number;
}

/** People of one weight and stature who were dealt alike at first, and for whom the same may be chosen. */
export interface PersonType {
  readonly members: readonly [Sleeper, ...Sleeper[]];
  /** Groups they may have; `own` is kept for them and takes nothing from the store. */
  readonly hammocks: readonly Choice<Hammock>[];
  readonly suspensions: readonly Choice<Suspension>[];
  /** The place that the one member keeps. */
  readonly place?: number;
}

export interface Choice<L> {
  readonly line: L;
  /** Index of the group whose pieces it takes; -1 for what is kept for this person or assumed. */
  readonly group: number;
  readonly asDealt: boolean;
}

/** One type with one hammock and one suspension, wherever that may hang. */
export interface KitWay {
  readonly type: number;
  readonly hammock: Choice<Hammock>;
  readonly suspension: Choice<Suspension>;
  /** Index among the classes of the desk. */
  readonly classIndex: number;
}

/** What each person is to be given before the rest of the store is dealt: ids of lines. */
export type KitGiven = ReadonlyMap<string, readonly string[]>;
