/** What a search has so far: its best layout and what is proven of any. */
export interface SearchState {
  readonly columns: Int32Array;
  /** Nobody can place more. */
  readonly bound: number;
  /** Nobody can place as many as this layout for less. */
  readonly lowerBound: number;
  readonly method: SearchMethod;
}

export type SearchMethod =
  "nothing to place" | "component search" | "linear relaxation" | "branch and bound" | "local search";

/** Bounds that hold whatever is found. */
export interface SearchBounds {
  readonly most: number;
  readonly leastCost: (placed: number) => number;
}
