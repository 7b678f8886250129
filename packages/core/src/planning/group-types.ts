import type { GroundXY } from "../site/obstacle.ts";
import type { BerthSearch, BerthSearchInput } from "./berth-search-types.ts";

/** People who belong together: each lies within so far of one and the same hub berth. */
export interface SearchGroup {
  readonly withinM: number;
}

/** People of one class and one group. */
export interface SearchKind {
  readonly classIndex: number;
  /** Index of the group; −1 for people of none. */
  readonly group: number;
  readonly people: number;
  /** Whether the hub of the group may be theirs. Where nobody of a group leads, anybody's berth may be the hub. */
  readonly leads: boolean;
}

export interface GroupSearchInput {
  readonly search: BerthSearchInput;
  /** The best layout where nobody minds who is near whom; its bounds hold for every layout. */
  readonly base: BerthSearch;
  /** As many people as `base` placed. */
  readonly kinds: readonly SearchKind[];
  readonly groups: readonly SearchGroup[];
  /** Middle of each place; undefined where nobody knows where it is: it then counts as near to all. */
  readonly spots: readonly (GroundXY | undefined)[];
  /** Price of each metre between a person and the hub of the group; absent: none [units]. */
  readonly spreadUnitsPerM?: number;
}

/** One person of a kind at a place. */
export interface GroupSeat {
  readonly place: number;
  readonly kind: number;
}

export interface GroupSearch {
  /** `base` with the places that are used now, their cost, and how they were found. */
  readonly search: BerthSearch;
  /** Sorted by place. */
  readonly seats: readonly GroupSeat[];
  /** Place of the hub of each group; −1 for a group of which nobody is placed. */
  readonly hubs: readonly number[];
  /** How many lie farther from the hub of their group than it allows. */
  readonly outside: number;
}
