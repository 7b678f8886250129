import type { ColourToken } from "../colour/tokens.ts";
import type { Item, TextRunItem } from "../scene/scene.ts";
import { text } from "../scene/shapes.ts";
import type { TextItem, Weight, Words } from "../scene/text-item.ts";
import { textBox, type Box, type LabelPlace, type TakenBoxes } from "./label-placement.ts";

export interface LabelWish {
  readonly item: TextItem;
  readonly size: number;
  readonly weight: Weight;
  readonly fill: ColourToken;
  /** The best place first. */
  readonly places: readonly LabelPlace[];
  /** What may not be dropped is put at its best place when none is free. */
  readonly needed: boolean;
  readonly class: string;
  readonly ref?: string;
}

/** What labels keep off: always, and where they can. */
export interface KeepOff {
  readonly always: TakenBoxes;
  readonly ifPossible: TakenBoxes;
}

/** A longer label is cut [px]. */
const MOST_PX = 230;

/** Places labels one after another, each at the first of its places that is free and on the paper. */
export function placeLabels(
  wishes: readonly LabelWish[],
  { always, ifPossible }: KeepOff,
  paper: Box,
  words: Words,
): Item[] {
  return wishes.flatMap((wish): TextRunItem[] => {
    const width = Math.min(MOST_PX, words.measure(words.labels(wish.item), wish.size, wish.weight));
    const inside = wish.places
      .map((place) => ({ place, box: textBox(place, width, wish.size) }))
      .filter(({ box }) => within(box, paper));
    const free = inside.filter(({ box }) => always.isFree(box));
    const chosen =
      free.find(({ box }) => ifPossible.isFree(box)) ?? free[0] ?? (wish.needed ? inside[0] : undefined);
    if (chosen === undefined) return [];
    always.take(chosen.box);
    const { item, size, weight, fill, ref } = wish;
    const marks = { class: wish.class, ...(ref === undefined ? {} : { ref }) };
    const { at, anchor } = chosen.place;
    return [text(item, at, { size, weight, anchor, fill, halo: "wood", maxWidth: MOST_PX, ...marks })];
  });
}

function within(box: Box, paper: Box): boolean {
  return (
    box.left >= paper.left && box.right <= paper.right && box.top >= paper.top && box.bottom <= paper.bottom
  );
}
