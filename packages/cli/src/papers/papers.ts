import type { Camp, Plan } from "@nightspan/core";
import {
  berthScene,
  cardBackScene,
  cardScene,
  mapScene,
  renderSvg,
  type Measure,
  type Scene,
} from "@nightspan/drawing";
import { cardReason, labels, measure, namesOf, planFile, writePlan } from "@nightspan/edge";
import { cardSheets } from "./card-sheets.ts";
import type { Paper } from "./put-papers.ts";

/**
 * Files are shown in whatever type the reader's machine has, often broader than our own: text is laid out for the
 * broadest common one, so that nothing runs into its neighbour.
 */
const BROADER = 1.16;
const broad: Measure = (text, size, weight) => BROADER * measure(text, size, weight);
const WORDS = { labels, measure: broad };

/**
 * All files of a plan: the plan itself, the map, for each berth its side view and both sides of its card, and the
 * cards four to a sheet to print. What is drawn carries no weight and no pull; the plan file does.
 */
export function papersOf(plan: Plan, camp: Camp): readonly Paper[] {
  const digits = String(plan.berths.length).length;
  const names = namesOf(camp);
  const cards = plan.berths.map((berth) => {
    const { id } = berth;
    const reason = cardReason(berth, names);
    const options = reason === undefined ? WORDS : { ...WORDS, reason };
    return {
      number: id.padStart(digits, "0"),
      side: svg(berthScene(plan, camp, id, { words: WORDS, widthPx: 1100, pulls: false })),
      front: svg(cardScene(plan, camp, id, options)),
      back: svg(cardBackScene(plan, camp, id, options)),
    };
  });
  return [
    { name: "plan.json", content: writePlan(planFile(plan)) },
    { name: "map.svg", content: svg(mapScene(plan, camp, { words: WORDS, widthPx: 1400, heightPx: 1000 })) },
    ...cards.flatMap(({ number, side, front, back }) => [
      { name: `berths/berth-${number}.svg`, content: side },
      { name: `cards/berth-${number}-front.svg`, content: front },
      { name: `cards/berth-${number}-back.svg`, content: back },
    ]),
    ...(cards.length === 0 ? [] : [{ name: "cards.html", content: cardSheets(camp.name, cards) }]),
  ];
}

function svg(scene: Scene): string {
  return renderSvg(scene, { ...WORDS, standalone: true });
}
