import { describe, expect, it } from "vitest";
import { exampleCamp, faultFields } from "../examples.fixture.ts";
import { readList, type ListKind } from "./read-list.ts";
import { LISTS } from "./write-lists.ts";

const { document: DEMO } = exampleCamp("demo");

describe("lists for a camp", () => {
  it.each([
    ["trees", "id,x_m,y_m,dbh_cm\n1,0,0,30\n"],
    ["trees", '<gpx><wpt lat="45" lon="7"><name>A</name><cmt>dbh 30</cmt></wpt></gpx>'],
    ["forecast", "at,air_c,wind_m_s\n2027-05-14T21:00Z,4,1\n"],
    ["forecast", '{"format": "nightspan-forecast/1", "night": {"low_c": 3, "wind_m_s": 1}}'],
    ["kit", "id;kind;count\np;peg;30\n"],
  ])("%s are told by their look", (kind, text) => {
    const list = readList(text, DEMO);
    expect(list).toMatchObject({ ok: true, value: { kind, bad: [] } });
    expect(list.ok && list.value.camp).toBeDefined();
  });

  it("are refused where they are none", () => {
    expect(faultFields(readList("a,b\n1,2\n", DEMO))).toEqual(["line 1"]);
    expect(faultFields(readList("", DEMO))).toEqual(["line 1"]);
    expect(faultFields(readList('{"a": 1}', DEMO))).toEqual(["file"]);
    expect(faultFields(readList("<html/>", DEMO))).toEqual(["file"]);
  });

  it.each(["trees", "kit"] as const)("of %s taken out of a camp go in again unchanged", (kind: ListKind) => {
    const list = readList(LISTS[kind](DEMO), DEMO);
    expect(list.ok && list.value.bad).toEqual([]);
    expect(list.ok && list.value.camp).toEqual(DEMO);
  });
});
