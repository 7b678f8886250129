import type { Basis } from "../outcome/basis.ts";
import type { Tree } from "../site/tree.ts";

export interface LayoutModelInput {
  readonly trees: readonly Tree[];
  /** How many want a berth. */
  readonly people: number;
  readonly rules?: Partial<LayoutRules>;
}

export interface LayoutRules {
  readonly spanMinM: number;
  readonly spanMaxM: number;
  readonly spanIdealM: number;
  readonly trunkMinM: number;
  readonly hammocksPerTree: number;
  readonly footprint: "hexagon";
  readonly tarpHalfWidthM: number;
  readonly deadTreeHeights: number;
}

export const LAYOUT_DEFAULTS: LayoutRules = {
  spanMinM: 3,
  spanMaxM: 5,
  spanIdealM: 4,
  trunkMinM: 0.2,
  hammocksPerTree: 1,
  footprint: "hexagon",
  tarpHalfWidthM: 1.5,
  deadTreeHeights: 0,
};

export interface LayoutModelValue {
  readonly placed: number;
  /** Proven: no layout places more. */
  readonly bound: number;
  /** Sum over the berths of |span − ideal|, each rounded to 0.1 mm [m]. */
  readonly costM: number;
  /** Proven: no layout places as many for less [m]. */
  readonly lowerBoundM: number;
  readonly gap: number;
  readonly proven: boolean;
  readonly method: string;
  /** Tree ids, lower first, sorted. */
  readonly berths: readonly { readonly trees: readonly [string, string]; readonly spanM: number }[];
  readonly basis: Basis;
}
