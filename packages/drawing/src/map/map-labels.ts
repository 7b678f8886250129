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

/** Places labels one after another, each at the first of its places that is free and on the paper. */
export function placeLabels(
  wishes: readonly LabelWish[],
  taken: TakenBoxes,
  paper: Box,
  words: Words,
): Item[] {
  return wishes.flatMap((wish): TextRunItem[] => {
    const width = words.measure(words.labels(wish.item), wish.size, wish.weight);
    const boxOf = (place: LabelPlace): Box => textBox(place, width, wish.size);
    const free = wish.places.find((place) => {
      const box = boxOf(place);
      return within(box, paper) && taken.isFree(box);
    });
    const place = free ?? (wish.needed ? wish.places.find((p) => within(boxOf(p), paper)) : undefined);
    if (place === undefined) return [];
    taken.take(boxOf(place));
    const { item, size, weight, fill, ref } = wish;
    const marks = { class: wish.class, ...(ref === undefined ? {} : { ref }) };
    return [text(item, place.at, { size, weight, anchor: place.anchor, fill, halo: "wood", ...marks })];
  });
}

function within(box: Box, paper: Box): boolean {
  return (
    box.left >= paper.left && box.right <= paper.right && box.top >= paper.top && box.bottom <= paper.bottom
  );
}
