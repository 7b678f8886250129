import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { exampleCamp, faultFields, smallCamp } from "../examples.fixture.ts";
import type { CampDocument } from "../format/camp-document.ts";
import { openCamp } from "../format/open-camp.ts";
import { readMapping } from "./forecast-mapped.ts";
import { findUnit } from "./forecast-units.ts";
import type { Forecast } from "./forecast.ts";
import { importForecast, readForecast } from "./read-forecast.ts";

const PLACE = { lat_deg: 60, lon_deg: 10, timezone: "Europe/Oslo" };

function campOf(over: object = {}): CampDocument {
  const opened = openCamp(smallCamp({ date: "2027-05-14", place: PLACE, ...over }));
  if (!opened.ok) throw new Error(JSON.stringify(opened.refusals));
  return opened.value.document;
}

const CAMP = campOf({
  night: { low_c: 20, wind_m_s: 1, rain_mm_h: 9, thunder: "likely", stop_gust_m_s: 13, moon: "full" },
});

function read(text: string, mapping?: object): Forecast {
  const found = mapping === undefined ? undefined : readMapping(mapping);
  if (found?.ok === false) throw new Error(JSON.stringify(found.refusals));
  const forecast = readForecast(text, CAMP, found?.value);
  if (!forecast.ok) throw new Error(JSON.stringify(forecast.refusals));
  return forecast.value;
}

/** The same three hours in every form. */
const HOURS = [
  { at: "2027-05-14T18:00Z", air_c: 9, wind_m_s: 3, gust_m_s: 8, rain_mm_h: 0 },
  { at: "2027-05-15T00:00Z", air_c: 4.5, wind_m_s: 5, gust_m_s: 12, rain_mm_h: 1.5 },
  { at: "2027-05-15T03:00Z", air_c: 3, wind_m_s: 2, gust_m_s: 5, rain_mm_h: 0.5 },
];
const NIGHT = { low_c: 3, high_c: 9, wind_m_s: 5, gust_m_s: 12, rain_mm_h: 1.5, hours: HOURS };

/** The text of a sample in examples/. */
function sample(name: string): string {
  return readFileSync(new URL(`../../../../examples/${name}`, import.meta.url), "utf8");
}

describe("the samples of a forecast", () => {
  it("tell the demo camp one and the same night, hour by hour, as CSV and as CoverageJSON", () => {
    const { document } = exampleCamp("demo");
    const nights = ["forecast.csv", "forecast.covjson"].map((name) => {
      const forecast = readForecast(sample(name), document);
      if (!forecast.ok || forecast.value.night === undefined) throw new Error("refused");
      expect(forecast.value.bad).toEqual([]);
      const { low_c, high_c, gust_m_s, rain_mm_h, wind_from_deg, humidity, hours } = forecast.value.night;
      return { low_c, high_c, gust_m_s, rain_mm_h, wind_from_deg, humidity, hours };
    });
    expect(nights[0]?.hours).toHaveLength(14);
    expect(nights[1]).toEqual(nights[0]);
  });

  it("have a mapping that can be used", () => {
    const mapping: unknown = JSON.parse(sample("forecast.mapping.json"));
    expect(readMapping(mapping)).toMatchObject({ ok: true });
  });
});

