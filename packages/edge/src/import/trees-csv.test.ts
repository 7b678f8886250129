import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { faultFields } from "../examples.fixture.ts";
import { readTreesCsv } from "./trees-csv.ts";
import type { TreeList } from "./tree-list.ts";

function read(text: string): TreeList {
  const outcome = readTreesCsv(text);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.refusals));
  return outcome.value;
}

const badPlaces = (text: string) =>
  read(text).bad.map(({ place, refusals }) => `${place}: ${refusals.map(({ field }) => field).join(", ")}`);

describe("trees from CSV", () => {
  it("reads headings in any order and case, behind a byte-order mark, by semicolon or tab, quoted or not", () => {
    const row = { id: "7", x_m: 1.5, y_m: -2, dbh_cm: 30 };
    for (const text of [
      "id,x_m,y_m,dbh_cm\n7,1.5,-2,30\n",
      "\uFEFFDBH_cm; ID ;Y_M;x_m\r\n30;7;-2;1.5\r\n",
      'id\tx_m\ty m\tdbh-cm\n"7"\t"1.5"\t−2\t3e1',
      "\n\nid,x_m,y_m,dbh_cm\n\n7,1.5,-2,30\n,,,\n",
    ]) {
      expect(read(text)).toEqual({ rows: [row], bad: [], leftOut: [] });
    }
  });

  it("reads girths, conditions, flags and who looked", () => {
    const text =
      "id,x_m,y_m,girth_cm,condition,use,looked_at_by,looked_at_on,tag,species\n1,0,0,100,Not looked at,no,,,A,\n2,4,0,90,healthy,yes,Ada,2027-05-14,B,Quercus robur";
    expect(read(text).rows).toEqual([
      { id: "1", x_m: 0, y_m: 0, girth_cm: 100, condition: "not-looked-at", use: false, tag: "A" },
      {
        id: "2",
        x_m: 4,
        y_m: 0,
        girth_cm: 90,
        condition: "healthy",
        use: true,
        looked_at: { by: "Ada", on: "2027-05-14" },
        tag: "B",
        species: "Quercus robur",
      },
    ]);
  });

  it("names each bad row by its line, also after a cell of two lines", () => {
    const text = [
      "id,x_m,y_m,dbh_cm,species",
      '1,0,0,30,"two',
      'lines"',
      "2,x,0,30,",
      "1,4,0,30,",
      "3,4,0,,",
      "4,4,0,-5,",
      ",4,0,20,",
      "5,1,2,30,oak,more",
      "6,8,8,30",
    ].join("\n");
    expect(badPlaces(text)).toEqual([
      "line 4: x_m",
      "line 5: id",
      "line 6: dbh_cm",
      "line 7: dbh_cm",
      "line 8: id",
      "line 9: row",
    ]);
    expect(read(text).rows.map(({ id }) => id)).toEqual(["1", "6"]);
  });

  it("tells a decimal comma as what it is", () => {
    const [bad] = read("id;x_m;y_m;dbh_cm\n1;4,2;0;30").bad;
    expect(bad?.refusals).toEqual([
      { field: "x_m", got: "4,2", need: "a number with a point and not a comma, 4.2" },
    ]);
  });

  it("leaves out columns it does not know, and says which", () => {
    expect(read("id,x_m,y_m,dbh_cm,owl\n1,0,0,30,yes").leftOut).toEqual(["owl"]);
  });

  it("refuses headings without what is needed", () => {
    expect(faultFields(readTreesCsv("id,x_m,owl\n1,2,3"))).toEqual(["line 1", "line 1"]);
    expect(faultFields(readTreesCsv("id,id,x_m,y_m,dbh_cm\n1,1,2,3,30"))).toEqual(["line 1"]);
    expect(faultFields(readTreesCsv("id,x_m,y_m,dbh_cm\n"))).toEqual(["line 2"]);
    expect(faultFields(readTreesCsv(""))).toEqual(["line 1"]);
  });
});

const STEMS = process.env["NIGHTSPAN_STEMS"];
const WHERE = STEMS === undefined ? " (skipped: set NIGHTSPAN_STEMS to the folder of the stem maps)" : "";

describe.skipIf(STEMS === undefined)(`measured stem maps${WHERE}`, () => {
  it.each([
    ["longleaf", 584, 15_676.7],
    ["waka", 504, 13_305.55],
    ["spruces", 134, 3_355.0],
  ])("%s", (name, stems, sumCm) => {
    const { rows, bad } = read(readFileSync(join(STEMS ?? "", `${name}.csv`), "utf8"));
    expect(bad).toEqual([]);
    expect(rows).toHaveLength(stems);
    expect(rows.reduce((sum, { dbh_cm }) => sum + (dbh_cm ?? 0), 0)).toBeCloseTo(sumCm, 6);
  });
});
