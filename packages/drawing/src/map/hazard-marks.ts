import { estimatedHeightM, type Camp } from "@nightspan/core";
import { TYPE } from "../colour/tokens.ts";
import { name, quantity, word } from "../scene/names.ts";
import type { Item, XY } from "../scene/scene.ts";
import type { TextItem } from "../scene/text-item.ts";
import type { GroundPlan, MapTree } from "./ground-plan.ts";
import { keepOutCircle } from "./hazard-symbols.ts";
import type { LabelPlace } from "./label-placement.ts";
import type { LabelWish } from "./map-labels.ts";
import { toPx, type MapView } from "./map-view.ts";
import { shapePoints } from "./obstacle-symbols.ts";

/** The circle a dead or doubtful tree may fall in. */
export function dropCircles(ground: GroundPlan, camp: Camp, view: MapView): Item[] {
  return ground.trees.flatMap((tree): Item[] => {
    const heights = dropHeights(tree, camp);
    if (heights === 0) return [];
    const r = heights * estimatedHeightM(tree) * view.pxPerM;
    const ref = `hazard/${tree.id}`;
    const rim =
      tree.state === "dead"
        ? ({ rim: "no", fill: "no-tint", width: 2, ref } as const)
        : ({ rim: "ink", width: 1.25, ref } as const);
    return [keepOutCircle(toPx(view, tree.at), r, rim)];
  });
}

function dropHeights({ state }: MapTree, { rules }: Camp): number {
  if (state === "dead") return rules.deadTreeHeights.value;
  if (state === "doubtful") return (rules.doubtfulTreeHeights ?? rules.deadTreeHeights).value;
  return 0;
}

/** What hazards and obstacles are called, under their cause. */
export function hazardLabels(ground: GroundPlan, camp: Camp, view: MapView): LabelWish[] {
  const dead = ground.trees
    .filter(({ state }) => state === "dead")
    .map((tree) =>
      label(word("map.dead", { tag: name(tree.tag) }), toPx(view, tree.at), 14, `tree/${tree.id}`, true),
    );
  const obstacles = (camp.ground?.obstacles ?? []).flatMap((obstacle): LabelWish[] => {
    const points = shapePoints(obstacle).map((point) => toPx(view, point));
    const at = points[Math.floor(points.length / 2)];
    if (at === undefined) return [];
    const ref = `obstacle/${obstacle.id}`;
    if (obstacle.kind === "overhead") {
      return [label(word("map.limb"), at, obstacle.setbackM * view.pxPerM + 3, ref, true)];
    }
    if (obstacle.kind === "fire") {
      const setback = quantity("length", obstacle.setbackM, Number.isInteger(obstacle.setbackM) ? 0 : 1);
      return [label(word("map.fire", { setback }), at, 13, ref, false)];
    }
    return [];
  });
  return [...dead, ...obstacles];
}

function label(item: TextItem, [x, y]: XY, away: number, ref: string, warns: boolean): LabelWish {
  const size = TYPE.note + 1;
  const below = { at: [x, y + away + size], anchor: "middle" } as const;
  const above = { at: [x, y - away - 4], anchor: "middle" } as const;
  const places: LabelPlace[] = [
    below,
    above,
    { at: [x - 10, y + away + size], anchor: "start" },
    { at: [x + 10, y + away + size], anchor: "end" },
    { at: [x + away + 4, y + 5], anchor: "start" },
    { at: [x - away - 4, y + 5], anchor: "end" },
  ];
  return {
    item,
    size,
    weight: 600,
    fill: warns ? "no" : "ink",
    places,
    needed: true,
    class: "ns-hazard-name",
    ref,
  };
}
