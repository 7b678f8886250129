import type { Camp } from "../../plan/camp.ts";
import type { Looked, Tree } from "../../site/tree.ts";
import type { Hang, HangInput, HangLimits, OkRange } from "../../statics/hang-types.ts";
import type { CampPlace } from "../camp-places-types.ts";
import type { DealtKit } from "../dealt-kit.ts";
import type { TrunkPull } from "../trunk-pulls.ts";

/** One end of a berth: which tree, how stout, and who looked at it that day. */
export interface BerthEnd {
  readonly id: string;
  readonly tree?: Tree;
  readonly dbhM: number;
  readonly looked?: Looked;
}

/** Everything the findings of one berth compare. */
export interface BerthCase {
  /** Number of the berth: "3". */
  readonly id: string;
  readonly camp: Camp;
  readonly place: CampPlace;
  readonly head: BerthEnd;
  readonly foot: BerthEnd;
  readonly kit: DealtKit;
  readonly hang: Hang;
  /** What the hang was asked for. */
  readonly request: HangInput;
  readonly limits: HangLimits;
  /** Spans at which this kit and sleeper could hang between two such trees; absent where none would do. */
  readonly spanWindow?: OkRange;
  /** Who sets the straps. */
  readonly setBy: string;
  /** All that pulls at the tree of each end, this berth among it. */
  readonly trunks: Readonly<Record<End, readonly TrunkPull[]>>;
}

export const ENDS = ["head", "foot"] as const;

export type End = (typeof ENDS)[number];

/** "berth/3", or a part of it: "berth/3/head-strap". */
export function berthSubject(id: string, part?: string): string {
  return part === undefined ? `berth/${id}` : `berth/${id}/${part}`;
}

/** The item's id for a finding's `about`; an assumed item has none. */
export function named(item: string): string[] {
  return item === "" ? [] : [item];
}
