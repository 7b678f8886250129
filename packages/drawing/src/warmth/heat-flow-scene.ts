import type { BalanceWarmth, Plan, WarmthHalf } from "@nightspan/core";
import { TYPE } from "../colour/tokens.ts";
import { smoothLine } from "../map/smooth-line.ts";
import { name, quantity, word } from "../scene/names.ts";
import type { Item, Scene, XY } from "../scene/scene.ts";
import { circle, group, path, polygon, text } from "../scene/shapes.ts";
import type { TextItem } from "../scene/text-item.ts";
import type { RoseOptions } from "../tarp/rain-rose-scene.ts";
import { halfText } from "./warmth-words.ts";

export interface HeatFlowOptions extends RoseOptions {
  /** The heat itself beside its words, behind "why"; never of somebody under 16. */
  readonly figures?: boolean;
}

const HEIGHT = 300;

/**
 * Where a sleeper's warmth goes: the body in the cloth, what lies over and under it, and arrows up and down as wide as
 * the heat that leaves on each side in the coldest hour. Under 16 the arrows are of one width: no balance is valid there.
 */
export function heatFlowScene(plan: Plan, berthId: string, { widthPx, figures }: HeatFlowOptions): Scene {
  const warmth = plan.berths.find(({ id }) => id === berthId)?.warmth;
  const flows = warmth?.by === "balance" ? warmth : undefined;
  const centre = widthPx / 2;
  const half = Math.min(widthPx / 2 - 20, 210);
  const said = (side: WarmthHalf): TextItem => {
    if (warmth === undefined) return word("warmth.not-checked");
    if (flows === undefined || figures !== true) return halfText(warmth, side);
    const heat = quantity("heat", side === "over" ? flows.topWM2 : flows.bottomWM2, 0);
    return word("warmth.flow", { half: halfText(warmth, side), heat });
  };
  return {
    name: "heat-flow",
    size: { width: widthPx, height: HEIGHT, unit: "px" },
    title: word("warmth.flows-title", { berth: name(berthId) }),
    desc:
      warmth === undefined
        ? word("warmth.not-checked")
        : word("warmth.flows-desc", {
            under: word(`warmth.${warmth.under.enough}`),
            over: word(`warmth.${warmth.over.enough}`),
          }),
    ground: "paper",
    items: [
      ...layer(centre, half, "over", warmth?.over.item !== undefined),
      ...layer(centre, half, "under", warmth?.under.item !== undefined),
      cloth(centre, half),
      ...body(centre, half),
      ...(warmth === undefined ? [] : arrows(centre, half, flows)),
      text(said("over"), [centre, 24], { ...LABEL, maxWidth: widthPx - 20 }),
      text(said("under"), [centre, HEIGHT - 14], { ...LABEL, maxWidth: widthPx - 20 }),
    ],
  };
}

const LABEL = { size: TYPE.note, weight: 700, anchor: "middle" } as const;
/** Lowest cloth on the paper, and how deep it hangs [px]. */
const CLOTH_Y = 178;
const SAG = 46;

/** Height of the cloth: a shallow bow, lowest in the middle. */
function clothY(x: number, centre: number, half: number): number {
  return CLOTH_Y - SAG * ((x - centre) / half) ** 2;
}

function bow(centre: number, half: number, off: number, reach = 1): XY[] {
  return Array.from({ length: 17 }, (_, index): XY => {
    const x = centre + half * reach * (index / 8 - 1);
    return [x, clothY(x, centre, half) + off];
  });
}

function cloth(centre: number, half: number): Item {
  return path(smoothLine(bow(centre, half, 0)), {
    fill: "none",
    stroke: "cloth",
    width: 3.5,
    class: "ns-cloth",
  });
}

/** A layer as a quilted band: over the body, or below the cloth; only its dashed edge where there is none. */
function layer(centre: number, half: number, side: WarmthHalf, there: boolean): Item[] {
  const [from, to] = side === "over" ? [-46, -64] : [4, 20];
  const band = [...bow(centre, half, from, 0.78), ...bow(centre, half, to, 0.78).reverse()];
  const dashed = { fill: "none", stroke: "rule", width: 1.25, dash: [4, 4], cap: "butt" } as const;
  if (!there) return [polygon(band, { ...dashed, class: `ns-layer ns-no-${side}` })];
  const seams = [-0.6, -0.3, 0, 0.3, 0.6].map((share): Item => {
    const x = centre + half * share;
    const y = clothY(x, centre, half);
    return path(
      [
        ["M", x, y + from],
        ["L", x, y + to],
      ],
      { fill: "none", stroke: "ink", width: 1.25, cap: "butt" },
    );
  });
  return [
    group([polygon(band, { fill: "cloth-tint", stroke: "ink", width: 1.75, join: "round" }), ...seams], {
      class: `ns-layer ns-${side}`,
    }),
  ];
}

function body(centre: number, half: number): Item[] {
  const top = bow(centre, half, -38, 0.44);
  const under = bow(centre, half, -4, 0.62).reverse();
  const headX = centre - half * 0.6;
  return [
    group(
      [
        path(smoothLine([...top, ...under], true), { fill: "ink" }),
        circle([headX, clothY(headX, centre, half) - 19], 17, { fill: "ink" }),
      ],
      { class: "ns-sleeper" },
    ),
  ];
}

/** Three arrows each way, as wide as the heat is much. */
function arrows(centre: number, half: number, flows: BalanceWarmth | undefined): Item[] {
  const most = flows === undefined ? 1 : Math.max(1, flows.topWM2, flows.bottomWM2);
  const width = (watts: number | undefined): number => 4 + 18 * (watts === undefined ? 0.3 : watts / most);
  const each = (side: WarmthHalf, thick: number): Item[] =>
    [-0.36, 0, 0.36].map((share) => {
      const x = centre + half * share;
      const y = clothY(x, centre, half);
      return side === "over" ? arrow(x, y - 68, -1, thick) : arrow(x, y + 24, 1, thick);
    });
  return [...each("over", width(flows?.topWM2)), ...each("under", width(flows?.bottomWM2))];
}

const REACH = 44;

function arrow(x: number, y: number, way: -1 | 1, thick: number): Item {
  const [shaft, wing] = [thick / 2, thick / 2 + 6];
  const neck = y + way * (REACH - wing * 1.2);
  return polygon(
    [
      [x - shaft, y],
      [x - shaft, neck],
      [x - wing, neck],
      [x, y + way * REACH],
      [x + wing, neck],
      [x + shaft, neck],
      [x + shaft, y],
    ],
    { fill: "strap", stroke: "ink", width: 1.25, join: "miter", class: "ns-heat" },
  );
}
