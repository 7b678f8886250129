import { refuse, succeed, type Outcome, type Refusal } from "@nightspan/core";
import { findGlobePlace, onPlane, type GlobePlace } from "./globe-place.ts";
import type { RawRow } from "./raw-row.ts";
import { judgeRows, type TreeList } from "./tree-list.ts";
import { readWaypoints, type Waypoint } from "./waypoints.ts";

/**
 * Trees from the waypoints of a GPX text: the name is the tree's id, and the trunk stands in the comment, description
 * or name as "dbh 32 cm" or "girth 100 cm", without a unit in cm. They become metres on the plane that touches the
 * globe at the first waypoint. A receiver's height is too rough to say how the ground falls and is left out.
 */
export function readTreesGpx(text: string): Outcome<TreeList> {
  if (/<!DOCTYPE/i.test(text)) return refuse("file", "<!DOCTYPE", "GPX without a document type");
  if (!/<(?:\w+:)?gpx\b/.test(text)) return refuse("file", "no <gpx>", "a GPX file");
  const waypoints = readWaypoints(text);
  const places = waypoints.map(({ lat, lon }) => findGlobePlace(decimal(lat), decimal(lon)));
  const origin = places.find((place) => place !== undefined);
  if (origin === undefined) return refuse("wpt", "no waypoint with a place", "waypoints with lat and lon");
  const raw = waypoints.map((waypoint, index) => rawRow(waypoint, places[index], origin));
  return succeed({ ...judgeRows(raw), leftOut: [], origin });
}

function decimal(written: string | undefined): number | undefined {
  return written !== undefined && /^\s*[+-]?\d+(?:\.\d+)?\s*$/.test(written) ? Number(written) : undefined;
}

function rawRow({ line, lat, lon, texts }: Waypoint, at: GlobePlace | undefined, origin: GlobePlace): RawRow {
  const place = `line ${line}`;
  if (at === undefined) {
    const got = `lat ${lat ?? "none"}, lon ${lon ?? "none"}`;
    const fault = { field: "wpt", got, need: "lat and lon in degrees" };
    return { place, cells: {}, unreadable: true, faults: [fault] };
  }
  const [x_m, y_m] = onPlane(at, origin);
  const trunk = trunkOf([texts.cmt, texts.desc, texts.name].filter((part) => part !== undefined));
  const id = texts.name === undefined ? {} : { id: texts.name };
  return { place, cells: { ...id, x_m, y_m, ...trunk.cells }, faults: trunk.faults };
}

const TRUNK = /\b(dbh|diameter|girth)\b\s*[:=]?\s*(\d+(?:[.,]\d+)?)\s*(mm|cm|m)?(?![\w.])/gi;
const IN_CM: Readonly<Record<string, number>> = { mm: 0.1, cm: 1, m: 100 };

/** The trunk as the words tell it; the same measure told twice over must be told alike. */
function trunkOf(texts: readonly string[]): {
  readonly cells: Readonly<Record<string, number>>;
  readonly faults: readonly Refusal[];
} {
  const cells: Record<string, number> = {};
  const faults: Refusal[] = [];
  for (const [got, word = "", digits = "", unit = "cm"] of texts.join("\n").matchAll(TRUNK)) {
    const field = word.toLowerCase() === "girth" ? "girth_cm" : "dbh_cm";
    const valueCm = Number(digits) * (IN_CM[unit.toLowerCase()] ?? 1);
    const isTwice = cells[field] !== undefined && cells[field] !== valueCm;
    if (Number.isNaN(valueCm)) faults.push({ field, got, need: "a number with a point and not a comma" });
    else if (isTwice) faults.push({ field, got, need: `one figure; it says ${cells[field] ?? ""} cm too` });
    else cells[field] = Math.round(valueCm * 1000) / 1000;
  }
  if (Object.keys(cells).length > 0 || faults.length > 0) return { cells, faults };
  const need = 'the trunk in the comment or description, such as "dbh 32 cm" or "girth 100 cm"';
  return { cells, faults: [{ field: "dbh_cm", got: texts.join("; ") || undefined, need }] };
}
