import type { SheetTable } from "@nightspan/drawing";
import { labels, measure } from "@nightspan/edge";
import { describe, expect, it } from "vitest";
import { sheetCsv } from "./sheet-csv.ts";

const words = { labels, measure };
const column = (title: string) => ({ title: { name: title }, share: 1 });

function table(rows: SheetTable["rows"]): SheetTable {
  const title = { name: "Kit" };
  return { name: "kit", title, facts: title, columns: [column("what"), column("packed")], rows, after: [] };
}

describe("sheetCsv", () => {
  it("keeps a column for headings, and leaves boxes and blanks empty", () => {
    const csv = sheetCsv(
      table([
        { heading: { name: "Berth 1" } },
        [{ name: "tarp, wide" }, "tick"],
        [{ name: 'the "old" one' }, "blank"],
      ]),
      words,
    );
    expect(csv).toBe(',what,packed\r\nBerth 1,"tarp, wide",\r\nBerth 1,"the ""old"" one",\r\n');
  });

  it("tells as text what a spreadsheet would run", () => {
    const csv = sheetCsv(table([[{ name: "=HYPERLINK(1)" }, { name: "+1" }]]), words);
    expect(csv).toBe("what,packed\r\n'=HYPERLINK(1),'+1\r\n");
  });

  it("writes numbers with plain spaces", () => {
    const length = { quantity: "length", value: 1.7, digits: 2 } as const;
    expect(sheetCsv(table([[length, "tick"]]), words)).toBe("what,packed\r\n1.70 m,\r\n");
  });
});
