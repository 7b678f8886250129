import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { overlappingTexts, placedTexts, textsOffPaper } from "../fixture/text-boxes.fixture.ts";
import { name } from "../scene/names.ts";
import { plainLabels } from "../words/plain-labels.ts";
import { plainMeasure } from "../words/plain-measure.ts";
import { tableSheets, type SheetRow, type SheetTable } from "./table-sheet.ts";

const words = { labels: plainLabels, measure: plainMeasure };

function table(rows: readonly SheetRow[]): SheetTable {
  const columns = ["one", "two", "three"].map((title, index) => ({ title: name(title), share: 2 + index }));
  return {
    name: "table",
    title: name("Table"),
    facts: name("facts"),
    columns,
    rows,
    after: [name("the end")],
  };
}

describe("tableSheets", () => {
  const cell = fc.stringMatching(/^[a-z]{1,12}( [a-z]{1,12}){0,14}$/).map(name);
  const row = fc.oneof(
    fc.tuple(cell, cell, fc.constantFrom("tick" as const, "blank" as const)),
    cell.map((heading) => ({ heading })),
  );

  it("sets every row once, in order, on the paper, no word on another", () => {
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 60 }), (rows) => {
        const sheets = tableSheets(table(rows), words);
        const said = sheets.flatMap((sheet) => placedTexts(sheet, words).map((text) => text.said)).join(" ");
        for (const one of rows) {
          const first = "heading" in one ? one.heading : one[0];
          expect(said.includes(plainLabels(first).split(" ")[0] ?? "")).toBe(true);
        }
        for (const sheet of sheets) {
          expect(overlappingTexts(sheet, words)).toEqual([]);
          expect(textsOffPaper(sheet, words)).toEqual([]);
        }
        const ticks = sheets.flatMap(({ items }) => items.filter((item) => item.class === "ns-tick"));
        expect(ticks).toHaveLength(rows.filter((one) => !("heading" in one) && one[2] === "tick").length);
        expect(said).toContain("the end");
      }),
      { seed: 1, numRuns: 60 },
    );
  });

  it("leaves a line for each thing to write by hand, on the paper and clear of one another", () => {
    const toFill = Array.from({ length: 5 }, (_, index) => name(`to fill ${index}`));
    for (const rows of [1, 20, 27, 31]) {
      const all = Array.from({ length: rows }, (_, index): SheetRow => [
        name(`row ${index}`),
        name("x"),
        "tick",
      ]);
      const sheets = tableSheets({ ...table(all), toFill }, words);
      const last = sheets.at(-1);
      if (last === undefined) throw new Error("no sheet");
      const said = placedTexts(last, words).map((text) => text.said);
      for (const one of toFill) expect(said).toContain(plainLabels(one));
      for (const sheet of sheets) {
        expect(overlappingTexts(sheet, words)).toEqual([]);
        expect(textsOffPaper(sheet, words)).toEqual([]);
      }
    }
  });

  it("keeps what stands under a heading together", () => {
    const block = (title: string): SheetRow[] => [
      { heading: name(title) },
      ...Array.from({ length: 20 }, (_, index) => [name(`${title} ${index}`), name("x"), "tick"] as const),
    ];
    const sheets = tableSheets(table([...block("first"), ...block("second")]), words);
    const texts = sheets.map((sheet) => placedTexts(sheet, words).map((text) => text.said));
    expect(sheets).toHaveLength(2);
    expect(texts[0]).not.toContain("second");
    expect(texts[1]).toContain("second");
    expect(texts[1]).toContain("second 19");
  });
});
