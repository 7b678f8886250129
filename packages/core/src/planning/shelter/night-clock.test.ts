import { describe, expect, it } from "vitest";
import type { Camp, Night } from "../../plan/camp.ts";
import type { NightClock } from "../../plan/night-types.ts";
import { parseInstant } from "../../shelter/civil-time.ts";
import { camp, sleeper } from "../testing/camp.fixture.ts";
import { troubles } from "../testing/planned.fixture.ts";
import { findNightClock } from "./night-clock.ts";
import { tarpWeather } from "./shelter-place.ts";
import { findTimeline } from "./timeline.ts";

const PLACE = { latDeg: 54.6, lonDeg: -2.9, elevationM: 200 };

function camped(night: Partial<Night> = {}, but: Partial<Camp> = {}): Camp {
  const people = [sleeper("a", { leads: true }), sleeper("b"), sleeper("c")];
  return {
    ...camp()
      .sleepers(...people)
      .night({ stopGustMS: 14, ...night })
      .build(),
    place: PLACE,
    ...but,
  };
}

function clockOf(...given: Parameters<typeof camped>): NightClock {
  const found = findNightClock(camped(...given), 3);
  if (found === undefined) throw new Error("no clock");
  return found.clock;
}

const minutes = (from: string, to: string) =>
  ((parseInstant(to) ?? Number.NaN) - (parseInstant(from) ?? Number.NaN)) * 1440;

