import { rainOnPatch, UPWARDS } from "./rain-on-patch.ts";
import { rainShade } from "./rain-shade.ts";
import type { Panel } from "./tarp-geometry.ts";
import type { Weather } from "./wetting.ts";

/** A level grid in berth coordinates. */
export interface MapGrid {
  readonly fromXM: number;
  readonly fromYM: number;
  readonly zM: number;
  readonly cellM: number;
  readonly columns: number;
  readonly rows: number;
}

/**
 * Where rain falls through a level plane under a tarp, mean over some directions of the wind.
 *
 * Shapes   grid, panels, weather, directions → shares of the open rain: rows × columns, row by row
 * Units    metres; directions as in `wetting` [rad]
 * Holds    at least one direction
 * Error    each cell by its middle
 * Source   rain-shade (handbook/shelter.md)
 */
export function wetMap(
  grid: MapGrid,
  panels: readonly Panel[],
  { rain, winds }: Weather,
  windsFrom: readonly number[],
): number[] {
  const { fromXM, fromYM, zM, cellM, columns, rows } = grid;
  const shares = new Array<number>(rows * columns).fill(0);
  for (const windFrom of windsFrom) {
    const [upX, upY] = [Math.cos(windFrom), Math.sin(windFrom)];
    const shade = rainShade(panels, upX, upY);
    for (let cell = 0; cell < shares.length; cell++) {
      const [row, column] = [Math.floor(cell / columns), cell % columns];
      const [xM, yM] = [fromXM + (column + 0.5) * cellM, fromYM + (row + 0.5) * cellM];
      const covered = shade([xM, yM, zM]);
      let share = 0;
      for (const wind of winds) {
        share += wind.share * rainOnPatch(UPWARDS, upX, upY, wind.windMS, rain, covered);
      }
      shares[cell] = (shares[cell] ?? 0) + share / windsFrom.length;
    }
  }
  return shares;
}
