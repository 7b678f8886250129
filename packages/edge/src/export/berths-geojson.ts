import type { Camp, Plan } from "@nightspan/core";
import type { GlobePlace } from "../import/globe-place.ts";
import { namesOf } from "../words/names.ts";
import { globePositions } from "./globe-positions.ts";

/**
 * Berths as lines from head to foot and trees as points, in GeoJSON (RFC 7946); nothing where the map does not say where
 * on the globe it lies. It carries no weight, no age and no pull.
 */
export function berthsGeoJson(plan: Plan, camp: Camp): string | undefined {
  const positions = globePositions(camp);
  if (positions === undefined) return undefined;
  const names = namesOf(camp);
  const trees = (camp.ground?.trees ?? []).flatMap((tree) => {
    const at = positions.get(tree.id);
    if (at === undefined) return [];
    const { id, tag, condition, species } = tree;
    const dbh_cm = Math.round(tree.dbhM * 1000) / 10;
    const properties = {
      kind: "tree",
      id,
      tag,
      dbh_cm,
      condition,
      ...(species === undefined ? {} : { species }),
    };
    return [{ type: "Feature", geometry: { type: "Point", coordinates: lonLat(at) }, properties }];
  });
  const berths = plan.berths.flatMap(({ id, sleeper, headTree, footTree, verdict }) => {
    const [head, foot] = [positions.get(headTree), positions.get(footTree)];
    if (head === undefined || foot === undefined) return [];
    const properties = {
      kind: "berth",
      id,
      sleeper: names.sleeper(sleeper),
      head: names.tree(headTree),
      foot: names.tree(footTree),
      verdict,
    };
    return [
      {
        type: "Feature",
        geometry: { type: "LineString", coordinates: [lonLat(head), lonLat(foot)] },
        properties,
      },
    ];
  });
  return `${JSON.stringify({ type: "FeatureCollection", features: [...berths, ...trees] }, null, 2)}\n`;
}

function lonLat({ lat_deg, lon_deg }: GlobePlace): readonly number[] {
  return [lon_deg, lat_deg];
}
