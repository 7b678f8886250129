/** The places of one group with its hub, as if it were a single thing to choose. */
export interface GroupColumn {
  readonly sort: number;
  readonly hub: number;
  readonly places: readonly number[];
  /** Cost of the places and of the ways to the hub [units]. */
  readonly units: number;
}

/** Groups of one radius and one size, whose names do not matter. */
export interface ColumnSort {
  readonly groups: readonly number[];
  readonly size: number;
}

export interface ColumnTask {
  readonly sorts: readonly ColumnSort[];
  /** People of no group. */
  readonly free: number;
  /** What each place costs whom it suits best [units]; ∞ for nobody. */
  readonly cost: Float64Array;
  /** Rows over places: at most so many of these. */
  readonly rules: readonly { readonly columns: readonly number[]; readonly upper: number }[];
  /** Rows of each place. */
  readonly rulesOf: readonly (readonly number[])[];
}

/** What the master program says of the columns it has. */
export interface MasterPrices {
  readonly units: number;
  /** Price of each row, never above zero. */
  readonly rules: Float64Array;
  /** What a group of each sort pays. */
  readonly sorts: Float64Array;
}
