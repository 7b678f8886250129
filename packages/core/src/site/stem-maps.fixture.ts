import { readFileSync } from "node:fs";
import { join } from "node:path";
import { stem } from "./wood.fixture.ts";
import type { Tree } from "./tree.ts";

/** Folder of measured stem maps, which are not part of the repository; undefined where nobody names one. */
const FOLDER = process.env["NIGHTSPAN_STEMS"];

export const HAS_STEM_MAPS = FOLDER !== undefined;

/** One measured map: columns id, x_m, y_m, dbh_cm, species. */
export function stemMap(name: "longleaf" | "waka" | "spruces"): readonly Tree[] {
  const [, ...rows] = readFileSync(join(FOLDER ?? "", `${name}.csv`), "utf8")
    .trim()
    .split(/\r?\n/);
  return rows.map((row) => {
    const [id = "", x, y, dbhCm] = row.split(",");
    return stem(id, Number(x), Number(y), { dbhM: Number(dbhCm) / 100 });
  });
}
