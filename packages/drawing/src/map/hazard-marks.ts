import { estimatedHeightM, type Camp } from "@nightspan/core";
import { TYPE } from "../colour/tokens.ts";
import { name, quantity, word } from "../scene/names.ts";
import type { Item, XY } from "../scene/scene.ts";
import type { TextItem } from "../scene/text-item.ts";
import type { GroundPlan } from "./ground-plan.ts";
import type { MapTree } from "./map-tree.ts";
import { keepOutCircle } from "./hazard-symbols.ts";
import type { LabelPlace } from "./label-placement.ts";
import type { LabelWish } from "./map-labels.ts";
import { detailOf, toPx, type MapView } from "./map-view.ts";

/** A longer tag is left out of the name of a hazard: the hazard is what must be read [letters]. */
const LONG_TAG = 14;

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

/** A hazard's circle on the paper: its rim is kept clear of labels where it can be. */
export function hazardRims(
  ground: GroundPlan,
  camp: Camp,
  view: MapView,
): { readonly at: XY; readonly r: number }[] {
  const trees = ground.trees.flatMap((tree) => {
    const r = dropHeights(tree, camp) * estimatedHeightM(tree) * view.pxPerM;
    return r === 0 ? [] : [{ at: toPx(view, tree.at), r }];
  });
  const obstacles = (camp.ground?.obstacles ?? []).flatMap(({ kind, shape, setbackM }) =>
    (kind === "fire" || kind === "overhead") && shape.type === "point"
      ? [{ at: toPx(view, shape.at), r: setbackM * view.pxPerM }]
      : [],
  );
  return [...trees, ...obstacles];
}

/** What hazards are called, under their cause; in a crowd the dead tree's name is short and the others are signs. */
export function hazardLabels(ground: GroundPlan, camp: Camp, view: MapView): LabelWish[] {
  const roomy = detailOf(view) === "leaf";
  const dead = ground.trees
    .filter(({ state }) => state === "dead")
    .map((tree) => {
      const short = tree.tag.length > LONG_TAG ? "map.dead-untagged" : "map.dead-short";
      const said = word(roomy && tree.tag.length <= LONG_TAG ? "map.dead" : short, { tag: name(tree.tag) });
      return {
        ...label(said, toPx(view, tree.at), 14, `tree/${tree.id}`),
        fill: "no",
        needed: true,
      } as const;
    });
  const obstacles = (camp.ground?.obstacles ?? []).flatMap((obstacle): LabelWish[] => {
    if (obstacle.shape.type !== "point") return [];
    const at = toPx(view, obstacle.shape.at);
    const ref = `obstacle/${obstacle.id}`;
    if (obstacle.kind === "overhead") {
      return [{ ...label(word("map.limb"), at, obstacle.setbackM * view.pxPerM + 3, ref), fill: "no" }];
    }
    if (obstacle.kind !== "fire") return [];
    const setback = quantity("length", obstacle.setbackM, Number.isInteger(obstacle.setbackM) ? 0 : 1);
    return [label(word("map.fire", { setback }), at, 13, ref)];
  });
  return [...dead, ...obstacles];
}

function label(item: TextItem, [x, y]: XY, away: number, ref: string): LabelWish {
  const size = TYPE.note;
  const places: LabelPlace[] = [
    { at: [x, y + away + size], anchor: "middle" },
    { at: [x, y - away - 4], anchor: "middle" },
    { at: [x, y + away + size * 2.2], anchor: "middle" },
    { at: [x + away + 4, y + 5], anchor: "start" },
    { at: [x - away - 4, y + 5], anchor: "end" },
    { at: [x - 10, y + away + size], anchor: "start" },
    { at: [x + 10, y + away + size], anchor: "end" },
    { at: [x - 10, y - away - 4], anchor: "start" },
    { at: [x + 10, y - away - 4], anchor: "end" },
  ];
  return { item, size, weight: 600, fill: "ink", places, needed: false, class: "ns-hazard-name", ref };
}
