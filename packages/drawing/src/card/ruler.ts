import type { Item, PathStep } from "../scene/scene.ts";
import { path } from "../scene/shapes.ts";

/** A ruler along a level edge, ticks downward: each centimetre, each fifth taller; shows whether a print is true to size. */
export function ruler(x: number, y: number, centimetres: number): Item[] {
  const ticks = Array.from({ length: centimetres + 1 }, (_, index): PathStep[] => {
    const [at, tall] = [x + index * 10, index % 5 === 0 ? 4 : 2.2];
    return [
      ["M", at, y],
      ["L", at, y + tall],
    ];
  });
  const edge: PathStep[] = [
    ["M", x, y],
    ["L", x + centimetres * 10, y],
  ];
  return [
    path([...edge, ...ticks.flat()], {
      class: "ns-ruler",
      fill: "none",
      stroke: "ink",
      width: 0.3,
      cap: "butt",
    }),
  ];
}
