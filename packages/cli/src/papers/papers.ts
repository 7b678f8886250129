import type { Camp, Plan } from "@nightspan/core";
import {
  berthScene,
  cardBackScene,
  cardScene,
  cardsSheetScenes,
  leadersSheetScenes,
  mapSheetScene,
  renderSvg,
  type Measure,
  type Scene,
} from "@nightspan/drawing";
import { cardReason, labels, measure, namesOf, planFile, writePlan } from "@nightspan/edge";
import { printPage } from "./print-page.ts";
import type { Paper } from "./put-papers.ts";

/**
 * Files are shown in whatever type the reader's machine has, often broader than our own: text is laid out for the
 * broadest common one, so that nothing runs into its neighbour.
 */
const BROADER = 1.16;
const broad: Measure = (text, size, weight) => BROADER * measure(text, size, weight);
const WORDS = { labels, measure: broad };

/**
 * All files of a plan: the plan itself, the map, for each berth its side view and both sides of its card, and two pages
 * to print: the cards four to a sheet, and the leader's sheet. What is drawn carries no weight and no pull; the plan
 * file does.
 */
export function papersOf(plan: Plan, camp: Camp): readonly Paper[] {
  return [
    { name: "plan.json", content: writePlan(planFile(plan)) },
    {
      name: "map.svg",
      content: svg(mapSheetScene(plan, camp, { words: WORDS, widthPx: 1400, heightPx: 1000 })),
    },
    ...berthPapers(plan, camp),
    ...(plan.berths.length === 0 ? [] : pages(plan, camp)),
  ];
}

function berthPapers(plan: Plan, camp: Camp): readonly Paper[] {
  const names = namesOf(camp);
  const digits = String(plan.berths.length).length;
  return plan.berths.flatMap((berth) => {
    const { id } = berth;
    const number = id.padStart(digits, "0");
    const reason = cardReason(berth, names);
    const options = reason === undefined ? WORDS : { ...WORDS, reason };
    const side = berthScene(plan, camp, id, { words: WORDS, widthPx: 1100, pulls: false });
    return [
      { name: `berths/berth-${number}.svg`, content: svg(side) },
      { name: `cards/berth-${number}-front.svg`, content: svg(cardScene(plan, camp, id, options)) },
      { name: `cards/berth-${number}-back.svg`, content: svg(cardBackScene(plan, camp, id, options)) },
    ];
  });
}

function pages(plan: Plan, camp: Camp): readonly Paper[] {
  const cards = cardsSheetScenes(plan, camp, WORDS).map(svg);
  const sheet = leadersSheetScenes(plan, camp, WORDS).map(svg);
  return [
    { name: "cards.html", content: printPage(`Berth cards, ${camp.name}`, "A4", cards) },
    { name: "leaders-sheet.html", content: printPage(`Leader's sheet, ${camp.name}`, "A4 landscape", sheet) },
  ];
}

function svg(scene: Scene): string {
  return renderSvg(scene, { ...WORDS, standalone: true });
}
