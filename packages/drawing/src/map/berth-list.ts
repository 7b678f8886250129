import { TYPE } from "../colour/tokens.ts";
import { name } from "../scene/names.ts";
import type { Item } from "../scene/scene.ts";
import { group, text } from "../scene/shapes.ts";
import { numberPlate } from "./berth-symbols.ts";

const COLUMN = 236;
const ROW = 26;
const PLATE = 18;
const EDGE = 14;
/** Widest share of a sheet that names may take from the map. */
const MOST_SHARE = 0.42;

export interface ListedBerth {
  readonly id: string;
  readonly sleeper: string;
  readonly verdict: Parameters<typeof numberPlate>[2];
}

/** Room that the names of all berths take beside a map of this height [px]; nothing where they would crowd it out. */
export function berthListWidth(count: number, heightPx: number, sheetPx: number): number | undefined {
  const columns = Math.ceil(count / rowsIn(heightPx));
  const width = columns * COLUMN + EDGE;
  return count > 0 && width <= sheetPx * MOST_SHARE ? width : undefined;
}

/** Who sleeps where: each number as it stands on the map, with its name, in columns from `left` on. */
export function berthList(berths: readonly ListedBerth[], left: number, top: number, heightPx: number): Item {
  const rows = rowsIn(heightPx);
  const items = berths.map(({ id, sleeper, verdict }, index) => {
    const x = left + EDGE + Math.floor(index / rows) * COLUMN;
    const y = top + EDGE + (index % rows) * ROW + ROW / 2;
    return group(
      [
        numberPlate(id, [x + 20, y], verdict, PLATE),
        text(name(sleeper), [x + 48, y + TYPE.note * 0.36], {
          size: TYPE.note,
          weight: 600,
          maxWidth: COLUMN - 48 - EDGE,
        }),
      ],
      { ref: `berth/${id}` },
    );
  });
  return group(items, { class: "ns-berth-list" });
}

function rowsIn(heightPx: number): number {
  return Math.max(1, Math.floor((heightPx - 2 * EDGE) / ROW));
}
