import type { GroundXY, Obstacle } from "./obstacle.ts";
import type { Tree } from "./tree.ts";

export interface PlacesInput {
  readonly trees: readonly Tree[];
  readonly obstacles: readonly Obstacle[];
  readonly spanMinM: number;
  readonly spanMaxM: number;
  readonly trunkMinM: number;
  /** Half width of the hexagon a berth keeps clear [m]. */
  readonly halfWidthM: number;
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
  /** Corners of the hexagon, in order round. */
  readonly footprint: readonly GroundXY[];
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