describe("a forecast", () => {
  it("comes from our own CSV, by the clocks of the camp or with an offset", () => {
    const text = [
      "AT;air c;wind_m_s;gust_m_s;rain_mm_h;wind_from_deg;humidity;cloud;thunder;owls",
      "20:00;9;3;8;0;200;0.7;0;none;2",
      "2027-05-15T02:00;4.5;5;12;1.5;250;0.9;1;Possible;",
      "2027-05-15T03:00Z;3;2;5;0.5;270;0.9;0.4;;",
      "2027-05-15T19:00Z;30;20;25;9;;;;;",
    ].join("\n");
    const forecast = read(text);
    expect(forecast).toMatchObject({ bad: [], leftOut: ["owls"], otherNights: 1 });
    expect(forecast.night).toMatchObject({
      ...NIGHT,
      wind_from_deg: 250,
      humidity: 0.83,
      cloud: 0.47,
      thunder: "possible",
    });
  });

  it("comes from our own JSON, which may speak of the whole night itself", () => {
    const json = JSON.stringify({
      format: "nightspan-forecast/1",
      hours: HOURS,
      night: { low_c: 1, cloud: 0.2 },
    });
    expect(read(json).night).toMatchObject({ ...NIGHT, low_c: 1, cloud: 0.2 });
    const alone = JSON.stringify({ format: "nightspan-forecast/1", night: { low_c: 1, wind_m_s: 2 } });
    expect(read(alone).night).toMatchObject({ low_c: 1, wind_m_s: 2, stop_gust_m_s: 13 });
  });

  it("comes from CoverageJSON, with its units", () => {
    const parameter = (id: string, symbol: unknown) => ({
      type: "Parameter",
      observedProperty: {
        id: `http://vocab.nerc.ac.uk/standard_name/${id}/`.replace(/\/$/, ""),
        label: { en: id },
      },
      unit: { symbol },
    });
    const range = (values: readonly (number | null)[]) => ({
      type: "NdArray",
      axisNames: ["t"],
      shape: [3],
      values,
    });
    const coverage = {
      type: "Coverage",
      domain: {
        axes: { x: { values: [10] }, y: { values: [60] }, t: { values: HOURS.map(({ at }) => at) } },
      },
      parameters: {
        TMP: parameter("air_temperature", { value: "K", type: "http://www.opengis.net/def/uom/UCUM/" }),
        WIND: parameter("wind_speed", "km/h"),
        GUST: parameter("wind_speed_of_gust", "m/s"),
        RAIN: parameter("precipitation_flux", "kg m-2 s-1"),
        MOON: parameter("moonshine", "1"),
      },
      ranges: {
        TMP: range(HOURS.map(({ air_c }) => air_c + 273.15)),
        WIND: range(HOURS.map(({ wind_m_s }) => wind_m_s * 3.6)),
        GUST: range(HOURS.map(({ gust_m_s }) => gust_m_s)),
        RAIN: range(HOURS.map(({ rain_mm_h }) => rain_mm_h / 3600)),
      },
    };
    expect(read(JSON.stringify(coverage))).toMatchObject({ night: NIGHT, bad: [], leftOut: ["MOON"] });
    const collection = { type: "CoverageCollection", coverages: [coverage] };
    expect(read(JSON.stringify(collection)).night).toMatchObject(NIGHT);
    const odd = { ...coverage, parameters: { TMP: parameter("air_temperature", "Ré") } };
    expect(faultFields(readForecast(JSON.stringify(odd), CAMP))).toEqual(["parameters.TMP.unit"]);
    const short = { ...coverage, ranges: { ...coverage.ranges, GUST: range([1]) } };
    expect(faultFields(readForecast(JSON.stringify(short), CAMP))).toEqual(["ranges.GUST.values"]);
  });

  it("comes from any other JSON by a mapping, an object an hour or lists side by side", () => {
    const series = HOURS.map(({ at, air_c, ...rest }) => ({
      time: at,
      data: { now: { t: air_c * 1.8 + 32 }, rest },
    }));
    const figures = { wind_m_s: "wind_m_s", gust_m_s: "gust_m_s", rain_mm_h: "rain_mm_h" };
    const units = { wind_m_s: "m/s", gust_m_s: "m/s", rain_mm_h: "mm/h" };
    const at = (lead: string) =>
      Object.fromEntries(
        Object.entries(figures).map(([name, path]) => [
          name,
          { path: lead + path, unit: Reflect.get(units, name) as string },
        ]),
      );
    const byHour = {
      format: "nightspan-mapping/1",
      hours: "a.series",
      at: { path: "time" },
      air_c: { path: "data.now.t", unit: "F" },
      ...at("data.rest."),
    };
    expect(read(JSON.stringify({ a: { series } }), byHour)).toMatchObject({ night: NIGHT, bad: [] });
    const columns = {
      h: [
        {
          t: HOURS.map((hour) => Date.parse(hour.at) / 1000),
          ...Object.fromEntries(
            ["air_c", ...Object.keys(figures)].map((name) => [
              name,
              HOURS.map((hour) => Reflect.get(hour, name) as number),
            ]),
          ),
        },
      ],
    };
    const byColumn = {
      format: "nightspan-mapping/1",
      at: { path: "h[0].t", unit: "unix-s" },
      air_c: { path: "h[0].air_c", unit: "C" },
      ...at("h[0]."),
    };
    expect(read(JSON.stringify(columns), byColumn).night).toMatchObject(NIGHT);
    expect(faultFields(readMapping({ ...byColumn, air_c: { path: "h", unit: "Ré" }, snow: 1 }))).toEqual([
      "snow",
      "air_c.unit",
    ]);
    expect(faultFields(readMapping([]))).toEqual(["file"]);
  });

  it("takes the place of the old one, and leaves the leader's own lines and unknown fields", () => {
    const { night } = read(JSON.stringify({ format: "nightspan-forecast/1", hours: HOURS }));
    if (night === undefined) throw new Error("no night");
    const changed = importForecast(CAMP, night);
    expect(changed.night).toEqual({ ...NIGHT, stop_gust_m_s: 13, moon: "full" });
    expect(openCamp(changed).ok).toBe(true);
    expect({ ...changed, night: 0 }).toEqual({ ...CAMP, night: 0 });
  });

  it("names rows that cannot be used, hours that cannot be placed, and a list for another night", () => {
    const text =
      "at,air_c,wind_m_s,gust_m_s\n21:00,x,1,2\nnoon,4,1,2\n22:00,4,3,2\n23:00,4,1,2\n23:00,5,1,2\n";
    const forecast = read(text);
    expect(forecast.bad.map(({ place, refusals }) => [place, refusals[0]?.field])).toEqual([
      ["line 2", "air_c"],
      ["line 3", "at"],
      ["line 4", "wind_m_s"],
      ["line 6", "at"],
    ]);
    const nowhere = campOf({ place: { lat_deg: 60, lon_deg: 10 } });
    const unplaced = readForecast("at,air_c\n21:00,4\n", nowhere);
    expect(unplaced.ok && unplaced.value.bad[0]?.refusals[0]?.need).toContain("place.timezone");
    const past = readForecast("at,air_c,wind_m_s\n2026-01-01T21:00Z,4,1\n", CAMP);
    expect(past.ok ? [] : past.refusals[0]).toMatchObject({
      need: expect.stringContaining("noon of 2027-05-14") as string,
    });
    expect(faultFields(readForecast("at,air_c\n21:00,4\n", CAMP))).toEqual(["wind_m_s"]);
    expect(faultFields(readForecast("{}", CAMP))).toEqual(["file"]);
    expect(faultFields(readForecast("low,high\n1,2\n", CAMP))).toEqual(["line 1", "line 1"]);
  });

  it("knows the units that services use", () => {
    const of = (field: string, unit: string, value: number) => findUnit(field, unit)?.(value);
    expect(of("wind_m_s", "kn", 10)).toBeCloseTo(5.14444, 5);
    expect(of("wind_m_s", "mph", 10)).toBeCloseTo(4.4704, 9);
    expect(of("air_c", "[degF]", 50)).toBeCloseTo(10, 12);
    expect(of("humidity", "%", 83)).toBeCloseTo(0.83, 12);
    expect(of("cloud", "{0..8}", 6)).toBe(0.75);
    expect(findUnit("air_c", "toString")).toBeUndefined();
  });
});
