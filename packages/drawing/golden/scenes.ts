import { harrowmere } from "../src/fixture/harrowmere.fixture.ts";
import { planByHand, type Wanted } from "../src/fixture/plan-by-hand.fixture.ts";
import {
  berthScene,
  cardBackScene,
  cardScene,
  mapScene,
  beadSpan,
  cardsSheetScenes,
  leadersSheetScenes,
  markFigure,
  doorPicture,
  plainLabels,
  plainMeasure,
  type Scene,
  type ThemeName,
} from "../src/index.ts";

export interface GoldenScene {
  readonly name: string;
  readonly theme: ThemeName;
  readonly draw: () => Scene;
}

const words = { labels: plainLabels, measure: plainMeasure };

const EIGHT: readonly Wanted[] = [
  ["lucja", "A3", "A5"],
  ["nira", "A8", "A9"],
  ["nur", "B1", "B4"],
  ["soren", "B6", "B7"],
  ["li", "C2", "C4"],
  ["olga", "D1", "D3"],
  ["ngozi", "K11", "K12"],
  ["tomas", "D6", "D7"],
];

const camp = harrowmere();
const plan = planByHand(camp, EIGHT);

export const scenes: readonly GoldenScene[] = [
  {
    name: "map-desktop",
    theme: "light",
    draw: () => mapScene(plan, camp, { words, widthPx: 1050, selected: "7", refused: [["R14", "R15"]] }),
  },
  {
    name: "map-phone",
    theme: "light",
    draw: () => mapScene(plan, camp, { words, widthPx: 390, heightPx: 500, selected: "7" }),
  },
  {
    name: "map-phone-near",
    theme: "light",
    draw: () =>
      mapScene(plan, camp, {
        words,
        widthPx: 390,
        heightPx: 500,
        selected: "7",
        pxPerM: 26,
        centreM: [21, 10],
        legend: false,
      }),
  },
  {
    name: "map-far",
    theme: "light",
    draw: () => mapScene(plan, camp, { words, widthPx: 390, heightPx: 300, pxPerM: 5 }),
  },
  { name: "berth-desktop", theme: "light", draw: () => berthScene(plan, camp, "7", { words, widthPx: 960 }) },
  { name: "berth-phone", theme: "light", draw: () => berthScene(plan, camp, "7", { words, widthPx: 390 }) },
  { name: "card-front", theme: "one-ink", draw: () => cardScene(plan, camp, "4", words) },
  { name: "card-front-look-again", theme: "one-ink", draw: () => cardScene(plan, camp, "7", words) },
  { name: "card-back", theme: "one-ink", draw: () => cardBackScene(plan, camp, "4", words) },
  { name: "cards-sheet", theme: "one-ink", draw: () => cardsSheetScenes(plan, camp, words)[0] as Scene },
  { name: "leaders-sheet", theme: "one-ink", draw: () => leadersSheetScenes(plan, camp, words)[0] as Scene },
  { name: "mark", theme: "light", draw: () => markFigure(64) },
  { name: "bead-span", theme: "light", draw: () => beadSpan(2, 3) },
  { name: "door-two-trees", theme: "light", draw: () => doorPicture("two-trees") },
  { name: "door-wood", theme: "light", draw: () => doorPicture("wood") },
  { name: "door-store", theme: "light", draw: () => doorPicture("store") },
];
