import { presetRules } from "@nightspan/core";
import { harrowmere } from "../src/fixture/harrowmere.fixture.ts";
import { nightByHand } from "../src/fixture/night-by-hand.fixture.ts";
import { planByHand } from "../src/fixture/plan-by-hand.fixture.ts";
import { SLING_ROWS, WEBBING_ROWS } from "../src/fixture/pocket-rows.fixture.ts";
import {
  everyObstacle,
  pacedPairs,
  withBerth,
  withGround,
  withGroups,
  withLimits,
  withSpare,
} from "../src/fixture/variants.fixture.ts";
import { KIT, storeByHand } from "../src/fixture/store-by-hand.fixture.ts";
import { tarpByHand } from "../src/fixture/tarp-by-hand.fixture.ts";
import { EIGHT, THREE } from "../src/fixture/wanted.fixture.ts";
import {
  angleCardScene,
  beadSpan,
  berthPlanScene,
  berthScene,
  cardBackScene,
  cardScene,
  cardsSheetScenes,
  doorPicture,
  leadersSheetScenes,
  mapScene,
  mapSheetScene,
  markFigure,
  plainLabels,
  plainMeasure,
  pocketTableScene,
  rainRoseScene,
  pitchTradeScene,
  nightTimelineScene,
  warmthNightScene,
  heatFlowScene,
  cutListScene,
  packingBarsScene,
  storeShelfScene,
  campTables,
  emergencyCardScene,
  tableSheets,
  knotCardScene,
  verdictPlate,
  type Scene,
  type ThemeName,
} from "../src/index.ts";

/** One drawing of the gallery: its name is the name of its golden. */
export interface GoldenScene {
  readonly name: string;
  readonly theme: ThemeName;
  readonly draw: () => Scene;
}

const words = { labels: plainLabels, measure: plainMeasure };

const camp = harrowmere();
const plan = planByHand(camp, EIGHT);
const gps = withGround(camp, { source: "gps", positionErrorM: 1.2 });
const gpsPlan = { ...plan, berths: plan.berths.map((berth) => ({ ...berth, stepItOut: true })) };
const pairs = pacedPairs();
const pairsPlan = planByHand(pairs, THREE);
const refused = withBerth(plan, "3", { verdict: "do-not-hang" });
const helped = withBerth(plan, "5", {
  setBy: "soren",
  kit: { hammock: "H3", suspension: "W2", under: "U1" },
});

/** What ends a span at either end, and somebody taller who sets the straps. */
const windowed = withBerth(plan, "7", {
  setBy: "soren",
  spanWindow: { low: 3.62, high: 4.71, bindsLow: "sling-shortest", bindsHigh: "strap-reach" },
});
const short = { ...withLimits(gpsPlan), robust: { errorM: 1.2, placed: 6, most: 8 } };
const tarped = { ...plan, berths: plan.berths.map((berth) => ({ ...berth, tarp: tarpByHand(berth) })) };
const clocked = nightByHand(tarped);
const stocked = storeByHand(clocked);
const equipped = {
  ...stocked,
  checked: ["site", "hang", "strength", "tarp", "rain", "warmth", "night"] as const,
  notChecked: [],
  berths: stocked.berths.map((berth, index) => ({
    ...berth,
    kit: {
      hammock: "hammock-usual",
      suspension: "webbing",
      tarp: "tarp-wide",
      under: "foam",
      over: "bag-warm",
    },
    ...(index === 4 ? { setBy: "soren" } : {}),
    buddy: { sleeper: stocked.berths[index ^ 1]?.sleeper ?? "", apartM: 6, withinCall: index < 6 },
  })),
};
const store = { ...camp, kit: KIT, place: { latDeg: 54.41, lonDeg: -2.97, timezone: "Europe/London" } };
const grouped = withGroups(camp);

const DESKTOP = { words, widthPx: 1050, selected: "7", refused: [["R14", "R15"]] } as const;
const PHONE = { words, widthPx: 390, heightPx: 500, selected: "7" } as const;

const SOREN = { name: "Søren Wrzos-Łęcki", setterStatureM: 1.83, stepM: 0.75 } as const;

function first(scenes: readonly Scene[], index = 0): Scene {
  const scene = scenes[index];
  if (scene === undefined) throw new Error("no sheet was drawn");
  return scene;
}

