import type { Camp, Plan, PlannedBerth, PlanRepair } from "@nightspan/core";
import {
  angleCardScene,
  berthScene,
  cardBackScene,
  cardScene,
  cardsSheetScenes,
  leadersSheetScenes,
  mapSheetScene,
  renderSvg,
  type Scene,
  type Words,
} from "@nightspan/drawing";
import { cardReason, labels, measure, namesOf, planFile, planLists, writePlan } from "@nightspan/edge";
import { embeddedFaces } from "./embedded-faces.ts";
import { pdfPapers, type Papers } from "./pdf-papers.ts";
import { printPage } from "./print-page.ts";
import type { Paper } from "./put-papers.ts";

const WORDS: Words = { labels, measure };

/**
 * All files of a plan: the plan itself, with what it mends where it is a repair; the map; for each berth its side view
 * and both sides of its card; what is to be printed: cards and pocket tables four to a sheet, the leader's sheet, the map
 * and a card for strap angles; and lists, calendar and maps for other programs. What is drawn or listed carries no
 * weight of anybody and no pull; the plan file does.
 */
export async function papersOf(plan: Plan, camp: Camp, repair?: PlanRepair): Promise<Papers> {
  const { papers, remarks } = await pdfPapers(plan, camp);
  const map = mapSheetScene(plan, camp, { words: WORDS, widthPx: 1400, heightPx: 1000 });
  return {
    papers: [
      { name: "plan.json", content: writePlan(planFile(plan, repair)) },
      { name: "map.svg", content: svgFile(map) },
      ...(plan.berths.length === 0 ? [] : pages(plan, camp)),
      { name: "angle-card.svg", content: svgFile(angleCardScene(camp.rules, WORDS)) },
      ...papers,
      ...planLists(plan, camp),
      ...berthPapers(plan, camp),
    ],
    remarks,
  };
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
      { name: `berths/berth-${number}.svg`, content: svgFile(side) },
      { name: `cards/berth-${number}-front.svg`, content: svgFile(cardScene(plan, camp, id, options)) },
      { name: `cards/berth-${number}-back.svg`, content: svgFile(cardBackScene(plan, camp, id, options)) },
    ];
  });
}

function pages(plan: Plan, camp: Camp): readonly Paper[] {
  const names = namesOf(camp);
  const options = { ...WORDS, reasonOf: (berth: PlannedBerth) => cardReason(berth, names) };
  const cards = cardsSheetScenes(plan, camp, options).map(svg);
  const sheet = leadersSheetScenes(plan, camp, WORDS).map(svg);
  return [
    { name: "cards.html", content: printPage(`Berth cards, ${camp.name}`, "A4", cards) },
    { name: "leaders-sheet.html", content: printPage(`Leader's sheet, ${camp.name}`, "A4 landscape", sheet) },
  ];
}

function svg(scene: Scene): string {
  return renderSvg(scene, { ...WORDS, standalone: true });
}

/** A drawing that looks the same wherever it is opened: it carries its type. */
function svgFile(scene: Scene): string {
  return renderSvg(scene, { ...WORDS, standalone: true, fontFaces: embeddedFaces(svg(scene)) });
}
