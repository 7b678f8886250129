import type { Bottleneck, Knot } from "@nightspan/core";
import { LINE, TYPE } from "../colour/tokens.ts";
import { quantity, word } from "../scene/names.ts";
import type { Item, XY } from "../scene/scene.ts";
import { group, line } from "../scene/shapes.ts";
import { boxAround, placesRound, type Box } from "./label-placement.ts";
import type { LabelWish } from "./map-labels.ts";

/** Where a stem lies on the paper. */
export interface StemPlace {
  readonly px: XY;
  readonly r: number;
}

/** A longer list of pairs than this is no picture. */
const MOST_PAIRS = 40;

/** Knots with more pairs than can be used at once, and few enough to be seen. */
function crowded({ knots }: Bottleneck): readonly Knot[] {
  return knots.filter(({ pairs, most }) => pairs.length > most && pairs.length <= MOST_PAIRS);
}

/** The pairs of each knot as dotted lines: under everything, for they are only what might be. */
export function knotLines(bottleneck: Bottleneck, stems: ReadonlyMap<string, StemPlace>): Item[] {
  return crowded(bottleneck).map(({ pairs }) => {
    const lines = pairs.flatMap(([first, second]): Item[] => {
      const [from, to] = [stems.get(first)?.px, stems.get(second)?.px];
      return from === undefined || to === undefined ? [] : [line([from, to])];
    });
    const dotted = { stroke: "ink", width: LINE.form * 2, dash: [1.5, 5], cap: "butt" } as const;
    return group(lines, { class: "ns-knot", ...dotted });
  });
}

/** Each tree that limits, pinched from above and below. */
export function limitMarks({ trees }: Bottleneck, stems: ReadonlyMap<string, StemPlace>): Item[] {
  return trees.flatMap((id): Item[] => {
    const stem = stems.get(id);
    return stem === undefined ? [] : [pinch(stem.px, stem.r, `tree/${id}`)];
  });
}

/** Half the height of such a mark beyond the stem [px]. */
const ARM = 6;
const OFF = 3;

/** Room of the marks, which labels keep off. */
export function limitBoxes({ trees }: Bottleneck, stems: ReadonlyMap<string, StemPlace>): Box[] {
  return trees.flatMap((id) => {
    const stem = stems.get(id);
    return stem === undefined ? [] : [boxAround(stem.px, ARM + 2, stem.r + OFF + ARM + 2)];
  });
}

/** Two angles that point at a stem from above and below: the neck of a bottle. */
export function pinch([x, y]: XY, r: number, ref?: string): Item {
  const side = (way: -1 | 1): Item => {
    const tip = y + way * (r + OFF);
    return line(
      [
        [x - ARM, tip + way * ARM],
        [x, tip],
        [x + ARM, tip + way * ARM],
      ],
      { stroke: "ink", width: 2.5, cap: "butt", join: "miter" },
    );
  };
  return group([side(-1), side(1)], { class: "ns-limits", ...(ref === undefined ? {} : { ref }) });
}

/** How many of a knot's pairs can be used at once, in its middle; of a tree only close to it, lest it be taken for something else. */
export function knotLabels(bottleneck: Bottleneck, stems: ReadonlyMap<string, StemPlace>): LabelWish[] {
  return crowded(bottleneck).flatMap(({ pairs, trees, most }): LabelWish[] => {
    const places = [...new Set(trees.length === 1 ? trees : pairs.flat())].flatMap((id) => {
      const stem = stems.get(id);
      return stem === undefined ? [] : [stem.px];
    });
    if (places.length === 0) return [];
    const middle: XY = [mean(places.map(([x]) => x)), mean(places.map(([, y]) => y))];
    const counts = { most: quantity("count", most, 0), pairs: quantity("count", pairs.length, 0) };
    return [
      {
        item: word("map.knot", counts),
        size: TYPE.note,
        weight: 600,
        fill: "ink",
        places: (trees.length === 1 ? [12, 20] : [12, 20, 34, 56]).flatMap((away) =>
          placesRound(middle, away, TYPE.note),
        ),
        needed: false,
        class: "ns-knot-words",
      },
    ];
  });
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