describe("the night by the clock", () => {
  it("runs from before sunset to after sunrise, hour by hour, down to the low", () => {
    const { sun, hours, lowK } = clockOf({ lowK: 276, highK: 286 });
    expect(sun?.kind).toBe("night");
    const [first, last] = [hours[0]?.at ?? "", hours[hours.length - 1]?.at ?? ""];
    expect(minutes(first, sun?.sunset ?? "")).toBeGreaterThanOrEqual(119.9);
    expect(minutes(sun?.sunrise ?? "", last)).toBeGreaterThanOrEqual(59.9);
    hours.slice(1).forEach(({ at }, index) => expect(minutes(hours[index]?.at ?? "", at)).toBeCloseTo(60, 6));
    expect(Math.min(...hours.map(({ airK }) => airK))).toBeGreaterThanOrEqual(276 - 1e-9);
    expect(Math.min(...hours.map(({ airK }) => airK))).toBeLessThan(276.6);
    expect(lowK).toBe(276);
  });

  it("is colder above the station by 6.5 K a kilometre, and in a hollow on a clear calm night", () => {
    expect(clockOf({ lowK: 280, stationElevationM: 0 }).lowK).toBeCloseTo(280 - 1.3, 9);
    const wood = camped({ lowK: 280, windMS: 0, gustMS: 0, cloudRatio: 0 });
    if (wood.ground === undefined) throw new Error("no ground");
    const hollow = findNightClock({ ...wood, ground: { ...wood.ground, hollow: true } }, 3)?.clock;
    expect(hollow?.lowK).toBeCloseTo(275, 9);
    expect(troubles(hollow?.findings ?? [])).toEqual(["night.cold-pool"]);
  });

  it("asks to arrive by dark less set-up, look and margin: worked for three berths", () => {
    const setUp = { perBerthS: 1200, helpers: 2, treeCheckS: 600, marginS: 1800 };
    const { arriveBy, sun } = clockOf({}, { setUp });
    expect(arriveBy?.darkAt).toBe(sun?.dusk);
    // 20 min × 3 / 2 + 10 + 30 min.
    expect(minutes(arriveBy?.at ?? "", arriveBy?.darkAt ?? "")).toBeCloseTo(70, 1);
  });

  it("takes the table of defaults where the camp is silent, and says so", () => {
    const { clock, defaultsUsed } = findNightClock(camped(), 3) ?? {};
    expect(clock?.arriveBy).toMatchObject({ perBerthS: 1200, helpers: 1, treeCheckS: 1200, marginS: 1800 });
    expect(defaultsUsed?.map(({ field }) => field)).toEqual([
      "set_up.per_berth_min",
      "set_up.helpers",
      "set_up.tree_check_min",
      "set_up.margin_min",
      "night.high_c",
    ]);
  });

  it("knows nights that do not get dark, days without sun, and camps without place or date", () => {
    const at = (latDeg: number, date: string) => clockOf({}, { place: { latDeg, lonDeg: 20 }, date });
    expect(at(61, "2027-06-21").sun).toMatchObject({ kind: "no-dusk", dusk: null });
    expect(at(61, "2027-06-21").arriveBy?.darkAt).toBe(at(61, "2027-06-21").sun?.sunset);
    expect(at(70, "2027-06-21").sun).toMatchObject({ kind: "no-night", sunset: null });
    expect(at(70, "2027-06-21").arriveBy).toBeUndefined();
    expect(at(70, "2027-12-21").sun?.kind).toBe("no-day");
    expect(troubles(at(70, "2027-12-21").findings)).toEqual(["night.no-dark"]);
    const { place, date, ...nowhere } = camped();
    expect([place, date].includes(undefined)).toBe(false);
    expect(findNightClock(nowhere, 3)?.clock).toMatchObject({ hours: [], lowK: 278.15 });
    const undated = findNightClock({ ...nowhere, date: "2027-05-14" }, 3)?.clock;
    expect(undated?.sun).toBeUndefined();
    expect(undated?.hours.length).toBe(16);
  });

  it("takes the forecast's own hours, straight between them, and what they are silent about from the night", () => {
    const hours = [
      { at: "2027-05-14T18:00Z", airK: 288, rainMmH: 0 },
      { at: "2027-05-14T22:00Z", airK: 280, gustMS: 12, rainMmH: 3 },
      { at: "2027-05-15T06:00Z", airK: 276 },
    ];
    const clock = clockOf({ hours, lowK: 276, gustMS: 6 });
    const hour = (at: string) => clock.hours.find((one) => one.at.startsWith(at));
    expect(hour("2027-05-14T20")?.airK).toBeCloseTo(284, 9);
    expect(hour("2027-05-14T22")).toMatchObject({ gustMS: 12, rainMmH: 3 });
    expect(hour("2027-05-15T02")).toMatchObject({ gustMS: 6, rainMmH: 0 });
    expect(clock.gustForce).toBe(6);
    expect(clock.order).toBe("foul");
  });

  it("holds the stop line against every hour of the forecast, also where nobody knows the date", () => {
    const hours = [{ at: "2027-05-14T23:00Z", airK: 274, windMS: 8, gustMS: 20 }];
    const { date, ...undated } = camped({ hours });
    expect(date).toBe("2027-05-14");
    const clock = findNightClock(undated, 3)?.clock;
    expect(troubles(clock?.findings ?? [])).toEqual(["night.gust"]);
    expect(clock).toMatchObject({ lowK: 274, gustForce: 8 });
  });

  it("leaves hours of another night aside, and says so", () => {
    const hours = [{ at: "2027-05-12T23:00Z", airK: 250, gustMS: 30, rainMmH: 9 }];
    const camp = camped({ hours, lowK: 280, gustMS: 5 });
    const clock = findNightClock(camp, 3)?.clock;
    expect(troubles(clock?.findings ?? [])).toEqual(["night.hours-elsewhere"]);
    expect(clock).toMatchObject({ lowK: 280, gustForce: 3, order: "fair" });
    expect(tarpWeather(camp).rainMmH).toBe(0);
  });

  it("keeps the date of the far side of the line where its clocks do", () => {
    const at = (timezone: string) =>
      clockOf({}, { place: { latDeg: -21.2, lonDeg: -175.2, timezone } }).sun?.sunset;
    expect(at("Pacific/Tongatapu")).toMatch(/^2027-05-14T05:/);
    expect(at("Pacific/Midway")).toMatch(/^2027-05-15T05:/);
  });

  it("puts the roof up first in rain and the bed first in fair weather, looking up before all", () => {
    const [fair, foul] = [clockOf({ rainMmH: 0 }), clockOf({ rainMmH: 1 })];
    expect([fair.order, foul.order]).toEqual(["fair", "foul"]);
    expect(clockOf({ rainMmH: 0, thunder: "possible" }).order).toBe("foul");
    expect(clockOf({ rainMmH: 0, thunder: "none" }).order).toBe("fair");
    for (const { steps } of [fair, foul]) expect(steps[0]).toBe("look-up");
    expect(foul.steps.indexOf("tarp-ridge")).toBeLessThan(foul.steps.indexOf("hammock"));
    expect(fair.steps.indexOf("tarp-staged")).toBeGreaterThan(fair.steps.indexOf("hammock"));
  });

  it("compares the gust in the open with the stop line, and tells thunder", () => {
    expect(troubles(clockOf({ gustMS: 15 }).findings)).toEqual(["night.gust"]);
    expect(clockOf({ gustMS: 15 }).findings[0]?.verdict).toBe("do-not-hang");
    expect(troubles(clockOf({ gustMS: 8 }).findings)).toEqual([]);
    expect(troubles(clockOf({ thunder: "possible" }).findings)).toEqual(["night.thunder"]);
    expect(troubles(clockOf({ thunder: "none" }).findings)).toEqual([]);
  });

  it("warns of dew under tarps on a damp clear night, not on a dry windy one", () => {
    const dewy = (night: Partial<Night>) =>
      clockOf(night).hours.filter(({ condensation }) => condensation !== "unlikely").length;
    expect(dewy({ humidityRatio: 0.97, cloudRatio: 0, windMS: 0.5 })).toBeGreaterThan(2);
    expect(dewy({ humidityRatio: 0.4, cloudRatio: 1, windMS: 8 })).toBe(0);
  });
});

describe("the timeline", () => {
  it("is in order of time, from the arrival to sunrise", () => {
    const timeline = findTimeline(clockOf({ lowK: 276, highK: 286 })) ?? [];
    expect(timeline[0]?.what).toBe("arrive-by");
    expect(timeline[timeline.length - 1]?.what).toBe("sunrise");
    const times = timeline.map(({ at }) => parseInstant(at) ?? Number.NaN);
    expect(times).toEqual([...times].sort((a, b) => a - b));
    expect(timeline.map(({ what }) => what)).toEqual(
      expect.arrayContaining(["dusk-check", "dusk", "coldest", "dawn"]),
    );
  });

  it("is left out where nobody knows the date", () => {
    const { date, ...undated } = camped();
    expect(date).toBeDefined();
    const clock = findNightClock(undated, 3)?.clock;
    expect(clock === undefined ? [] : findTimeline(clock)).toBeUndefined();
  });
});
