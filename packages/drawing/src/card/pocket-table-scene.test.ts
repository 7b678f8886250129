import { describe, expect, it } from "vitest";
import { SLING_ROWS, WEBBING_ROWS } from "../fixture/pocket-rows.fixture.ts";
import { overlappingTexts, placedTexts } from "../fixture/text-boxes.fixture.ts";
import type { Measure } from "../scene/text-item.ts";
import { plainLabels } from "../words/plain-labels.ts";
import { plainMeasure } from "../words/plain-measure.ts";
import { pocketTableScene, type PocketLine } from "./pocket-table-scene.ts";

const words = { labels: plainLabels, measure: plainMeasure };
const table = { name: "Ada", setterStatureM: 1.83, stepM: 0.75 };

function said(rows: readonly PocketLine[]): string[] {
  return placedTexts(pocketTableScene({ ...table, rows }, words), words).map((text) => text.said);
}

describe("pocketTableScene", () => {
  it("says where both straps go for each count of steps", () => {
    const all = said(WEBBING_ROWS).map((text) => text.replaceAll("\u00a0", " "));
    expect(all).toEqual(expect.arrayContaining(["5½", "1.55 m  chin − 5 cm", "25 cm", "75, 80 cm"]));
  });

  it("says which way the foot strap goes in each row where it is not always higher", () => {
    const [row] = WEBBING_ROWS;
    const [head, foot] = [row?.hung?.head, row?.hung?.foot];
    if (row === undefined || head === undefined || foot === undefined) throw new Error("no row");
    const all = said([...WEBBING_ROWS, { steps: 8, hung: { head: foot, foot: head } }]);
    const plain = all.map((text) => text.replaceAll("\u00a0", " "));
    expect(plain).toEqual(expect.arrayContaining(["25 cm higher", "20 cm lower"]));
  });

  it("says what stands in the way where a row cannot be hung", () => {
    expect(said(SLING_ROWS).filter((text) => text === "do not hang: shortest sling")).toHaveLength(2);
  });

  it("keeps to whole steps where half steps would not be legible, and to its room in a broader face", () => {
    const many = Array.from({ length: 15 }, (_, index) => ({ ...WEBBING_ROWS[3], steps: 6 + index / 2 }));
    expect(said(many)).not.toContain("6½");
    expect(said(many)).toContain("12");
    const broad: Measure = (text, size, weight) => 1.12 * plainMeasure(text, size, weight);
    const scene = pocketTableScene({ ...table, rows: many }, { ...words, measure: broad });
    expect(overlappingTexts(scene, { ...words, measure: broad })).toEqual([]);
  });
});
