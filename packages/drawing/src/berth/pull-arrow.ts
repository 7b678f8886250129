import type { Item, XY } from "../scene/scene.ts";
import { group, line, polygon } from "../scene/shapes.ts";

/** One centimetre of a screen [px]. */
const PX_PER_CM = 37.795;

/** Newtons a centimetre: the finest round scale at which every pull stays on its strap. */
export function newtonsPerCm(pulls: readonly { readonly pullN: number; readonly roomPx: number }[]): number {
  const fits = (scale: number): boolean =>
    pulls.every(({ pullN, roomPx }) => (pullN / scale) * PX_PER_CM <= roomPx);
  return ROUND_SCALES.find(fits) ?? 5000;
}

const ROUND_SCALES = [100, 200, 250, 400, 500, 800, 1000, 1500, 2000, 3000];

/** A pull on the tree: from the bark along the strap away from the trunk, as long as it is strong. */
export function pullArrow(from: XY, towards: XY, pullN: number, perCm: number, width: number): Item {
  const [dx, dy] = [towards[0] - from[0], towards[1] - from[1]];
  const length = Math.hypot(dx, dy) || 1;
  const reach = (pullN / perCm) * PX_PER_CM;
  const at = (along: number, aside: number): XY => [
    from[0] + (dx * along - dy * aside) / length,
    from[1] + (dy * along + dx * aside) / length,
  ];
  const head = width * 2.6;
  return group(
    [
      line([from, at(reach - head, 0)], { stroke: "ink", width, cap: "butt" }),
      polygon([at(reach, 0), at(reach - head * 1.3, head * 0.62), at(reach - head * 1.3, -head * 0.62)], {
        fill: "ink",
      }),
    ],
    { class: "ns-pull" },
  );
}
