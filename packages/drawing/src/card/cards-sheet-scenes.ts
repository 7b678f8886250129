import type { Camp, Plan, PlannedBerth } from "@nightspan/core";
import { name, word } from "../scene/names.ts";
import type { Item, Scene, SceneSize, XY } from "../scene/scene.ts";
import { group, line } from "../scene/shapes.ts";
import type { Words } from "../scene/text-item.ts";
import { cardBackScene } from "./card-back-scene.ts";
import { cardScene, type CardOptions } from "./card-scene.ts";
import { A4, A4_WIDE, CARD } from "./card-size.ts";

export interface CardsSheetOptions extends Words {
  /** Why a berth's verdict is not clear, in a few words, where something else than an unseen tree is the reason. */
  readonly reasonOf?: (berth: PlannedBerth) => string | undefined;
}

/** All cards, four to an A4: a sheet of fronts, then its backs mirrored for duplex by the long edge, and so on. */
export function cardsSheetScenes(plan: Plan, camp: Camp, options: CardsSheetOptions): Scene[] {
  const front = (berth: PlannedBerth): Scene =>
    cardScene(plan, camp, berth.id, withReason(options, options.reasonOf?.(berth)));
  const sheets: Scene[] = [];
  for (let first = 0; first < plan.berths.length; first += 4) {
    const four = plan.berths.slice(first, first + 4);
    const backs = four.map(({ id }) => cardBackScene(plan, camp, id, options));
    sheets.push(sheet(four.map(front), camp, "fronts"), sheet(backs, camp, "backs"));
  }
  return sheets;
}

/** Cards of one size, four to an A4 with cut marks, one side only. */
export function cardsOnSheets(cards: readonly Scene[], about: Pick<Scene, "name" | "title">): Scene[] {
  const sheets: Scene[] = [];
  for (let first = 0; first < cards.length; first += 4)
    sheets.push(fourUp(cards.slice(first, first + 4), about, false));
  return sheets;
}

/** Up to four cards of one size; mirrored, they fall on their fronts when the sheet is turned over its long edge. */
function fourUp(cards: readonly Scene[], about: Pick<Scene, "name" | "title">, mirrored: boolean): Scene {
  const { width, height } = cards[0]?.size ?? CARD;
  const size = width > height ? A4_WIDE : A4;
  const step = [size.width - width, size.height - height] as const;
  const placed = cards.map(({ items }, index): Item => {
    const column = mirrored ? 1 - (index % 2) : index % 2;
    const move = [column * step[0], Math.floor(index / 2) * step[1]] as const;
    return group(items, { move, class: "ns-card-on-sheet" });
  });
  return {
    ...about,
    size,
    desc: word("card.sheet-desc"),
    ground: "paper",
    theme: "one-ink",
    items: [...placed, cutMarks(size)],
  };
}

function withReason({ labels, measure }: Words, reason: string | undefined): CardOptions {
  return reason === undefined ? { labels, measure } : { labels, measure, reason };
}

function sheet(cards: readonly Scene[], camp: Camp, side: "fronts" | "backs"): Scene {
  const title = word("card.sheet-title", { camp: name(camp.name) });
  return fourUp(cards, { name: `cards-${side}`, title }, side === "backs");
}

/** Short strokes at the edges and a cross in the middle, outside the cards' own edges. */
function cutMarks({ width, height }: SceneSize): Item {
  const [x, y] = [width / 2, height / 2];
  const ink = { stroke: "ink", width: 0.2, cap: "butt" } as const;
  const strokes: readonly (readonly [XY, XY])[] = [
    [
      [x, 0],
      [x, 4],
    ],
    [
      [x, height],
      [x, height - 4],
    ],
    [
      [0, y],
      [4, y],
    ],
    [
      [width, y],
      [width - 4, y],
    ],
    [
      [x - 3, y],
      [x + 3, y],
    ],
    [
      [x, y - 3],
      [x, y + 3],
    ],
  ];
  return group(
    strokes.map((ends) => line(ends, ink)),
    { class: "ns-cut-marks" },
  );
}
