import type { Camp, Plan, SleeperPacking } from "@nightspan/core";
import { TYPE } from "../colour/tokens.ts";
import { name, quantity, word } from "../scene/names.ts";
import type { Item, Scene } from "../scene/scene.ts";
import { box, stroke, text } from "../scene/shapes.ts";
import type { TextItem } from "../scene/text-item.ts";
import type { StoreOptions } from "./cut-list-scene.ts";

const EDGE = 16;
const ROW = 50;
const TOP = 34;
/** Shares of body weight that are ruled across. */
const RULED = [0.1, 0.2, 0.3] as const;

/**
 * What each person carries, one bar a person against shares of the body's weight. It tells people's weight to whoever can
 * divide: for the planner's own screen, never for paper or for a link.
 */
export function packingBarsScene(plan: Plan, camp: Camp, { widthPx }: Pick<StoreOptions, "widthPx">): Scene {
  const sleepers = plan.packing?.sleepers ?? [];
  const most = Math.max(0.32, ...sleepers.map(({ ofBodyRatio }) => ofBodyRatio));
  const xOf = (ratio: number): number => EDGE + (ratio / most) * (widthPx - 2 * EDGE);
  const height = TOP + sleepers.length * ROW + 12;
  const names = new Map(camp.sleepers.map((sleeper) => [sleeper.id, sleeper.name]));
  const rows = sleepers.flatMap((one, index) =>
    row(one, names.get(one.sleeper) ?? one.sleeper, TOP + index * ROW, xOf, widthPx),
  );
  const ruled = RULED.flatMap((ratio): Item[] => [
    stroke([xOf(ratio), TOP - 6, xOf(ratio), height - 8], {
      stroke: "rule",
      width: 1,
      dash: [3, 4],
      cap: "butt",
    }),
    text(quantity("share", ratio, 0), [xOf(ratio), TOP - 12], { size: TYPE.note, anchor: "middle" }),
  ]);
  return {
    name: "packing-bars",
    size: { width: widthPx, height, unit: "px" },
    title: word("packing.title", { camp: name(camp.name) }),
    desc: word("packing.desc"),
    ground: "paper",
    items: [...ruled, ...rows],
  };
}

function row(
  one: SleeperPacking,
  written: string,
  top: number,
  xOf: (ratio: number) => number,
  widthPx: number,
): Item[] {
  const width = xOf(one.ofBodyRatio) - EDGE;
  const bar = { fill: "cloth-tint", stroke: "cloth", width: 1.75, join: "miter" } as const;
  return [
    text(name(written), [EDGE, top + 16], {
      size: TYPE.note,
      weight: 700,
      halo: "paper",
      maxWidth: (widthPx - 2 * EDGE) * 0.4,
    }),
    text(massText(one), [widthPx - EDGE, top + 16], {
      size: TYPE.note,
      anchor: "end",
      halo: "paper",
      maxWidth: (widthPx - 2 * EDGE) * 0.58,
    }),
    box([EDGE, top + 23], Math.max(1, width), 14, bar),
  ];
}

function massText({ massKg, ofBodyRatio, unweighed }: SleeperPacking): TextItem {
  const said = { mass: quantity("mass", massKg, 1), share: quantity("share", ofBodyRatio, 0) };
  if (unweighed === 0) return word("packing.mass", said);
  return word("packing.mass-unweighed", { ...said, count: quantity("count", unweighed, 0) });
}
