import { CAUTION_KEYS, DEFER_KEYS, type Camp, type Plan, type RobustCount } from "@nightspan/core";
import { allLookedAtText, listed, notCheckedText, sentences } from "../card/card-words.ts";
import { TYPE } from "../colour/tokens.ts";
import { verdictPlateItem } from "../figure/verdict-plate.ts";
import { name, quantity, word } from "../scene/names.ts";
import type { Item, Scene } from "../scene/scene.ts";
import { box, group, line, stroke, text } from "../scene/shapes.ts";
import type { TextItem, Words } from "../scene/text-item.ts";
import { wrapped } from "../scene/wrapped.ts";
import { berthList, berthListWidth } from "./berth-list.ts";
import { mapScene, type MapOptions } from "./map-scene.ts";

const HEAD = 76;
const EDGE = 16;

/**
 * The map as a sheet of its own: camp, day and verdict above, what was looked at and every caution below; on a broad
 * sheet the names stand in a list beside the map instead of on it.
 */
export function mapSheetScene(plan: Plan, camp: Camp, options: MapOptions): Scene {
  const { map, beside } = mapAndNames(plan, camp, options);
  const foot = footer(plan, camp, map.size.height + HEAD, options);
  return {
    ...map,
    name: "map-sheet",
    size: { ...map.size, width: options.widthPx, height: foot.bottom + EDGE },
    ground: "paper",
    items: [
      group([box([0, 0], map.size.width, map.size.height, { fill: map.ground }), ...map.items], {
        move: [0, HEAD],
      }),
      ...beside,
      ...header(plan, camp, options),
      ...foot.items,
    ],
  };
}

interface MapAndNames {
  readonly map: Scene;
  /** The list of names, where there is room for one. */
  readonly beside: readonly Item[];
}

function mapAndNames(plan: Plan, camp: Camp, options: MapOptions): MapAndNames {
  const { widthPx } = options;
  const count = plan.berths.length;
  const guess = berthListWidth(count, options.heightPx ?? 0.6 * widthPx, widthPx);
  if (guess !== undefined && widthPx >= BROAD_PX) {
    const narrower = { ...options, widthPx: widthPx - guess, lookedAt: false, names: false };
    const map = mapScene(plan, camp, narrower);
    const { width, height } = map.size;
    if ((berthListWidth(count, height, widthPx) ?? Infinity) <= guess) {
      const names = new Map(camp.sleepers.map(({ id, name: written }) => [id, written]));
      const berths = plan.berths.map(({ id, sleeper, verdict }) => {
        return { id, sleeper: names.get(sleeper) ?? sleeper, verdict };
      });
      const panel = box([width, HEAD], guess, height, { fill: "paper" });
      const edge = stroke([width, HEAD, width, HEAD + height], { stroke: "ink", width: 1.5 });
      return { map, beside: [panel, edge, berthList(berths, width, HEAD, height)] };
    }
  }
  return { map: mapScene(plan, camp, { ...options, lookedAt: false }), beside: [] };
}

/** Narrower sheets have the names on the map alone [px]. */
const BROAD_PX = 900;

/** Camp and day at the left, the verdict in plate and word at the right, over one rule. */
function header(plan: Plan, camp: Camp, { words, widthPx }: MapOptions): Item[] {
  const said = word(`verdict.${plan.verdict}`);
  const wide = words.measure(words.labels(said), TYPE.lead, 700);
  const right = widthPx - EDGE;
  const facts: TextItem[] = [
    ...(camp.date === undefined ? [] : [{ day: camp.date, style: "with-weekday" } as const]),
    word("leaders.placed", {
      placed: quantity("count", plan.placed, 0),
      asked: quantity("count", plan.asked, 0),
    }),
  ];
  const room = right - wide - 84 - EDGE;
  return [
    // A little over the edge, so that nothing beneath shows as a hair along it.
    box([0, -3], widthPx, HEAD + 3, { fill: "paper" }),
    text(name(camp.name), [EDGE, 36], { size: TYPE.head, weight: 700, maxWidth: room }),
    text(listed(facts), [EDGE, 60], { size: TYPE.note, fill: "soft", maxWidth: room }),
    verdictPlateItem(plan.verdict, [right - wide - 38, 38], 32),
    text(said, [right, 45], { size: TYPE.lead, weight: 700, anchor: "end" }),
    line(
      [
        [0, HEAD],
        [widthPx, HEAD],
      ],
      { stroke: "ink", width: 1.5 },
    ),
  ];
}

function footer(
  plan: Plan,
  camp: Camp,
  top: number,
  { words, widthPx }: MapOptions,
): { items: Item[]; bottom: number } {
  const unchecked = notCheckedText(plan.notChecked);
  const texts: readonly (readonly [TextItem, 600 | 500])[] = [
    [sentencesOf([allLookedAtText(plan, camp), ...(unchecked === undefined ? [] : [unchecked])]), 600],
    ...(plan.robust === undefined ? [] : [[robustText(plan.robust), 500] as const]),
    [sentences(CAUTION_KEYS.map((key) => word(`caution.${key}`))), 500],
    [word("defer.all", { who: listed(DEFER_KEYS.map((key) => word(`defer.${key}`))) }), 500],
  ];
  let y = top + 24;
  const items: Item[] = [
    box([0, top], widthPx, 400, { fill: "paper" }),
    line(
      [
        [0, top],
        [widthPx, top],
      ],
      { stroke: "ink", width: 1.5 },
    ),
  ];
  for (const [item, weight] of texts) {
    const set = paragraph(item, y, weight, widthPx, words);
    items.push(group(set.items, { class: "ns-cautions" }));
    y = set.bottom + 26;
  }
  return { items, bottom: y - 26 };
}

/** What positions that are off would do to the number who have a berth. */
function robustText({ errorM, placed }: RobustCount): TextItem {
  const error = quantity("length", errorM, 2);
  if (placed === 0) return word("map.robust-none", { error });
  return word("map.robust", { error, placed: quantity("count", placed, 0) });
}

function sentencesOf([first, second]: readonly TextItem[]): TextItem {
  if (first === undefined || second === undefined) return first ?? { said: "" };
  return word("card.looked-and-not-checked", { looked: first, unchecked: second });
}

function paragraph(item: TextItem, y: number, weight: 500 | 600, widthPx: number, words: Words) {
  return wrapped(item, [EDGE, y], { size: TYPE.note, weight, width: widthPx - 2 * EDGE, leading: 21 }, words);
}
