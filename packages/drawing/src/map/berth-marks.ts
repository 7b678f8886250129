import { hexagonFootprint, worstVerdict, type Camp } from "@nightspan/core";
import { name, quantity, word } from "../scene/names.ts";
import type { Item, XY } from "../scene/scene.ts";
import { group, hitCircle, polygon, text } from "../scene/shapes.ts";
import type { TextItem } from "../scene/text-item.ts";
import { PLATE_PAINT, plateOutline } from "../figure/plate-shape.ts";
import { berthLeaf, berthSpan, numberPlate, plateWidth, tarpHexagon } from "./berth-symbols.ts";
import type { GroundPlan, MapBerth } from "./ground-plan.ts";
import { boxAround, type Box } from "./label-placement.ts";
import { detailOf, toPx, type MapView } from "./map-view.ts";

export interface PlacedBerth {
  readonly berth: MapBerth;
  readonly head: XY;
  readonly foot: XY;
  readonly middle: XY;
}

export interface BerthMarks {
  /** Hexagons: under the trees. */
  readonly below: readonly Item[];
  /** Leaves or spans, then plates: over the trees. */
  readonly above: readonly Item[];
  readonly boxes: readonly Box[];
}

const PLATE = 22;

export function placedBerths(ground: GroundPlan, view: MapView): PlacedBerth[] {
  return ground.berths.map((berth) => {
    const [head, foot] = [toPx(view, berth.head.at), toPx(view, berth.foot.at)];
    return { berth, head, foot, middle: [(head[0] + foot[0]) / 2, (head[1] + foot[1]) / 2] };
  });
}

/** Every berth at the detail of the view: leaf and hexagon, span, or number plate alone. */
export function berthMarks(
  placed: readonly PlacedBerth[],
  camp: Camp,
  view: MapView,
  selected: string | undefined,
): BerthMarks {
  const detail = detailOf(view);
  if (detail === "plate") return mergedPlates(placed);
  const below = placed.map(({ berth }) => {
    const corners = hexagonFootprint(berth.head.at, berth.foot.at, camp.rules.footprintHalfWidthM.value);
    const px = corners.map(([x, y]) => toPx(view, [x, y]));
    return tarpHexagon(px, view.pxPerM, berth.id === selected ? "panel" : "none");
  });
  const above = placed.map(({ berth, head, foot, middle }) => {
    const ends = { head, foot, cloth: berth.cloth };
    const body = detail === "leaf" ? berthLeaf(ends, view.pxPerM) : berthSpan(ends);
    const title = word("map.berth", {
      berth: name(berth.id),
      sleeper: name(berth.sleeper),
      head: name(berth.head.tag),
      foot: name(berth.foot.tag),
      verdict: word(`verdict.${berth.verdict}.capital`),
    });
    const chosen = berth.id === selected ? " ns-selected" : "";
    return group(
      [body, numberPlate(berth.id, middle, berth.verdict, PLATE), hitCircle(middle, 22, `berth/${berth.id}`)],
      {
        class: `ns-berth ns-berth-${berth.verdict}${chosen}`,
        ref: `berth/${berth.id}`,
        title,
      },
    );
  });
  return { below: detail === "leaf" ? below : [], above, boxes: placed.flatMap((one) => berthBoxes(one)) };
}

function berthBoxes({ berth, head, foot, middle }: PlacedBerth): Box[] {
  const beads = [0.25, 0.38, 0.62, 0.75].map((share): Box => {
    const at: XY = [head[0] + (foot[0] - head[0]) * share, head[1] + (foot[1] - head[1]) * share];
    return boxAround(at, 8);
  });
  return [...beads, boxAround(middle, plateWidth(berth.id, PLATE) / 2 + 9, PLATE / 2 + 3)];
}

/** Plates alone; those that would touch are one plate, "7 to 12". */
function mergedPlates(placed: readonly PlacedBerth[]): BerthMarks {
  const clusters: { at: XY; members: PlacedBerth[] }[] = [];
  for (const one of placed) {
    const near = clusters.find(
      ({ at }) => Math.abs(at[0] - one.middle[0]) < 64 && Math.abs(at[1] - one.middle[1]) < 26,
    );
    if (near === undefined) clusters.push({ at: one.middle, members: [one] });
    else near.members.push(one);
  }
  const above = clusters.map(({ at, members }) => clusterPlate(at, members));
  return { below: [], above, boxes: clusters.map(({ at }) => boxAround(at, 34, 14)) };
}

function clusterPlate(at: XY, members: readonly PlacedBerth[]): Item {
  const [first] = members;
  if (first !== undefined && members.length === 1) {
    const { id, verdict } = first.berth;
    return group([numberPlate(id, at, verdict, PLATE), hitCircle(at, 22, `berth/${id}`)], {
      class: "ns-berth",
      ref: `berth/${id}`,
    });
  }
  const verdict = worstVerdict(members.map(({ berth }) => berth.verdict));
  const { fill, stroke, ink } = PLATE_PAINT[verdict];
  return group(
    [
      polygon(plateOutline(verdict, at, 62, PLATE), { fill, stroke, width: 1.75, join: "miter" }),
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
  const unbroken = last - first === members.length - 1;
  if (unbroken) return word("map.plates", { first: name(String(first)), last: name(String(last)) });
  return word("map.berths", { count: quantity("count", members.length, 0) });
}
