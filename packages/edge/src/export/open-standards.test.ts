import { describe, expect, it } from "vitest";
import { exampleCamp, planOf } from "../examples.fixture.ts";
import { openCamp } from "../format/open-camp.ts";
import { berthsGeoJson } from "./berths-geojson.ts";
import { berthsGpx } from "./berths-gpx.ts";
import { calendarText } from "./calendar.ts";

const { document } = exampleCamp("demo");
const opened = openCamp({
  ...document,
  name: 'Wood <A> & "B"',
  ground: { ...document.ground, origin: { lat_deg: 54.62, lon_deg: -2.85 } },
});
if (!opened.ok) throw new Error(JSON.stringify(opened.refusals));
const { camp } = opened.value;
const plan = planOf(camp);

interface Element {
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: Element[];
}

/** A reader of its own that knows nothing of how the file was written: tags must nest, attributes be quoted, & be named. */
function readXml(text: string): Element {
  const top: Element = { name: "", attributes: new Map(), children: [] };
  const open: Element[] = [top];
  const body = text.replace(/^<\?xml [^?]*\?>\s*/, "");
  let at = 0;
  for (const tag of body.matchAll(/<(\/?)([A-Za-z][\w:.-]*)((?:\s+[\w:.-]+="[^"<]*")*)\s*(\/?)>/g)) {
    const between = body.slice(at, tag.index);
    expect(between).not.toMatch(/[<>]|&(?!(?:amp|lt|gt|quot|apos|#\d+|#x[\da-f]+);)/i);
    at = tag.index + tag[0].length;
    const [, closes, name = "", written = "", empty] = tag;
    if (closes === "/") {
      expect(open.pop()?.name).toBe(name);
      continue;
    }
    const pairs = [...written.matchAll(/([\w:.-]+)="([^"]*)"/g)];
    const element = {
      name,
      attributes: new Map(pairs.map(([, key = "", value = ""]) => [key, value])),
      children: [],
    };
    open.at(-1)?.children.push(element);
    if (empty !== "/") open.push(element);
  }
  expect(body.slice(at).trim()).toBe("");
  expect(open).toHaveLength(1);
  const [root] = top.children;
  if (root === undefined) throw new Error("no element");
  return root;
}

/** The order that the schema of GPX 1.1 asks for. */
const IN_GPX = ["metadata", "wpt", "rte", "trk", "extensions"];
const IN_POINT = ["ele", "time", "name", "cmt", "desc", "src", "link", "sym", "type", "extensions"];
const IN_ROUTE = ["name", "cmt", "desc", "src", "link", "number", "type", "extensions", "rtept"];

function expectOrdered({ children }: Element, order: readonly string[]): void {
  const places = children.map(({ name }) => order.indexOf(name));
  expect(places).not.toContain(-1);
  expect(places).toEqual([...places].sort((a, b) => a - b));
}

function numbersIn(told: unknown): readonly number[] {
  if (Array.isArray(told)) return told.flatMap(numbersIn);
  return typeof told === "number" ? [told] : [NaN];
}

describe("files of open standards, read by rules of the standard alone", () => {
  it("GPX 1.1: well formed, in its name space, elements in the order of the schema, places on the globe", () => {
    const gpx = readXml(berthsGpx(plan, camp) ?? "");
    expect(gpx.name).toBe("gpx");
    expect(gpx.attributes.get("version")).toBe("1.1");
    expect(gpx.attributes.get("creator")).not.toBeUndefined();
    expect(gpx.attributes.get("xmlns")).toBe("http://www.topografix.com/GPX/1/1");
    expectOrdered(gpx, IN_GPX);
    const routes = gpx.children.filter(({ name }) => name === "rte");
    for (const route of routes) expectOrdered(route, IN_ROUTE);
    const points = [...gpx.children, ...routes.flatMap(({ children }) => children)].filter(({ name }) =>
      ["wpt", "rtept"].includes(name),
    );
    expect(points.length).toBeGreaterThan(50);
    for (const point of points) {
      expectOrdered(point, IN_POINT);
      expect(Number(point.attributes.get("lat"))).toBeCloseTo(54.62, 2);
      expect(Number(point.attributes.get("lon"))).toBeCloseTo(-2.85, 2);
    }
  });

  it("GeoJSON, RFC 7946: features with geometry and properties, longitude first, no system of its own", () => {
    const told: unknown = JSON.parse(berthsGeoJson(plan, camp) ?? "");
    expect(told).toMatchObject({ type: "FeatureCollection" });
    expect(told).not.toHaveProperty("crs");
    const features: unknown = Reflect.get(Object(told), "features");
    if (!Array.isArray(features)) throw new Error("no features");
    expect(features.length).toBeGreaterThan(50);
    for (const feature of features) {
      expect(feature).toMatchObject({ type: "Feature" });
      expect(feature).toHaveProperty("properties");
      const geometry: unknown = Reflect.get(Object(feature), "geometry");
      expect(["Point", "LineString", "Polygon"]).toContain(Reflect.get(Object(geometry), "type"));
      const numbers = numbersIn(Reflect.get(Object(geometry), "coordinates"));
      expect(numbers.length).toBeGreaterThan(1);
      for (let index = 0; index < numbers.length; index += 2) {
        expect(numbers[index]).toBeCloseTo(-2.85, 2);
        expect(numbers[index + 1]).toBeCloseTo(54.62, 2);
      }
    }
  });

  it("iCalendar, RFC 5545: one version and maker, parts that nest, each event with its own mark, stamp and start", () => {
    const text = calendarText(plan, camp) ?? "";
    expect(text.endsWith("\r\n")).toBe(true);
    expect(text.replaceAll("\r\n", "")).not.toMatch(/[\r\n]/);
    const lines = text.replaceAll("\r\n ", "").trimEnd().split("\r\n");
    const open: string[] = [];
    for (const line of lines) {
      const [, key = "", value = ""] = /^([A-Z-]+)(?:;[^:]*)?:(.*)$/.exec(line) ?? [];
      expect(key).not.toBe("");
      if (key === "BEGIN") open.push(value);
      if (key === "END") expect(open.pop()).toBe(value);
    }
    expect(open).toEqual([]);
    expect(lines.slice(0, 1)).toEqual(["BEGIN:VCALENDAR"]);
    expect(lines.filter((line) => line === "VERSION:2.0")).toHaveLength(1);
    expect(lines.filter((line) => line.startsWith("PRODID:"))).toHaveLength(1);
    const events = lines.filter((line) => line === "BEGIN:VEVENT").length;
    const marks = lines.filter((line) => line.startsWith("UID:"));
    expect(events).toBeGreaterThan(5);
    expect(new Set(marks).size).toBe(events);
    for (const key of ["DTSTAMP", "DTSTART"])
      expect(lines.filter((line) => new RegExp(`^${key}:\\d{8}T\\d{6}Z$`).test(line))).toHaveLength(events);
  });
});
