import { describe, expect, it } from "vitest";
import { exampleCamp, planOf, smallCamp } from "../examples.fixture.ts";
import { CUTS, DEALING, PACKING } from "../format/plan-parts.fixture.ts";
import { openCamp } from "../format/open-camp.ts";
import { readTreesGeoJson } from "../import/trees-geojson.ts";
import { readTreesGpx } from "../import/trees-gpx.ts";
import { berthsGeoJson } from "./berths-geojson.ts";
import { berthsGpx } from "./berths-gpx.ts";
import { calendarText } from "./calendar.ts";
import { planLists } from "./plan-lists.ts";
import { cutsCsv, packingCsv, returnsCsv, spoolsCsv } from "./store-lists.ts";

const { document } = exampleCamp("demo");
const placed = openCamp({
  ...document,
  ground: { ...document.ground, origin: { lat_deg: 54.62, lon_deg: -2.85 } },
});
if (!placed.ok) throw new Error(JSON.stringify(placed.refusals));
const { camp } = placed.value;
const PLAN = planOf(camp);
const SUMS = { ...PLAN, dealing: DEALING, cuts: CUTS, packing: PACKING };

describe("the night as a calendar", () => {
  const text =
    calendarText(
      {
        ...PLAN,
        timeline: [
          { at: "2027-05-14T17:45:28Z", what: "arrive-by" },
          { at: "2027-05-14T20:09Z", what: "sunset" },
        ],
      },
      {
        ...camp,
        name: "Ödmark, a night; with a name of more than seventy-five bytes in one single line \\ end",
      },
    ) ?? "";

  it("has an event a moment, in UTC, with an hour's notice of the first", () => {
    expect(text.match(/BEGIN:VEVENT/g)).toHaveLength(2);
    expect(text).toContain("DTSTART:20270514T174528Z\r\n");
    expect(text).toContain("DTSTART:20270514T200900Z\r\n");
    expect(text.match(/TRIGGER:-PT1H/g)).toHaveLength(1);
  });

  it("escapes and folds as the standard wants it", () => {
    const lines = text.split("\r\n");
    for (const line of lines) expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
    expect(text.replaceAll("\r\n ", "")).toContain("Ödmark\\, a night\\; with a name");
    expect(text.replaceAll("\r\n ", "")).toContain("\\\\ end)");
  });

  it("has no moment of setting up where there are no berths", () => {
    const { camp: store } = exampleCamp("store");
    const fitted = calendarText(planOf(store), store) ?? "";
    expect(fitted).toContain("sunset");
    expect(fitted).not.toMatch(/arrive by|berths set up|trees looked at/);
  });

  it("is none where no moment is known", () => {
    expect(calendarText({ ...PLAN, timeline: [] }, camp)).toBeUndefined();
  });
});

describe("maps for other programs", () => {
  it("put the trees where a list of them is read from again, to a few centimetres", () => {
    const lists = [readTreesGpx(berthsGpx(PLAN, camp) ?? ""), readTreesGeoJson(treesAlone())];
    const first = camp.ground?.trees[0];
    for (const list of lists) {
      const rows = list.ok ? list.value.rows : [];
      expect(rows).toHaveLength(camp.ground?.trees.length ?? NaN);
      for (const [index, { x_m, y_m, dbh_cm = 0 }] of rows.entries()) {
        const tree = camp.ground?.trees[index];
        expect(Math.abs(x_m - ((tree?.xM ?? NaN) - (first?.xM ?? NaN)))).toBeLessThan(0.03);
        expect(Math.abs(y_m - ((tree?.yM ?? NaN) - (first?.yM ?? NaN)))).toBeLessThan(0.03);
        expect(dbh_cm / 100).toBeCloseTo(tree?.dbhM ?? NaN, 3);
      }
    }
  });

  it("have a line for each berth", () => {
    expect(berthsGpx(PLAN, camp)?.match(/<rte>/g)).toHaveLength(14);
    expect(berthsGeoJson(PLAN, camp)?.match(/"LineString"/g)).toHaveLength(14);
  });
});

function treesAlone(): string {
  const map = JSON.parse(berthsGeoJson(PLAN, camp) ?? "{}") as {
    features: { properties: { kind: string } }[];
  };
  return JSON.stringify({
    ...map,
    features: map.features.filter(({ properties }) => properties.kind === "tree"),
  });
}

describe("lists for other programs", () => {
  it("tell who carries what, who has which piece, and what is to be cut from where", () => {
    const people = {
      ...camp,
      sleepers: camp.sleepers.map((one, index) => (index === 0 ? { ...one, id: "ada", name: "=Ada" } : one)),
    };
    expect(packingCsv(SUMS, people)?.split("\n").slice(0, 2)).toEqual([
      "who,berth,carrier,what,item,numbers,count,packed,returned",
      '"\'=Ada",1,own,hammock,h,7,1,,',
    ]);
    expect(returnsCsv(SUMS, camp)?.split("\n")[0]).toBe("item,number,what,who,returned,by,on,action,finding");
    expect(cutsCsv(SUMS)).toContain("webbing,25,strap,3.2,0.6,2,1|2");
    expect(spoolsCsv(SUMS)).toContain("webbing,w,50,1,2 × 3.2,43.6");
  });

  it("carry no body's weight, no age and no pull", () => {
    for (const { name, content } of planLists(PLAN, camp)) {
      expect(content, name).not.toMatch(/mass|age_|"age"|pull|_n\b|\d\s?(?:kg|N)\b/);
    }
  });

  it("are left out where there is nothing to tell", () => {
    const opened = openCamp(smallCamp());
    if (!opened.ok) throw new Error("refused");
    const plain = planOf(opened.value.camp);
    const names = planLists(plain, opened.value.camp).map(({ name }) => name);
    expect(names).not.toContain("berths.gpx");
    expect(names).not.toContain("night.ics");
  });
});
