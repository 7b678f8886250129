import type { Camp, MaterialCuts, Plan } from "@nightspan/core";
import {
  angleCardScene,
  cardsOnSheets,
  cutListScene,
  nightTimelineScene,
  emergencyCardScene,
  knotCardScene,
  tableSheets,
  campTables,
  cardsSheetScenes,
  leadersSheetScenes,
  mapSheetScene,
  pocketTables,
  pocketTableScene,
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
import { sheetCsv } from "./sheet-csv.ts";

/** Files of a plan. */
export interface Papers {
  readonly papers: readonly Paper[];
  /** What a reader should know of them: names that are written otherwise. */
  readonly remarks: readonly string[];
}

/**
 * The papers to print, as PDF: the map, cards and pocket tables four to a sheet, the leader's sheet, angle cards, and the
 * tables of the camp, these as CSV too where no list beside them is one.
 */
export async function pdfPapers(plan: Plan, camp: Camp): Promise<Papers> {
  const faces = await loadFaces();
  const { drawable, remarks } = drawableNames(camp, faces);
  const words = pdfWords(labels, drawable, faces);
  const paper = async ({ name, title, scenes, theme = THEMES["one-ink"] }: Printed): Promise<Paper> => {
    const whole = `${title}, ${drawable(camp.name)}`;
    return { name, content: await pdfOf(scenes, { title: whole, day: camp.date, theme, words, faces }) };
  };
  const papers: Paper[] = [];
  for (const one of printed(plan, camp, words)) if (one.scenes.length > 0) papers.push(await paper(one));
  for (const table of campTables(plan, camp).filter(({ name }) => !LISTED.includes(name))) {
    const plain = { labels, measure: words.measure };
    papers.push({ name: `sheets/${table.name}.csv`, content: sheetCsv(table, plain) });
  }
  return { papers, remarks };
}

/** What stands in lists of its own beside the papers. */
const LISTED = ["kit-list", "cord-cut-list"];

interface Printed {
  readonly name: string;
  readonly title: string;
  readonly scenes: readonly Scene[];
  readonly theme?: Theme;
}

function printed(plan: Plan, camp: Camp, words: Words): readonly Printed[] {
  const map = { name: "map.pdf", title: "Map", scenes: [mapPage(plan, camp, words)], theme: PAPER };
  const angles = cardsOnSheets(new Array<Scene>(4).fill(angleCardScene(camp.rules, words)), {
    name: "angle-cards",
    title: { word: "angle.title" },
  });
  const last = [
    { name: "angle-card.pdf", title: "Strap angle card", scenes: angles },
    { name: "a6/angle-card.pdf", title: "Strap angle card", scenes: [angleCardScene(camp.rules, words)] },
  ];
  if (plan.berths.length === 0) return [map, ...last];
  const names = namesOf(camp);
  const cards = cardsSheetScenes(plan, camp, { ...words, reasonOf: (berth) => cardReason(berth, names) });
  const tables = pocketTables(plan, camp).map((table) => pocketTableScene(table, words));
  return [
    map,
    { name: "cards.pdf", title: "Berth cards", scenes: cards },
    { name: "leaders-sheet.pdf", title: "Leader's sheet", scenes: leadersSheetScenes(plan, camp, words) },
    {
      name: "pocket-tables.pdf",
      title: "Pocket tables",
      scenes: cardsOnSheets(tables, { name: "pocket-tables", title: { word: "pocket.name" } }),
    },
    ...sheets(plan, camp, words),
    { name: "a6/pocket-tables.pdf", title: "Pocket tables", scenes: tables },
    ...last,
  ];
}

/** The papers that are tables, each with the drawing that belongs to it; and cards for everybody, four to a sheet. */
function sheets(plan: Plan, camp: Camp, words: Words): readonly Printed[] {
  const tables = campTables(plan, camp).map((table) => ({
    name: `sheets/${table.name}.pdf`,
    title: words.labels(table.title),
    scenes: [...tableSheets(table, words), ...drawingsOf(table.name, plan, camp, words)],
  }));
  return [
    ...tables,
    fourOf("emergency-card", "Emergency card", emergencyCardScene(plan, camp, words)),
    fourOf("knot-card", "Knots by place", knotCardScene(words)),
  ];
}

/** One card, four to a sheet. */
function fourOf(name: string, title: string, card: Scene): Printed {
  const about = { name: `${name}s`, title: card.title };
  return { name: `sheets/${name}.pdf`, title, scenes: cardsOnSheets(new Array<Scene>(4).fill(card), about) };
}

function drawingsOf(table: string, plan: Plan, camp: Camp, words: Words): readonly Scene[] {
  if (table === "timeline" && (plan.timeline ?? []).length > 0)
    return [nightTimelineScene(plan, camp, { words, widthPx: 1040 })];
  if (table !== "cord-cut-list" || plan.cuts === undefined) return [];
  return cutPages(plan, plan.cuts.materials, words);
}

/** An A4 upright, as wide as the cut list is drawn [px]. */
const CUT_PAGE = { width: 760, height: 1085 } as const;

/** Materials on as few sheets as hold them, each whole on its sheet. */
function cutPages(plan: Plan, materials: readonly MaterialCuts[], words: Words): readonly Scene[] {
  const drawn = (some: readonly MaterialCuts[]): Scene =>
    cutListScene({ ...plan, cuts: { materials: some } }, { words, widthPx: CUT_PAGE.width });
  const pages: MaterialCuts[][] = [];
  for (const material of materials) {
    const last = pages.at(-1);
    if (last !== undefined && drawn([...last, material]).size.height <= CUT_PAGE.height) last.push(material);
    else pages.push([material]);
  }
  return pages.map((page) => {
    const scene = drawn(page);
    return { ...scene, size: { ...scene.size, height: Math.max(scene.size.height, CUT_PAGE.height) } };
  });
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
