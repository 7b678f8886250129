import type { Camp } from "../../plan/camp.ts";
import type { Looked, Tree } from "../../site/tree.ts";
import type { Hang, HangLimits } from "../../statics/hang-types.ts";
import type { CampPlace } from "../camp-places-types.ts";
import type { DealtKit } from "../dealt-kit.ts";

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
  readonly limits: HangLimits;
  /** Who sets the straps. */
  readonly setBy: string;
}

export const ENDS = ["head", "foot"] as const;

export type End = (typeof ENDS)[number];

/** "berth/3", or a part of it: "berth/3/head-strap". */
export function berthSubject(id: string, part?: string): string {
  return part === undefined ? `berth/${id}` : `berth/${id}/${part}`;
}
