import type { Camp } from "@nightspan/core";
import { fromPlane, type GlobePlace } from "../import/globe-place.ts";

/** Where the trees of a map stand on the globe, by id; nothing where the map does not say where it lies. */
export function globePositions({ ground }: Camp): ReadonlyMap<string, GlobePlace> | undefined {
  const origin = ground?.origin;
  if (ground === undefined || origin === undefined) return undefined;
  const from = { lat_deg: origin.latDeg, lon_deg: origin.lonDeg };
  return new Map(ground.trees.map(({ id, xM, yM }) => [id, fromPlane([xM, yM], from)]));
}
