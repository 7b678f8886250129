import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { stem } from "./wood.fixture.ts";
import type { Tree } from "./tree.ts";

const FOLDER = join(import.meta.dirname, "..", "..", "..", "..", "..", "shared", "stems");

/** Whether the measured stem maps lie beside the checkout; they are not part of it. */
export const HAS_STEM_MAPS = existsSync(join(FOLDER, "longleaf.csv"));

/** One measured map: columns id, x_m, y_m, dbh_cm, species. */
export function stemMap(name: "longleaf" | "waka" | "spruces"): readonly Tree[] {
  const [, ...rows] = readFileSync(join(FOLDER, `${name}.csv`), "utf8")
    .trim()
    .split(/\r?\n/);
  return rows.map((row) => {
    const [id = "", x, y, dbhCm] = row.split(",");
    return stem(id, Number(x), Number(y), { dbhM: Number(dbhCm) / 100 });
  });
}
