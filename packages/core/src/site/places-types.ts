import type { GroundXY, Obstacle } from "./obstacle.ts";
import type { Tree } from "./tree.ts";

export interface PlacesInput {
  readonly trees: readonly Tree[];
  readonly obstacles: readonly Obstacle[];
  readonly spanMinM: number;
  readonly spanMaxM: number;
  readonly trunkMinM: number;
  /** Half width of the hexagon a berth keeps clear of stems [m]. */
  readonly halfWidthM: number;
  /** The same for other berths, reaches and obstacles, where guys take more than stems, which they pass; absent: no more [m]. */
  readonly keptHalfWidthM?: number;
  /** A dead tree keeps berths away within this many of its heights; 0 for none. */
  readonly deadTreeHeights: number;
  readonly doubtfulTreeHeights: number;
  /**
   * Every position may be off by so much [m]: positive, places are those that serve wherever all really stands;
   * negative, those that may serve somewhere. 0 where absent.
   */
  readonly offM?: number;
}

/** A pair of usable trees that serves: tree indices into the input, `first` before `second` by id. */
export interface Place {
  readonly first: number;
  readonly second: number;
  readonly spanM: number;
  /** Corners of the hexagon that is kept from other berths and obstacles, in order round. */
  readonly footprint: readonly GroundXY[];
  /** The same of the strip that stems are kept from, where it is narrower. */
  readonly bare?: readonly GroundXY[];
}

export type PlaceBlock = "stem" | "dead-tree" | "overhead" | "obstacle";

export interface BlockedPair {
  readonly first: number;
  readonly second: number;
  readonly spanM: number;
  readonly by: PlaceBlock;
  /** Id of the tree or obstacle that is in the way. */
  readonly cause: string;
}

export interface Places {
  /** Sorted by (first id, second id). */
  readonly places: readonly Place[];
  /** Pairs of place indices whose footprints overlap, lower first, sorted. */
  readonly conflicts: readonly (readonly [number, number])[];
  readonly usable: number;
  readonly pairs: number;
  readonly blocked: readonly BlockedPair[];
}
