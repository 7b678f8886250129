import type { Camp, Plan } from "@nightspan/core";
import {
  cardsSheetScenes,
  leadersSheetScenes,
  mapSheetScene,
  THEMES,
  type Scene,
  type Theme,
  type Words,
} from "@nightspan/drawing";
import { cardReason, labels, namesOf } from "@nightspan/edge";
import { drawableNames } from "../pdf/drawable-names.ts";
import { loadFaces } from "../pdf/faces.ts";
import { pdfOf } from "../pdf/pdf-of.ts";
import { pdfWords } from "../pdf/pdf-words.ts";
import type { Paper } from "./put-papers.ts";

/** Files of a plan. */
export interface Papers {
  readonly papers: readonly Paper[];
  /** What a reader should know of them: names that are written otherwise. */
  readonly remarks: readonly string[];
}

/** The papers to print, as PDF: the cards four to a sheet, the leader's sheet and the map. */
export async function pdfPapers(plan: Plan, camp: Camp): Promise<Papers> {
  const faces = await loadFaces();
  const { drawable, remarks } = drawableNames(camp, faces);
  const words = pdfWords(labels, drawable, faces);
  const paper = async (
    name: string,
    title: string,
    scenes: readonly Scene[],
    theme: Theme,
  ): Promise<Paper> => ({
    name,
    content: await pdfOf(scenes, {
      title: `${title}, ${drawable(camp.name)}`,
      day: camp.date,
      theme,
      words,
      faces,
    }),
  });
  const papers = [await paper("map.pdf", "Map", [mapPage(plan, camp, words)], PAPER)];
  if (plan.berths.length > 0) {
    const names = namesOf(camp);
    const cards = cardsSheetScenes(plan, camp, { ...words, reasonOf: (berth) => cardReason(berth, names) });
    papers.push(
      await paper("cards.pdf", "Berth cards", cards, THEMES["one-ink"]),
      await paper(
        "leaders-sheet.pdf",
        "Leader's sheet",
        leadersSheetScenes(plan, camp, words),
        THEMES["one-ink"],
      ),
    );
  }
  return { papers, remarks };
}

/** Paper is white: no ink is laid down for the ground. */
const PAPER: Theme = { ...THEMES.light, paper: "#FFFFFF", panel: "#FFFFFF", wood: "#FFFFFF" };

/** So many pixels across an A4 on its side that the least type on the map is nine points. */
const MAP_WIDTH_PX = 1240;
/** Height of the sheet over its width, within the white edge of an A4 on its side. */
const SHEET_SHARE = 194 / 281;

/** The map as a sheet that fills its paper: the map takes what the words above and below leave it. */
function mapPage(plan: Plan, camp: Camp, words: Words): Scene {
  const sheet = (heightPx: number): Scene =>
    mapSheetScene(plan, camp, { words, widthPx: MAP_WIDTH_PX, heightPx });
  const asked = MAP_WIDTH_PX * SHEET_SHARE;
  const over = sheet(asked).size.height - asked;
  return sheet(Math.max(asked / 3, asked - over));
}
