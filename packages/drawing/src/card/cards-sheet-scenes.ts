import type { Camp, Plan } from "@nightspan/core";
import { name, word } from "../scene/names.ts";
import type { Item, Scene, XY } from "../scene/scene.ts";
import { group, line } from "../scene/shapes.ts";
import { cardBackScene } from "./card-back-scene.ts";
import { cardScene, type CardOptions } from "./card-scene.ts";
import { A4, CARD } from "./card-size.ts";

/** All cards, four to an A4: a sheet of fronts, then its backs mirrored for duplex by the long edge, and so on. */
export function cardsSheetScenes(plan: Plan, camp: Camp, options: CardOptions): Scene[] {
  const ids = plan.berths.map(({ id }) => id);
  const sheets: Scene[] = [];
  for (let first = 0; first < ids.length; first += 4) {
    const four = ids.slice(first, first + 4);
    sheets.push(
      sheet(
        four.map((id) => cardScene(plan, camp, id, options)),
        camp,
        "fronts",
      ),
      sheet(
        four.map((id) => cardBackScene(plan, camp, id, options)),
        camp,
        "backs",
      ),
    );
  }
  return sheets;
}

function sheet(cards: readonly Scene[], camp: Camp, side: "fronts" | "backs"): Scene {
  const placed = cards.map(({ items }, index): Item => {
    const column = side === "fronts" ? index % 2 : 1 - (index % 2);
    const row = Math.floor(index / 2);
    return group(items, { move: [column * CARD.width, row * (CARD.height + 1)], class: "ns-card-on-sheet" });
  });
  return {
    name: `cards-${side}`,
    size: A4,
    title: word("card.sheet-title", { camp: name(camp.name) }),
    desc: word("card.sheet-desc"),
    ground: "paper",
    theme: "one-ink",
    items: [...placed, cutMarks()],
  };
}

/** Short strokes at the edges and a cross in the middle, outside the cards' own edges. */
function cutMarks(): Item {
  const [x, y] = [A4.width / 2, A4.height / 2];
  const ink = { stroke: "ink", width: 0.2, cap: "butt" } as const;
  const strokes: readonly (readonly [XY, XY])[] = [
    [
      [x, 0],
      [x, 4],
    ],
    [
      [x, A4.height],
      [x, A4.height - 4],
    ],
    [
      [0, y],
      [4, y],
    ],
    [
      [A4.width, y],
      [A4.width - 4, y],
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
