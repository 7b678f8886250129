import type { WetMap } from "@nightspan/core";
import { LINE } from "../colour/tokens.ts";
import type { Item, PathStep } from "../scene/scene.ts";
import { path } from "../scene/shapes.ts";
import { abovePx, type PlanFrame } from "./plan-frame.ts";

/** A share of the open rain that counts as reaching a place. */
export const REACHES = 0.05;
/** Strokes of three weights: the more rain, the longer and the thicker [upper share]. */
const STEPS = [0.3, 0.7, 1.01] as const;

/** Where rain reaches, as slanted strokes; dry ground is left blank. */
export function wetStrokes(map: WetMap, frame: PlanFrame): Item[] {
  const { columns, rows, cellM, fromXM, fromYM, shares } = map;
  const every = Math.max(1, Math.round(LEAST_CELL_PX / (cellM * frame.pxPerM)));
  const strokes: PathStep[][] = [[], [], []];
  for (let row = 0; row < rows; row += every) {
    for (let column = 0; column < columns; column += every) {
      const share = shares[row * columns + column] ?? 0;
      const weight = STEPS.findIndex((upper) => share < upper);
      if (!(share >= REACHES) || weight < 0) continue;
      const middle = [fromXM + (column + every / 2) * cellM, fromYM + (row + every / 2) * cellM] as const;
      const [x, y] = abovePx(frame, middle);
      const half = 0.5 * every * cellM * frame.pxPerM * (0.3 + 0.45 * Math.sqrt(share));
      // Every second row is shifted, so that strokes do not run together in lines.
      const shift = (row / every) % 2 === 0 ? 0 : 0.25 * every * cellM * frame.pxPerM;
      strokes[weight]?.push(
        ["M", x + shift + half * 0.45, y - half],
        ["L", x + shift - half * 0.45, y + half],
      );
    }
  }
  return strokes.flatMap((steps, weight): Item[] =>
    steps.length === 0
      ? []
      : [
          path(steps, {
            class: "ns-rain",
            fill: "none",
            stroke: "water",
            width: LINE.guy + weight * 0.5,
          }),
        ],
  );
}

const LEAST_CELL_PX = 13;
