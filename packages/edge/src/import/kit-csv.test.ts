import { describe, expect, it } from "vitest";
import { exampleCamp, faultFields } from "../examples.fixture.ts";
import type { CampDocument } from "../format/camp-document.ts";
import { openCamp } from "../format/open-camp.ts";
import { importInspections, readInspectionsCsv, writeInspectionsCsv } from "./inspections-csv.ts";
import { importKit, readKitCsv, writeKitCsv } from "./kit-csv.ts";

const { document: DEMO } = exampleCamp("demo");

function bare(document: CampDocument): CampDocument {
  const copy = structuredClone(document);
  for (const item of copy.kit ?? []) delete item.inspections;
  return copy;
}

function stored(kit: NonNullable<CampDocument["kit"]>): CampDocument {
  const copy = structuredClone({ ...DEMO, kit });
  for (const sleeper of copy.sleepers) delete sleeper.kit;
  return copy;
}

const HISTORY = [
  { by: "Ada", on: "2027-01-05", finding: 'frayed, "a bit"; sewn | again', action: "quarantine" as const },
  { by: "=Bo", on: "2027-02-01", finding: "-2 threads", action: "pass" as const, number: "7" },
];
const STORE = stored([
  {
    id: "=h",
    kind: "hammock",
    count: 2,
    numbers: ["7", "8a"],
    length_m: 3.1,
    net: true,
    inspections: HISTORY,
  },
  { id: "o, warm", kind: "over", comfort_c: -3.5, limit_c: -9, fill: "down", loft_mm: 60 },
  { id: "w", kind: "cord", material: "webbing", length_m: 50, width_mm: 25, label: 'on a "reel"' },
]);

describe("the store as a list", () => {
  it("reads back as it was written", () => {
    for (const document of [DEMO, STORE]) {
      const list = readKitCsv(writeKitCsv(document));
      if (!list.ok) throw new Error(JSON.stringify(list.refusals));
      expect(list.value.bad).toEqual([]);
      expect(importKit(bare(document), list.value).kit).toEqual(bare(document).kit);
    }
    expect(writeKitCsv(STORE).split("\n").slice(0, 2)).toEqual([
      "id,kind,label,count,numbers,length_m,net,comfort_c,limit_c,loft_mm,fill,material,width_mm",
      '"\'=h",hammock,,2,7|8a,3.1,true,,,,,,',
    ]);
  });

  it("keeps the history and unknown fields of a line that was there", () => {
    const list = readKitCsv("id,kind,length_m,count\n=h,hammock,3.3,2\nnew,peg,,30\n");
    const rows = list.ok ? list.value.rows : [];
    expect(list.ok ? [] : list.refusals).toEqual([]);
    const shelf = { ...STORE, kit: (STORE.kit ?? []).map((item) => ({ ...item, shelf: "left" })) };
    expect(list.ok && list.value.bad).toEqual([]);
    const changed = importKit(shelf, { rows });
    expect(changed.kit).toEqual([
      { shelf: "left", id: "=h", kind: "hammock", length_m: 3.3, count: 2, inspections: HISTORY },
      { id: "new", kind: "peg", count: 30 },
    ]);
  });

  it("names each row that cannot be used, and cells of another kind", () => {
    const text = [
      "id;kind;length_m;comfort_c;limit_c;max_user_kg",
      "a;hammock;3;;;100",
      "a;hammock;3;;;",
      "b;sofa;;;;",
      "c;over;;-5;0;",
      "d;tarp;3;;;80",
      "e;hammock;3,1;;;",
    ].join("\n");
    const list = readKitCsv(text);
    const bad = list.ok ? list.value.bad : [];
    expect(bad.map(({ place, refusals }) => [place, ...refusals.map(({ field }) => field)])).toEqual([
      ["line 3", "id"],
      ["line 4", "kind"],
      ["line 5", "limit_c"],
      ["line 6", "shape", "ridge_m", "width_m"],
      ["line 7", "length_m"],
    ]);
    const stray = readKitCsv("id,kind,length_m,comfort_c\na,hammock,3,5\n");
    expect(stray.ok && stray.value.bad[0]?.refusals[0]).toEqual({
      field: "comfort_c",
      got: 5,
      need: 'an empty cell: kind "hammock" has no such field',
    });
    expect(faultFields(readKitCsv("name,kind\n"))).toEqual(["line 1"]);
  });
});

describe("the history of inspections as a list", () => {
  it("reads back as it was written", () => {
    const text = writeInspectionsCsv(STORE);
    const list = readInspectionsCsv(text, STORE);
    if (!list.ok) throw new Error(JSON.stringify(list.refusals));
    expect(list.value.bad).toEqual([]);
    expect(importInspections(bare(STORE), list.value)).toEqual(STORE);
    expect(openCamp(STORE).ok).toBe(true);
  });

  it("leaves lines alone that it does not name, and refuses those that are not there", () => {
    const text = "item,on,by,action,finding\nw,2027-03-01,Cy,pass,sound\nsofa,2027-03-01,Cy,sit,soft\n";
    const list = readInspectionsCsv(text, STORE);
    if (!list.ok) throw new Error("refused");
    expect(list.value.bad.map(({ refusals }) => refusals.map(({ field }) => field))).toEqual([
      ["action", "item"],
    ]);
    const { kit = [] } = importInspections(STORE, list.value);
    expect(kit.map(({ inspections }) => inspections?.length)).toEqual([2, undefined, 1]);
  });
});
