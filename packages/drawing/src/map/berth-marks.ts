import { hexagonFootprint, type Camp } from "@nightspan/core";
import { name, word } from "../scene/names.ts";
import type { Item, XY } from "../scene/scene.ts";
import { group } from "../scene/shapes.ts";
import { berthPlates, bodyBoxes, mergedPlates } from "./berth-plates.ts";
import { berthLeaf, berthSpan, spareSpan, tarpHexagon } from "./berth-symbols.ts";
import { tarpAbove, type ToPaper } from "../tarp/tarp-above.ts";
import type { MapBerth } from "./ground-plan.ts";
import type { Box } from "./label-placement.ts";
import { detailOf, toPx, type MapView } from "./map-view.ts";
import type { PlacedBerth } from "./placed-berths.ts";

export interface BerthMarks {
  /** Hexagons for tarp and lines. */
  readonly tarps: readonly Item[];
  /** Leaves or spans: under the trees. */
  readonly bodies: readonly Item[];
  /** Numbers: over everything. */
  readonly plates: readonly Item[];
  /** Room that labels keep off. */
  readonly boxes: readonly Box[];
  /** Edges that labels keep off where they can. */
  readonly edges: readonly (readonly XY[])[];
}

/** Every berth at the detail of the view: leaf and hexagon, span, or number plate alone. */
export function berthMarks(
  placed: readonly PlacedBerth[],
  camp: Camp,
  view: MapView,
  selected: string | undefined,
): BerthMarks {
  const detail = detailOf(view);
  if (detail === "plate") {
    const { items, boxes } = mergedPlates(placed);
    return { tarps: [], bodies: [], plates: items, boxes, edges: [] };
  }
  const hexagons = detail === "leaf" ? placed.map(({ berth }) => hexagon(berth, camp, view)) : [];
  const tarps = hexagons.map((corners, index) => {
    const one = placed[index];
    const fill = one?.berth.id === selected ? "panel" : "none";
    const { tarp } = one?.berth ?? {};
    if (one === undefined || tarp === undefined) return tarpHexagon(corners, view.pxPerM, fill);
    return tarpAbove(tarp, alongBerth(one, view), fill);
  });
  const bodies = placed.map((one) => body(one, view, one.berth.id === selected));
  const plates = berthPlates(placed, view, detail);
  return {
    tarps,
    bodies,
    plates: plates.items,
    boxes: [...placed.flatMap(bodyBoxes), ...plates.boxes],
    edges: hexagons,
  };
}

/** From the berth's own level coordinates to the map's paper. */
function alongBerth({ berth, head }: PlacedBerth, { pxPerM }: MapView): ToPaper {
  const [east, north] = [berth.foot.at[0] - berth.head.at[0], berth.foot.at[1] - berth.head.at[1]];
  const length = Math.hypot(east, north) || 1;
  const [u, v] = [east / length, north / length];
  // Left of who looks from head to foot is a quarter turn against the clock.
  return ([x, y]) => [head[0] + (u * x - v * y) * pxPerM, head[1] - (v * x + u * y) * pxPerM];
}

function hexagon({ head, foot }: MapBerth, camp: Camp, view: MapView): XY[] {
  const corners = hexagonFootprint(head.at, foot.at, camp.rules.footprintHalfWidthM.value);
  return corners.map(([x, y]) => toPx(view, [x, y]));
}

function body({ berth, head, foot }: PlacedBerth, view: MapView, selected: boolean): Item {
  const ends = { head, foot, cloth: berth.cloth };
  if (berth.spare === true) return group([spareSpan(ends)], { class: "ns-spare", ref: `spare/${berth.id}` });
  return group([detailOf(view) === "leaf" ? berthLeaf(ends, view.pxPerM) : berthSpan(ends)], {
    class: `ns-berth ns-berth-${berth.verdict}${selected ? " ns-selected" : ""}`,
    ref: `berth/${berth.id}`,
    title: word("map.berth", {
      berth: name(berth.id),
      sleeper: name(berth.sleeper),
      head: name(berth.head.tag),
      foot: name(berth.foot.tag),
      verdict: word(`verdict.${berth.verdict}.capital`),
    }),
  });
}
