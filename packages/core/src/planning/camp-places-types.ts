import type { Looked, Tree } from "../site/tree.ts";
import type { GroundXY } from "../site/obstacle.ts";
import type { PlaceBlock } from "../site/places-types.ts";

/** A tree that may carry a berth: one of the map, or a tag known from a stated pair alone. */
export interface Anchor {
  /** The tree's id on the map, else its tag. */
  readonly id: string;
  readonly tree?: Tree;
}

/** Two anchors that serve by the ground alone, before anybody's hang was looked at. */
export interface CampPlace {
  /** Indices of anchors, `first` before `second` by id. */
  readonly first: number;
  readonly second: number;
  readonly spanM: number;
  /** How far the span is usually off, one standard deviation [m]. */
  readonly spanErrorM: number;
  readonly dbhM: readonly [first: number, second: number];
  readonly dbhAssumed: boolean;
  /** Ground at `second` below the ground at `first` [m]; absent: nobody knows. */
  readonly fallM?: number;
  /** From `first` to `second`, clockwise from north [rad]; absent: nobody knows. */
  readonly bearingRad?: number;
  /** Whether the head lies at `second`, where somebody chose it; absent: as the ground says. */
  readonly headSecond?: boolean;
  /** Id of the stated pair, where one stands behind this place. */
  readonly pair?: string;
  /** The trees' positions are stepped or from GPS. */
  readonly stepItOut: boolean;
  /** The span was counted in steps at this very pair. */
  readonly stepped: boolean;
  /** Who looked at a stated pair as a whole. */
  readonly lookedAt?: Looked;
  /** On the map: middle of the berth, and the strip of ground it keeps. */
  readonly middle?: GroundXY;
  readonly footprint?: readonly GroundXY[];
  /** The strip that stems are kept from, where it is narrower. */
  readonly bare?: readonly GroundXY[];
}

export interface CampPlaces {
  /** Sorted by id. */
  readonly anchors: readonly Anchor[];
  /** Sorted by (first, second, pair). */
  readonly places: readonly CampPlace[];
  /** Pairs of place indices that cannot be used together, lower first, sorted. */
  readonly conflicts: readonly (readonly [number, number])[];
  /** Pairs of the map that something stands in the way of, in the same order. */
  readonly blocked: readonly BlockedStrip[];
  readonly funnel: GroundFunnel;
}

/** A pair of mapped trees whose strip of ground is not free. */
export interface BlockedStrip {
  readonly trees: readonly [Tree, Tree];
  readonly by: PlaceBlock;
  /** Id of the tree or obstacle in the way. */
  readonly cause: string;
}

/** From stems to places by the ground alone. */
export interface GroundFunnel {
  readonly trees: number;
  readonly usable: number;
  readonly pairs: number;
  readonly blockedBy: Readonly<Record<PlaceBlock, number>>;
}