/** Every drawing, in the order of the gallery. */
export const scenes: readonly GoldenScene[] = [
  { name: "map-desktop", theme: "light", draw: () => mapScene(plan, camp, DESKTOP) },
  { name: "map-desktop-dark", theme: "dark", draw: () => mapScene(plan, camp, DESKTOP) },
  { name: "map-desktop-one-ink", theme: "one-ink", draw: () => mapScene(plan, camp, DESKTOP) },
  { name: "map-sheet", theme: "light", draw: () => mapSheetScene(plan, camp, DESKTOP) },
  {
    name: "map-tarps",
    theme: "light",
    draw: () => mapScene(withSpare(tarped), camp, { words, widthPx: 1050, selected: "7" }),
  },
  { name: "map-limits", theme: "light", draw: () => mapSheetScene(short, grouped, { words, widthPx: 1050 }) },
  {
    name: "map-limits-one-ink",
    theme: "one-ink",
    draw: () => mapScene(short, grouped, { words, widthPx: 800 }),
  },
  { name: "map-limits-phone", theme: "light", draw: () => mapScene(short, grouped, PHONE) },
  { name: "map-phone", theme: "light", draw: () => mapScene(plan, camp, PHONE) },
  {
    name: "map-phone-near",
    theme: "light",
    draw: () => mapScene(plan, camp, { ...PHONE, pxPerM: 26, centreM: [21, 10], legend: false, stepM: 0.7 }),
  },
  {
    name: "map-phone-near-red-night",
    theme: "red-night",
    draw: () => mapScene(plan, camp, { ...PHONE, pxPerM: 26, centreM: [21, 10] }),
  },
  {
    name: "map-far",
    theme: "light",
    draw: () => mapScene(plan, camp, { ...PHONE, heightPx: 300, pxPerM: 5 }),
  },
  { name: "map-gps", theme: "light", draw: () => mapScene(gpsPlan, gps, { ...DESKTOP, widthPx: 800 }) },
  {
    name: "map-every-obstacle",
    theme: "light",
    draw: () => mapScene(refused, everyObstacle(), { words, widthPx: 900 }),
  },
  {
    name: "map-paced-pairs",
    theme: "light",
    draw: () => mapScene(pairsPlan, pairs, { words, widthPx: 700 }),
  },
  { name: "berth-desktop", theme: "light", draw: () => berthScene(plan, camp, "7", { words, widthPx: 960 }) },
  {
    name: "berth-desktop-dark",
    theme: "dark",
    draw: () => berthScene(plan, camp, "7", { words, widthPx: 960 }),
  },
  {
    name: "berth-window",
    theme: "light",
    draw: () => berthScene(windowed, camp, "7", { words, widthPx: 960 }),
  },
  {
    name: "berth-window-phone",
    theme: "light",
    draw: () => berthScene(windowed, camp, "7", { words, widthPx: 390 }),
  },
  {
    name: "berth-desktop-no-pulls",
    theme: "one-ink",
    draw: () => berthScene(plan, camp, "2", { words, widthPx: 960, pulls: false }),
  },
  { name: "berth-phone", theme: "light", draw: () => berthScene(plan, camp, "7", { words, widthPx: 390 }) },
  {
    name: "berth-phone-red-night",
    theme: "red-night",
    draw: () => berthScene(plan, camp, "7", { words, widthPx: 390 }),
  },
  {
    name: "berth-unknown-ground",
    theme: "light",
    draw: () => berthScene(pairsPlan, pairs, "1", { words, widthPx: 960 }),
  },
  {
    name: "berth-unknown-ground-phone",
    theme: "light",
    draw: () => berthScene(pairsPlan, pairs, "1", { words, widthPx: 390 }),
  },
  { name: "berth-tarp", theme: "light", draw: () => berthScene(tarped, camp, "7", { words, widthPx: 960 }) },
  {
    name: "berth-tarp-phone",
    theme: "light",
    draw: () => berthScene(tarped, camp, "7", { words, widthPx: 390 }),
  },
  { name: "card-back-tarp", theme: "one-ink", draw: () => cardBackScene(tarped, camp, "4", words) },
  {
    name: "berth-plan",
    theme: "light",
    draw: () => berthPlanScene(tarped, camp, "7", { words, widthPx: 900 }),
  },
  {
    name: "berth-plan-phone",
    theme: "dark",
    draw: () => berthPlanScene(tarped, camp, "7", { words, widthPx: 390 }),
  },
  {
    name: "berth-plan-one-ink",
    theme: "one-ink",
    draw: () => berthPlanScene(tarped, camp, "4", { words, widthPx: 900 }),
  },
  { name: "rain-rose", theme: "light", draw: () => rainRoseScene(tarped, camp, "7", { widthPx: 420 }) },
  {
    name: "rain-rose-phone",
    theme: "one-ink",
    draw: () => rainRoseScene(tarped, camp, "2", { widthPx: 360 }),
  },
  { name: "pitch-trade", theme: "light", draw: () => pitchTradeScene(tarped, "7", { widthPx: 480 }) },
  { name: "pitch-trade-phone", theme: "dark", draw: () => pitchTradeScene(tarped, "7", { widthPx: 360 }) },
  {
    name: "night-timeline",
    theme: "light",
    draw: () => nightTimelineScene(clocked, camp, { words, widthPx: 1000 }),
  },
  {
    name: "night-timeline-phone",
    theme: "light",
    draw: () => nightTimelineScene(clocked, camp, { words, widthPx: 390 }),
  },
  {
    name: "warmth-night",
    theme: "light",
    draw: () => warmthNightScene(clocked, "7", { words, widthPx: 640 }),
  },
  {
    name: "warmth-night-phone",
    theme: "red-night",
    draw: () => warmthNightScene(clocked, "7", { words, widthPx: 390 }),
  },
  {
    name: "warmth-youth",
    theme: "light",
    draw: () => warmthNightScene(clocked, "3", { words, widthPx: 390, camp }),
  },
  {
    name: "heat-flow",
    theme: "light",
    draw: () => heatFlowScene(clocked, "7", { widthPx: 520, figures: true }),
  },
  { name: "heat-flow-phone", theme: "dark", draw: () => heatFlowScene(clocked, "3", { widthPx: 360 }) },
  { name: "cut-list", theme: "light", draw: () => cutListScene(stocked, { words, widthPx: 900 }) },
  { name: "cut-list-phone", theme: "one-ink", draw: () => cutListScene(stocked, { words, widthPx: 390 }) },
  { name: "packing-bars", theme: "light", draw: () => packingBarsScene(stocked, camp, { widthPx: 640 }) },
  {
    name: "packing-bars-phone",
    theme: "dark",
    draw: () => packingBarsScene(stocked, camp, { widthPx: 390 }),
  },
  { name: "store-shelf", theme: "light", draw: () => storeShelfScene(KIT, { widthPx: 900 }) },
  { name: "store-shelf-phone", theme: "one-ink", draw: () => storeShelfScene(KIT, { widthPx: 390 }) },
  { name: "card-front", theme: "one-ink", draw: () => cardScene(plan, camp, "4", words) },
  { name: "card-front-look-again", theme: "one-ink", draw: () => cardScene(plan, camp, "7", words) },
  {
    name: "card-front-do-not-hang",
    theme: "one-ink",
    draw: () => cardScene(refused, camp, "3", { ...words, reason: "the strap is over its plate" }),
  },
  { name: "card-front-helped", theme: "one-ink", draw: () => cardScene(helped, camp, "5", words) },
  { name: "card-front-tarp", theme: "one-ink", draw: () => cardScene(equipped, camp, "5", words) },
  { name: "card-front-youth", theme: "one-ink", draw: () => cardScene(equipped, camp, "3", words) },
  {
    name: "leaders-sheet-equipped",
    theme: "one-ink",
    draw: () => first(leadersSheetScenes(equipped, camp, words)),
  },
  { name: "card-front-paced-pair", theme: "one-ink", draw: () => cardScene(pairsPlan, pairs, "1", words) },
  { name: "card-back", theme: "one-ink", draw: () => cardBackScene(plan, camp, "4", words) },
  { name: "card-back-paced-pair", theme: "one-ink", draw: () => cardBackScene(pairsPlan, pairs, "1", words) },
  { name: "cards-fronts", theme: "one-ink", draw: () => first(cardsSheetScenes(plan, camp, words), 0) },
  { name: "cards-backs", theme: "one-ink", draw: () => first(cardsSheetScenes(plan, camp, words), 1) },
  { name: "leaders-sheet", theme: "one-ink", draw: () => first(leadersSheetScenes(plan, camp, words)) },
  ...campTables(equipped, store).flatMap((table): GoldenScene[] => [
    { name: `sheet-${table.name}`, theme: "one-ink", draw: () => first(tableSheets(table, words)) },
  ]),
  { name: "emergency-card", theme: "one-ink", draw: () => emergencyCardScene(equipped, store, words) },
  { name: "knot-card", theme: "one-ink", draw: () => knotCardScene(words) },
  { name: "angle-card", theme: "one-ink", draw: () => angleCardScene(presetRules("usual"), words) },
  {
    name: "pocket-table",
    theme: "one-ink",
    draw: () => pocketTableScene({ ...SOREN, rows: WEBBING_ROWS }, words),
  },
  {
    name: "pocket-table-sling",
    theme: "one-ink",
    draw: () => pocketTableScene({ ...SOREN, setterStatureM: 1.6, rows: SLING_ROWS }, words),
  },
  { name: "verdict-clear", theme: "light", draw: () => verdictPlate("clear", 60) },
  { name: "verdict-look-again", theme: "light", draw: () => verdictPlate("look-again", 60) },
  { name: "verdict-do-not-hang", theme: "light", draw: () => verdictPlate("do-not-hang", 60) },
  { name: "mark", theme: "light", draw: () => markFigure(64) },
  { name: "bead-span", theme: "light", draw: () => beadSpan(2, 3) },
  { name: "door-two-trees", theme: "light", draw: () => doorPicture("two-trees") },
  { name: "door-wood", theme: "light", draw: () => doorPicture("wood") },
  { name: "door-store", theme: "light", draw: () => doorPicture("store") },
];
