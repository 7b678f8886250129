import { describe, expect, it } from "vitest";
import { exampleCamp, faultFields } from "../examples.fixture.ts";
import type { CampDocument } from "../format/camp-document.ts";
import { kitSchema } from "../format/kit-schema.ts";
import { openCamp } from "../format/open-camp.ts";
import { importInspections, readInspectionsCsv, writeInspectionsCsv } from "./inspections-csv.ts";
import { KIT_COLUMNS } from "./kit-columns.ts";
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

describe("cells that a spreadsheet would run", () => {
  it("are guarded over several lines too, and read back letter for letter", () => {
    const names = ['=cmd|"x"\nسارة', "'=1+1", "-2", "@sum", "+1", 'a "b", c;\nd', "王\t小梅", "O'Neil"];
    const document = stored(names.map((label, at) => ({ id: `k${at}`, kind: "other", label })));
    const text = writeKitCsv(document);
    for (const cell of text.split(/[\n,]/)) expect(cell).not.toMatch(/^"?[=+@-]/);
    const list = readKitCsv(text);
    expect(list.ok && list.value.bad).toEqual([]);
    const labels = list.ok ? (importKit(document, list.value).kit ?? []) : [];
    expect(labels).toEqual(document.kit);
    const numbered = stored([{ id: "h", kind: "hammock", length_m: 3, numbers: ["a|1", "=2"] }]);
    const again = readKitCsv(writeKitCsv(numbered));
    expect(again.ok && again.value.rows).toMatchObject([{ numbers: ["a|1", "=2"] }]);
  });
});

describe("the columns of a kit list", () => {
  it("are all fields of the store, but the log, which is a list of its own", () => {
    const fields = new Set(kitSchema.def.options.flatMap(({ shape }) => Object.keys(shape)));
    fields.delete("inspections");
    expect(fields.size).toBeGreaterThan(30);
    expect([...fields].filter((name) => !(name in KIT_COLUMNS))).toEqual([]);
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

  it("adds a round to the log, loses no look of it, and adds none twice", () => {
    const round = [
      "item,number,what,who,returned,by,on,action,finding",
      "=h,8a,hammock,Ada,yes,Cy,2027-03-01,retire,torn",
      "=h,7,hammock,Bo,,,,,",
    ].join("\n");
    const list = readInspectionsCsv(round, STORE);
    if (!list.ok) throw new Error("refused");
    expect(list.value.bad).toEqual([]);
    const once = importInspections(STORE, list.value);
    const torn = { by: "Cy", on: "2027-03-01", finding: "torn", action: "retire", number: "8a" };
    expect(once.kit?.[0]?.inspections).toEqual([...HISTORY, torn]);
    expect(importInspections(once, list.value)).toEqual(once);
    const earlier = {
      item: "=h",
      inspection: { by: "Di", on: "2027-01-20", finding: "sound", action: "pass" as const },
    };
    const days = importInspections(once, { rows: [earlier] }).kit?.[0]?.inspections?.map(({ on }) => on);
    expect(days).toEqual(["2027-01-05", "2027-01-20", "2027-02-01", "2027-03-01"]);
  });

  it("takes a line out by its log, whatever state it is stated in, and brings it back by a pass", () => {
    const quarantine = { by: "Ada", on: "2027-01-05", finding: "frayed", action: "quarantine" } as const;
    const stateOf = (document: CampDocument) => {
      const opened = openCamp(document);
      if (!opened.ok) throw new Error(JSON.stringify(opened.refusals));
      return opened.value.camp.kit[0]?.state;
    };
    const line = { id: "h", kind: "hammock", length_m: 3, inspections: [quarantine] } as const;
    const unsaid = stored([structuredClone({ ...line, inspections: [...line.inspections] })]);
    const said = stored([{ ...structuredClone(line), state: "in-use", inspections: [quarantine] }]);
    expect([unsaid, said].map(stateOf)).toEqual(["quarantined", "quarantined"]);
    const pass = { item: "h", inspection: { ...quarantine, on: "2027-02-01", action: "pass" as const } };
    for (const document of [unsaid, said]) {
      expect(stateOf(importInspections(document, { rows: [pass] }))).toBe("in-use");
    }
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
