import { describe, expect, it } from "vitest";
import { KIT } from "./fixture/store-by-hand.fixture.ts";
import { harrowmere } from "./fixture/harrowmere.fixture.ts";
import { SLING_ROWS, WEBBING_ROWS } from "./fixture/pocket-rows.fixture.ts";
import { overlappingTexts, textsOffPaper } from "./fixture/text-boxes.fixture.ts";
import { pacedPairs, planned, withTarpsInFull } from "./fixture/variants.fixture.ts";
import {
  angleCardScene,
  knotCardScene,
  emergencyCardScene,
  tableSheets,
  campTables,
  storeShelfScene,
  packingBarsScene,
  cutListScene,
  nightTimelineScene,
  heatFlowScene,
  warmthNightScene,
  pitchTradeScene,
  rainRoseScene,
  berthPlanScene,
  berthScene,
  cardBackScene,
  cardScene,
  leadersSheetScenes,
  mapScene,
  mapSheetScene,
  plainLabels,
  plainMeasure,
  pocketTableScene,
  renderSvg,
  type Measure,
  type Scene,
} from "./index.ts";

const words = { labels: plainLabels, measure: plainMeasure };
/** Another, broader type, as a machine without ours may have. */
const broad: Measure = (text, size, weight) => 1.16 * plainMeasure(text, size, weight);

function faults(scene: Scene, measure: Measure = plainMeasure): string[] {
  renderSvg(scene, { ...words, standalone: false });
  const off = textsOffPaper(scene, { ...words, measure }).filter(
    ({ class: kind }) => kind !== "ns-plate-number",
  );
  return [...overlappingTexts(scene, { ...words, measure }), ...off.map(({ said }) => said)];
}

describe("a wood with a store and a wet night", () => {
  const dry = harrowmere();
  const night = dry.night === undefined ? undefined : { ...dry.night, rainMmH: 5, windMS: 7, gustMS: 12 };
  const place = { latDeg: 54.41, lonDeg: -2.97, timezone: "Europe/London" };
  const camp = { ...dry, kit: KIT, place, ...(night === undefined ? {} : { night }) };
  const plan = withTarpsInFull(planned(camp), camp);

  it("has tarps, warmth, a clock, cuts and packing to draw", () => {
    expect(plan.berths.some(({ tarp }) => tarp?.wetMap !== undefined)).toBe(true);
    expect(plan.berths.some(({ warmth }) => warmth !== undefined)).toBe(true);
    expect([plan.timeline?.length ?? 0, plan.cuts?.materials.length ?? 0].every((count) => count > 0)).toBe(
      true,
    );
    expect(plan.packing?.sleepers.length).toBe(camp.sleepers.length);
    expect(plan.berths.length).toBeGreaterThan(3);
  });

  it.each([320, 390, 600, 840, 1200])(
    "has every berth and its night drawn %i px wide, no word on another",
    (widthPx) => {
      for (const { id } of plan.berths) {
        const options = { words, widthPx };
        expect([id, faults(berthScene(plan, camp, id, options))]).toEqual([id, []]);
        expect([id, faults(berthPlanScene(plan, camp, id, options))]).toEqual([id, []]);
        expect([id, faults(rainRoseScene(plan, camp, id, options))]).toEqual([id, []]);
        expect([id, faults(pitchTradeScene(plan, id, options))]).toEqual([id, []]);
        expect([id, faults(warmthNightScene(plan, id, { ...options, camp }))]).toEqual([id, []]);
        expect([id, faults(heatFlowScene(plan, id, { ...options, figures: true }))]).toEqual([id, []]);
      }
      expect(faults(nightTimelineScene(plan, camp, { words, widthPx }))).toEqual([]);
      expect(faults(cutListScene(plan, { words, widthPx }))).toEqual([]);
      expect(faults(packingBarsScene(plan, camp, { widthPx }))).toEqual([]);
      expect(faults(storeShelfScene(KIT, { widthPx }))).toEqual([]);
    },
  );

  it("has its papers set, also in a broader type", () => {
    for (const measure of [plainMeasure, broad]) {
      const wide = { ...words, measure };
      for (const { id } of plan.berths) {
        expect(faults(cardScene(plan, camp, id, wide), measure)).toEqual([]);
        expect(faults(cardBackScene(plan, camp, id, wide), measure)).toEqual([]);
      }
      for (const sheet of leadersSheetScenes(plan, camp, wide)) expect(faults(sheet, measure)).toEqual([]);
      for (const table of campTables(plan, camp))
        for (const sheet of tableSheets(table, wide)) expect(faults(sheet, measure)).toEqual([]);
      expect(faults(emergencyCardScene(plan, camp, wide), measure)).toEqual([]);
      expect(faults(knotCardScene(wide), measure)).toEqual([]);
    }
  });
});

describe.each([
  ["a wood", harrowmere()],
  ["paced pairs", pacedPairs()],
])("a plan by the engine for %s", (_, camp) => {
  const plan = planned(camp);

  it("places somebody", () => expect(plan.placed).toBeGreaterThan(1));

  it.each([320, 390, 700, 1050, 1400])("is drawn from above %i px wide, no word on another", (widthPx) => {
    expect(faults(mapScene(plan, camp, { words, widthPx }))).toEqual([]);
    expect(faults(mapSheetScene(plan, camp, { words, widthPx }))).toEqual([]);
  });

  it.each([3, 7, 15, 25, 60])("is drawn at %i px a metre", (pxPerM) => {
    expect(faults(mapScene(plan, camp, { words, widthPx: 390, heightPx: 520, pxPerM }))).toEqual([]);
  });

  it.each([320, 390, 600, 840, 1200])("has each berth from the side %i px wide", (widthPx) => {
    for (const { id } of plan.berths) {
      expect(faults(berthScene(plan, camp, id, { words, widthPx }))).toEqual([]);
    }
  });

  it("has cards and sheets, also in a broader type", () => {
    for (const measure of [plainMeasure, broad]) {
      const wide = { ...words, measure };
      for (const { id } of plan.berths) {
        expect(faults(cardScene(plan, camp, id, wide), measure)).toEqual([]);
        expect(faults(cardBackScene(plan, camp, id, wide), measure)).toEqual([]);
      }
      expect(faults(angleCardScene(camp.rules, wide), measure)).toEqual([]);
      expect(faults(mapSheetScene(plan, camp, { words: wide, widthPx: 1240 }), measure)).toEqual([]);
      for (const rows of [WEBBING_ROWS, SLING_ROWS]) {
        const table = { rows, name: camp.name, setterStatureM: 1.6, stepM: 0.7 };
        expect(faults(pocketTableScene(table, wide), measure)).toEqual([]);
      }
      for (const sheet of leadersSheetScenes(plan, camp, wide)) expect(faults(sheet, measure)).toEqual([]);
    }
  });
});
