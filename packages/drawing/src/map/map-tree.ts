import type { XY } from "../scene/scene.ts";
import type { TreeState } from "./tree-state.ts";

/** One stem on the map, in metres. */
export interface MapTree {
  readonly id: string;
  readonly tag: string;
  readonly at: XY;
  readonly dbhM: number;
  readonly heightM?: number;
  readonly state: TreeState;
}
