import type { Camp, Plan } from "@nightspan/core";
import { namesOf } from "../words/names.ts";
import { globePositions } from "./globe-positions.ts";

/**
 * Trees as waypoints, whose comment tells the trunk as `import` reads it, and berths as routes from head to foot, in
 * GPX 1.1; nothing where the map does not say where on the globe it lies.
 */
export function berthsGpx(plan: Plan, camp: Camp): string | undefined {
  const positions = globePositions(camp);
  if (positions === undefined) return undefined;
  const names = namesOf(camp);
  const place = (id: string) => {
    const at = positions.get(id);
    return at === undefined ? "" : `lat="${at.lat_deg}" lon="${at.lon_deg}"`;
  };
  const trees = (camp.ground?.trees ?? []).map(
    ({ id, tag, dbhM }) =>
      `  <wpt ${place(id)}><name>${xml(tag)}</name><cmt>dbh ${Math.round(dbhM * 1000) / 10} cm</cmt></wpt>`,
  );
  const berths = plan.berths
    .filter(({ headTree, footTree }) => positions.has(headTree) && positions.has(footTree))
    .flatMap(({ id, sleeper, headTree, footTree }) => [
      `  <rte><name>${xml(`Berth ${id}, ${names.sleeper(sleeper)}`)}</name>`,
      ...[headTree, footTree].map(
        (tree) => `    <rtept ${place(tree)}><name>${xml(names.tree(tree))}</name></rtept>`,
      ),
      "  </rte>",
    ]);
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    '<gpx version="1.1" creator="Nightspan" xmlns="http://www.topografix.com/GPX/1/1">',
    `  <metadata><name>${xml(camp.name)}</name></metadata>`,
    ...trees,
    ...berths,
    "</gpx>",
    "",
  ].join("\n");
}

const SIGNS: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };
/** What XML 1.0 has no way to write. */
const FORBIDDEN = /[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu;

function xml(text: string): string {
  return text.replaceAll(FORBIDDEN, " ").replaceAll(/[&<>"]/g, (sign) => SIGNS[sign] ?? sign);
}
