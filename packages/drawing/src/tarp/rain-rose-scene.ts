import type { Camp, Plan, RoseSpoke } from "@nightspan/core";
import { TYPE } from "../colour/tokens.ts";
import { berthLeaf } from "../map/berth-symbols.ts";
import { name, quantity, word } from "../scene/names.ts";
import type { Item, Scene, XY } from "../scene/scene.ts";
import { circle, group, line, polygon, text } from "../scene/shapes.ts";
import type { TextItem } from "../scene/text-item.ts";

export interface RoseOptions {
  readonly widthPx: number;
}

/** Water on hammock, sleeper and under layer together [m³/s]. */
export function wetSum({ wet }: RoseSpoke): number {
  return wet.hammockM3S + wet.sleeperM3S + wet.underM3S;
}

/** Less than this is told as dry: a millilitre in an hour [m³/s]. */
export const DRY_M3S = 1 / 3.6e9;

/**
 * How much water reaches a berth for each direction the wind may come from: a petal towards that direction, as long as
 * the water is much; the berth in the middle lies as it does on the ground. North is up where the bearing is known, else
 * the head is.
 */
export function rainRoseScene(plan: Plan, camp: Camp, berthId: string, { widthPx }: RoseOptions): Scene {
  const berth = plan.berths.find(({ id }) => id === berthId);
  const spokes = berth?.tarp?.rose ?? [];
  const most = Math.max(0, ...spokes.map(wetSum));
  const heightPx = Math.min(widthPx, 420) + 40;
  const centre: XY = [widthPx / 2, (heightPx - 40) / 2 + 8];
  const r = Math.min(widthPx, heightPx - 40) / 2 - 34;
  const bearing = berth?.bearingRad;
  const dry = most < DRY_M3S;
  const told = quantity("flow", most, 0);
  const windRad = bearing === undefined ? undefined : camp.night?.windFromRad;
  return {
    name: "rain-rose",
    size: { width: widthPx, height: heightPx, unit: "px" },
    title: word("rose.title", { berth: name(berthId) }),
    desc: dry ? word("rose.dry") : word("rose.desc", { most: told }),
    ground: "paper",
    items: [
      ...rings(centre, r),
      ...(dry ? [] : petals(spokes, centre, r, most)),
      leaf(centre, bearing ?? Math.PI, r * 0.2),
      ...directionNames(centre, r, bearing !== undefined),
      ...(windRad === undefined ? [] : [windFrom(centre, r, windRad)]),
      text(dry ? word("rose.dry") : word("rose.most", { most: told }), [widthPx / 2, heightPx - 12], {
        size: TYPE.note,
        weight: 600,
        anchor: "middle",
        maxWidth: widthPx - 16,
      }),
    ],
  };
}

function at([x, y]: XY, r: number, bearing: number): XY {
  return [x + r * Math.sin(bearing), y - r * Math.cos(bearing)];
}

function rings(centre: XY, r: number): Item[] {
  return [0.5, 1].map((share) =>
    circle(centre, r * share, {
      fill: "none",
      stroke: "rule",
      width: 1,
      ...(share < 1 ? { dash: [3, 4] } : {}),
    }),
  );
}

/** Petals as wedges, a little apart so that each is seen. */
function petals(spokes: readonly RoseSpoke[], centre: XY, r: number, most: number): Item[] {
  const half = (0.8 * Math.PI) / Math.max(3, spokes.length);
  return spokes.flatMap((spoke): Item[] => {
    const share = wetSum(spoke) / most;
    if (!(share > 0.01)) return [];
    const from = spoke.windFromRad;
    const arc = [-1, -0.5, 0, 0.5, 1].map((part) => at(centre, r * share, from + half * part));
    return [
      polygon([centre, ...arc], {
        fill: "water-tint",
        stroke: "water",
        width: 1.75,
        join: "round",
        class: "ns-petal",
      }),
    ];
  });
}

/** The hammock from above, lying as it does; the head is the half-round. */
function leaf(centre: XY, bearing: number, half: number): Item {
  const ends = { head: at(centre, -half, bearing), foot: at(centre, half, bearing), cloth: [0, 1] as const };
  return group([circle(centre, half * 1.15, { fill: "paper" }), berthLeaf(ends, half * 0.55)]);
}

function directionNames(centre: XY, r: number, northUp: boolean): Item[] {
  const said: readonly (readonly [number, TextItem])[] = northUp
    ? [[0, word("rose.north")]]
    : [
        [0, word("rose.head")],
        [Math.PI, word("rose.foot")],
      ];
  return said.map(([bearing, item]) => {
    const [x, y] = at(centre, r + 16, bearing);
    return text(item, [x, y + 5], { size: TYPE.note, weight: 700, anchor: "middle" });
  });
}

/** An arrow inward at the rim: tonight's wind. */
function windFrom(centre: XY, r: number, from: number): Item {
  const [tip, tail] = [at(centre, r + 4, from), at(centre, r + 28, from)];
  const wing = (turn: number): XY => at(tip, 11, from + turn);
  return group(
    [
      line([tail, tip], { stroke: "ink", width: 2.5, cap: "butt" }),
      line([wing(0.5), tip, wing(-0.5)], { stroke: "ink", width: 2.5 }),
    ],
    { class: "ns-wind", title: word("rose.tonight") },
  );
}
