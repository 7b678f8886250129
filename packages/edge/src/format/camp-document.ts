import type { Camp } from "@nightspan/core";
import type { campSchema } from "./camp-schema.ts";
import type * as z from "zod/mini";

/** The camp file as it is written and edited. Fields that the schema does not know ride along. */
export type CampDocument = z.infer<typeof campSchema>;

export type GroundDocument = NonNullable<CampDocument["ground"]>;
export type TreeDocument = NonNullable<GroundDocument["trees"]>[number];
export type PairDocument = NonNullable<GroundDocument["pairs"]>[number];
export type ObstacleDocument = NonNullable<GroundDocument["obstacles"]>[number];
export type RulesDocument = NonNullable<CampDocument["rules"]>;
export type SleeperDocument = CampDocument["sleepers"][number];
export type KitDocument = NonNullable<CampDocument["kit"]>[number];
export type PinDocument = NonNullable<CampDocument["pins"]>[number];
export type NightDocument = NonNullable<CampDocument["night"]>;

/** A camp file that can be planned: in SI units for the engine, and as it is to be saved. */
export interface OpenedCamp {
  readonly camp: Camp;
  readonly document: CampDocument;
  /** Paths of fields this version does not know, such as "sleepers[2].nickname". */
  readonly unknownFields: readonly string[];
}
