import type { HouseRules } from "@nightspan/core";
import { dimension } from "../berth/dimension.ts";
import { TYPE_MM } from "../colour/tokens.ts";
import { quantity, word } from "../scene/names.ts";
import type { Item, Scene, XY } from "../scene/scene.ts";
import { group, line, stroke, text } from "../scene/shapes.ts";
import type { Words } from "../scene/text-item.ts";
import { wrapped } from "../scene/wrapped.ts";
import { ruler } from "./ruler.ts";
import { CARD_WIDE, EDGE } from "./card-size.ts";

export type AngleRules = Pick<HouseRules, "angleMinRad" | "angleMaxRad">;

/** The angles that are drawn: 30° carries a body's weight in each strap, 20° is beyond what houses allow. */
const ANGLES_DEG = [20, 25, 30, 35] as const;
const TARGET_DEG = 30;

/** One metre of run, drawn a tenth as long [mm]. */
const RUN = 100;
const NOTE = { size: TYPE_MM.note, weight: 500 } as const;

/**
 * A card to hold against a strap, A6 on its side: the upper left corner is where the strap leaves the bark, the upper
 * edge is level, and a line to fold along runs down at each angle.
 *
 *   rise = run × tan angle
 *
 * Units    millimetres; angles true, whatever the size it is printed at; a metre of run is a tenth as long
 */
export function angleCardScene(rules: AngleRules, words: Words): Scene {
  return {
    name: "angle-card",
    size: CARD_WIDE,
    title: word("angle.title"),
    desc: word("angle.desc"),
    ground: "paper",
    theme: "one-ink",
    items: [...rays(rules), ...riseLine(), ...heading(rules, words), ...howTo(words), ...scaleCheck()],
  };
}

function rays(rules: AngleRules): Item[] {
  return ANGLES_DEG.map((deg) => {
    const angle = (deg * Math.PI) / 180;
    const end = rayEnd(angle);
    const allowed = angle >= rules.angleMinRad.value - 1e-9 && angle <= rules.angleMaxRad.value + 1e-9;
    const ink = { stroke: "ink", width: deg === TARGET_DEG ? 0.9 : 0.4, cap: "butt" } as const;
    const dash = allowed ? {} : { dash: [2, 1.4] };
    return group([stroke([0, 0, end[0], end[1]], { ...ink, ...dash }), label(deg, angle)], {
      class: "ns-angle",
    });
  });
}

/** Where a line from the corner leaves the card. */
function rayEnd(angle: number): XY {
  const reach = Math.min(CARD_WIDE.width, CARD_WIDE.height / Math.tan(angle));
  return [reach, reach * Math.tan(angle)];
}

/** The angle in words, along its line. */
function label(deg: number, angle: number): Item {
  const size = deg === TARGET_DEG ? TYPE_MM.head : TYPE_MM.body;
  const said = text(quantity("angle", angle, 0), [LABEL_X / Math.cos(angle), -1.4], { size, weight: 700 });
  return group([said], { turnRad: angle });
}

/** Across from the corner, clear of the rises [mm]. */
const LABEL_X = 125;

/** Run along the upper edge, and the rise to each line in centimetres for a metre. */
function riseLine(): Item[] {
  const deepest = RUN * Math.tan((ANGLES_DEG[3] * Math.PI) / 180);
  const rises = ANGLES_DEG.flatMap((deg) => {
    const rise = RUN * Math.tan((deg * Math.PI) / 180);
    const target = deg === TARGET_DEG;
    return [
      stroke([RUN - 1.6, rise, RUN + 1.6, rise], { stroke: "ink", width: 0.5, cap: "butt" }),
      text(quantity("short-length", rise / RUN, 0), [RUN + 2.6, rise - 1], {
        size: target ? TYPE_MM.lead : TYPE_MM.body,
        weight: 700,
        halo: "paper",
      }),
    ];
  });
  return [
    line(
      [
        [RUN, 3],
        [RUN, deepest],
      ],
      { stroke: "ink", width: 0.25, cap: "butt" },
    ),
    dimension([0.4, 5], [RUN, 5], { width: 0.2, tick: 0.9 }),
    text(word("angle.run"), [RUN / 2, 9.4], { ...NOTE, weight: 600, anchor: "middle" }),
    ...rises,
  ];
}

/** In the corner above the flattest line. */
function heading({ angleMinRad, angleMaxRad }: AngleRules, words: Words): Item[] {
  const range = word("angle.range", {
    low: quantity("angle", angleMinRad.value, 0),
    high: quantity("angle", angleMaxRad.value, 0),
  });
  const right = CARD_WIDE.width - EDGE;
  const left = RUN + 3;
  const style = { ...NOTE, width: right - left, leading: TYPE_MM.note * 1.16 } as const;
  return [
    text(word("angle.name"), [left, 11], { size: TYPE_MM.head, weight: 700 }),
    ...wrapped(range, [left, 16.4], style, words).items,
  ];
}

/** Ten centimetres along the lower edge: a print that is not true to size is seen. */
function scaleCheck(): Item[] {
  const y = CARD_WIDE.height - EDGE - 4;
  return [...ruler(EDGE, y, 10), text(word("angle.scale"), [EDGE + 103, y + 3.2], NOTE)];
}

/** In the corner below the steepest line: how it is held. */
function howTo(words: Words): Item[] {
  const items: Item[] = [];
  let y = 57;
  for (const key of ["angle.hold", "angle.read", "angle.turn", "angle.caution"] as const) {
    // A line of text ends before the steepest line comes down to it.
    const width = (y - 6) / Math.tan((ANGLES_DEG[3] * Math.PI) / 180) - EDGE - 3;
    const set = wrapped(word(key), [EDGE, y], { ...NOTE, width, leading: TYPE_MM.note * 1.2 }, words);
    items.push(...set.items);
    y = set.bottom + 5.2;
  }
  return items;
}
