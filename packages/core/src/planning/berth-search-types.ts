/**
 * The search for berths, stripped to what it needs: places (pairs of trees that serve somebody),
 * which places exclude each other, how many hammocks a tree may carry, and classes of sleepers who
 * may use the same places at the same cost. Costs are whole units so that a proof is exact.
 */
export interface BerthSearchInput {
  readonly trees: number;
  /** Tree indices, first < second; sorted by (first, second). */
  readonly places: readonly SearchPlace[];
  readonly capacity: number;
  /** Hammocks that each tree may carry, one a tree, where they are not all `capacity`. */
  readonly capacities?: Int32Array;
  /** Place indices, lower first, sorted, none twice. */
  readonly conflicts: readonly (readonly [number, number])[];
  readonly classes: readonly SearchClass[];
}

export interface SearchPlace {
  readonly first: number;
  readonly second: number;
}

export interface SearchClass {
  readonly people: number;
  /** One whole number ≥ 0 a place; −1 where this class may not use it. */
  readonly costUnits: Float64Array;
}

export interface BerthSearch {
  readonly placed: number;
  /** Proven upper bound on how many can be placed, never above the number of people. */
  readonly bound: number;
  readonly costUnits: number;
  /** Proven lower bound on the cost at that `placed`. */
  readonly lowerBoundUnits: number;
  readonly proven: boolean;
  readonly method: string;
  /** Sorted by place. */
  readonly chosen: readonly { readonly place: number; readonly classIndex: number }[];
}
