import { worstVerdict } from "@nightspan/core";
import { PLATE_PAINT, plateOutline } from "../figure/plate-shape.ts";
import { name, quantity, word } from "../scene/names.ts";
import type { Item, XY } from "../scene/scene.ts";
import { group, hitCircle, polygon, text } from "../scene/shapes.ts";
import type { TextItem } from "../scene/text-item.ts";
import { HALF_CLOTH_M, numberPlate, plateWidth } from "./berth-symbols.ts";
import { boxAround, TakenBoxes, type Box } from "./label-placement.ts";
import { inView, type Detail, type MapView } from "./map-view.ts";
import type { PlacedBerth } from "./placed-berths.ts";

export interface Plates {
  readonly items: readonly Item[];
  readonly boxes: readonly Box[];
}

/** Height of a number plate [px]: smaller where berths are small. */
const HEIGHT: Readonly<Record<Detail, number>> = { leaf: 22, span: 18, plate: 22 };

/** Cloth that must stay in sight beside a plate in the middle of a leaf [px]. */
const CLOTH_IN_SIGHT = 50;

/** A plate at the middle of each berth; beside it where it would hide head and feet. */
export function berthPlates(placed: readonly PlacedBerth[], view: MapView, detail: "leaf" | "span"): Plates {
  const height = HEIGHT[detail];
  const taken = new TakenBoxes(40);
  for (const box of placed.flatMap((one) => [...bodyBoxes(one), ...endBoxes(one)])) taken.take(box);
  const boxes: Box[] = [];
  const items = placed.map((one) => {
    const { id, verdict } = one.berth;
    const halfWidth = plateWidth(id, height) / 2 + (verdict === "look-again" ? height * 0.31 : 0) + 1;
    const places = platePlaces(
      one,
      [halfWidth, height / 2],
      detail === "leaf" ? HALF_CLOTH_M * view.pxPerM : 7,
    );
    const boxAt = (at: XY): Box => boxAround(at, halfWidth + 1, height / 2 + 1);
    const inside = places.filter((place) => inView(view, place, -halfWidth));
    const where = inside.find((place) => taken.isFree(boxAt(place))) ?? inside[0] ?? one.middle;
    taken.take(boxAt(where));
    boxes.push(boxAt(where));
    return group([numberPlate(id, where, verdict, height), hitCircle(where, 22, `berth/${id}`)], {
      ref: `berth/${id}`,
    });
  });
  return { items, boxes };
}

/** The middle alone where there is room; else either side, the upper or right one first, then on towards the ends. */
function platePlaces(
  { head, foot, middle, berth }: PlacedBerth,
  [halfWidth, halfHeight]: XY,
  bodyHalf: number,
): XY[] {
  const [dx, dy] = [foot[0] - head[0], foot[1] - head[1]];
  const length = Math.hypot(dx, dy) || 1;
  const cloth = length * (berth.cloth[1] - berth.cloth[0]);
  if (cloth >= 2 * halfWidth + CLOTH_IN_SIGHT) return [middle];
  const along: XY = [dx / length, dy / length];
  const upright = dx < 0 || (dx === 0 && dy > 0) ? -1 : 1;
  const aside: XY = [along[1] * upright, -along[0] * upright];
  const off = halfWidth * Math.abs(aside[0]) + halfHeight * Math.abs(aside[1]) + bodyHalf + 2;
  return [0, 0.3, -0.3].flatMap((shift) =>
    [1, -1].map((side): XY => [
      middle[0] + aside[0] * off * side + dx * shift,
      middle[1] + aside[1] * off * side + dy * shift,
    ]),
  );
}

/** Room that a berth's straps and cloth take, in beads from tree to tree. */
export function bodyBoxes({ head, foot }: PlacedBerth): Box[] {
  const beads = Math.max(5, Math.round(Math.hypot(foot[0] - head[0], foot[1] - head[1]) / 12));
  return Array.from({ length: beads - 1 }, (_, index): Box => {
    const at = (index + 1) / beads;
    return boxAround([head[0] + (foot[0] - head[0]) * at, head[1] + (foot[1] - head[1]) * at], 6);
  });
}

/** Room of the two trees, with the rings that may stand round them. */
function endBoxes({ head, foot }: PlacedBerth): Box[] {
  return [boxAround(head, 10), boxAround(foot, 10)];
}

/** Plates alone, for a whole wood; those that would touch are one plate, "7 to 12". */
export function mergedPlates(placed: readonly PlacedBerth[]): Plates {
  const clusters: { at: XY; members: PlacedBerth[] }[] = [];
  for (const one of placed) {
    const near = clusters.find(
      ({ at }) => Math.abs(at[0] - one.middle[0]) < 70 && Math.abs(at[1] - one.middle[1]) < 26,
    );
    if (near === undefined) clusters.push({ at: one.middle, members: [one] });
    else near.members.push(one);
  }
  return {
    items: clusters.map(({ at, members }) => clusterPlate(at, members)),
    boxes: clusters.map(({ at }) => boxAround(at, 36, 14)),
  };
}

function clusterPlate(at: XY, members: readonly PlacedBerth[]): Item {
  const [first] = members;
  if (first !== undefined && members.length === 1) {
    const { id, verdict } = first.berth;
    return group([numberPlate(id, at, verdict, HEIGHT.plate), hitCircle(at, 22, `berth/${id}`)], {
      ref: `berth/${id}`,
    });
  }
  const verdict = worstVerdict(members.map(({ berth }) => berth.verdict));
  const { fill, stroke, ink } = PLATE_PAINT[verdict];
  return group(
    [
      polygon(plateOutline(verdict, at, 62, HEIGHT.plate), { fill, stroke, width: 1.75, join: "miter" }),
      text(clusterLabel(members), [at[0], at[1] + 5.5], {
        size: 15,
        weight: 700,
        anchor: "middle",
        fill: ink,
        maxWidth: 62,
      }),
    ],
    {
      class: `ns-plate ns-plates ns-${verdict}`,
      ref: `berths/${members.map(({ berth }) => berth.id).join("+")}`,
    },
  );
}

function clusterLabel(members: readonly PlacedBerth[]): TextItem {
  const numbers = members.map(({ berth }) => Number(berth.id)).sort((a, b) => a - b);
  const [first = 0, last = 0] = [numbers[0], numbers.at(-1)];
  if (members.length === 2) {
    return word("list.two", { first: name(String(first)), rest: name(String(last)) });
  }
  if (last - first === members.length - 1) {
    return word("map.plates", { first: name(String(first)), last: name(String(last)) });
  }
  return word("map.berths", { count: quantity("count", members.length, 0) });
}
