import { DEFAULTS } from "@nightspan/core";
import type { CampDocument, KitDocument } from "./camp-document.ts";
import { CAMP_FORMAT } from "./camp-schema.ts";
import { present, twoOf } from "./optional.ts";

/** What one sleeper knows of two trees: the span in metres or in steps, and their own stature. */
export interface TwoTrees {
  readonly spanM?: number;
  readonly steps?: number;
  /** One step of the sleeper [m], where it was calibrated. */
  readonly stepM?: number;
  readonly statureM: number;
  readonly massKg?: number;
  readonly name?: string;
  readonly date?: string;
  /** Ground at the second tree below the first [m]. */
  readonly fallM?: number;
  /** Trunk diameters, or the thinner one's for both [m]. */
  readonly trunkM?: number;
  readonly hammockLengthM?: number;
  readonly ridgelineM?: number;
  /** Present where whoopie slings are used: their shortest and longest length [m]. */
  readonly sling?: { readonly shortestM?: number; readonly longestM?: number };
  /** Who looked at both trees and above, and on which day. */
  readonly lookedAt?: { readonly by: string; readonly on: string };
}

/** The name of the one sleeper where none is given. */
export const YOU = "You";

/** "Two trees, tonight" as a camp of one: one stated pair, one sleeper. */
export function campOfOne(two: TwoTrees): CampDocument {
  return present({
    format: CAMP_FORMAT,
    name: "Two trees, tonight",
    date: two.date,
    ground: { pairs: [pairOf(two)] },
    sleepers: [
      present({
        id: "you",
        name: two.name ?? YOU,
        mass_kg: two.massKg,
        stature_m: two.statureM,
        step_m: two.stepM,
      }),
    ],
    kit: kitOf(two),
  });
}

type Pair = NonNullable<NonNullable<CampDocument["ground"]>["pairs"]>[number];

function pairOf({ spanM, steps, fallM, trunkM, lookedAt }: TwoTrees): Pair {
  const trunkCm = trunkM === undefined ? undefined : trunkM * 100;
  return present({
    id: "tonight",
    trees: twoOf("the first tree", "the second tree"),
    span_m: spanM,
    steps,
    fall_m: fallM,
    dbh_cm: trunkCm === undefined ? undefined : twoOf(trunkCm, trunkCm),
    looked_at: lookedAt,
  });
}

function kitOf({ hammockLengthM, ridgelineM, sling }: TwoTrees): KitDocument[] | undefined {
  const hammock: KitDocument[] =
    hammockLengthM === undefined && ridgelineM === undefined
      ? []
      : [
          present({
            id: "hammock",
            kind: "hammock" as const,
            length_m: hammockLengthM ?? DEFAULTS["kit.default.hammock.length_m"].value,
            ridgeline_m: ridgelineM,
          }),
        ];
  const suspension: KitDocument[] =
    sling === undefined
      ? []
      : [
          present({
            id: "slings",
            kind: "suspension" as const,
            type: "whoopie-sling" as const,
            min_m: sling.shortestM,
            max_m: sling.longestM,
          }),
        ];
  const kit = [...hammock, ...suspension];
  return kit.length === 0 ? undefined : kit;
}
