import { describe, expect, it } from "vitest";
import { ICE_K } from "../../heat/heat-units.ts";
import type { Night } from "../../plan/camp.ts";
import type { ClockHour, NightClock } from "../../plan/night-types.ts";
import { camp, sleeper } from "../testing/camp.fixture.ts";
import { berthWarmth } from "./berth-warmth.ts";
import { nightAirs } from "./night-airs.ts";
import { tonightAir } from "./tonight-air.ts";

const NIGHT: Night = {
  lowK: ICE_K + 5,
  highK: ICE_K + 15,
  windMS: 4,
  gustMS: 8,
  windHeightM: 10,
  rainMmH: 0,
  humidityRatio: 0.8,
  cloudRatio: 0.2,
};
const CAMP = camp().build();

function hour(at: string, airC: number, windMS: number): ClockHour {
  return {
    at,
    airK: ICE_K + airC,
    dewPointK: ICE_K,
    humidityRatio: 0.9,
    condensation: "unlikely",
    clothK: ICE_K + airC - 1,
    windMS,
    gustMS: 6,
    rainMmH: 0,
    skyK: ICE_K + airC - 15,
  };
}

const CLOCK: NightClock = {
  hours: [
    hour("2027-05-14T22:00Z", 9, 0.5),
    hour("2027-05-15T01:00Z", 4, 0.5),
    hour("2027-05-15T03:00Z", 3.5, 2),
    hour("2027-05-15T07:00Z", 8, 1),
  ],
  lowK: ICE_K + 2,
  lapseK: 0,
  coldPoolK: 3,
  order: "fair",
  steps: [],
  windForce: 3,
  gustForce: 4,
  findings: [],
};

describe("the air of a night", () => {
  it("goes from evening to morning by low and high where there is no clock, and comes down to the low", () => {
    const { hours, coldest, fromLow } = nightAirs(CAMP, NIGHT);
    expect([hours[0]?.at, hours.at(-1)?.at, fromLow]).toEqual(["18:00", "09:00", true]);
    expect(coldest.air.airK).toBe(NIGHT.lowK);
    const airs = hours.map(({ air }) => air.airK);
    expect(Math.max(...airs)).toBeLessThan(NIGHT.highK ?? 0);
    expect(Math.min(...airs)).toBeGreaterThanOrEqual(NIGHT.lowK - 1e-9);
  });

  it("follows the night's clock where there is one, down to the low of the hollow", () => {
    const { hours, coldest, fromLow } = nightAirs(CAMP, NIGHT, CLOCK);
    expect([hours.length, fromLow, coldest.at]).toEqual([4, false, "2027-05-15T03:00Z"]);
    expect(coldest.air).toMatchObject({ airK: ICE_K + 2, windMS: 2 });
  });

  it("is judged in the wind of an hour that is nearly as cold and takes more heat, at the low itself", () => {
    const windy = { ...CLOCK, hours: [hour("2027-05-14T22:00Z", 4.5, 9), hour("2027-05-15T03:00Z", 4, 0.2)] };
    const { coldest } = nightAirs(CAMP, NIGHT, { ...windy, lowK: ICE_K + 4 });
    expect(coldest).toMatchObject({ at: "2027-05-14T22:00Z", air: { airK: ICE_K + 4, windMS: 9 } });
    const { coldest: calm } = nightAirs(CAMP, NIGHT, { ...windy, lowK: ICE_K - 20 });
    expect(calm).toMatchObject({ at: "2027-05-15T03:00Z", air: { airK: ICE_K - 20 } });
  });

  it("sees less of a cold sky below a tarp, and less in a wood than in the open", () => {
    const [wood, open] = [tonightAir(NIGHT, "wood"), tonightAir(NIGHT, "open")];
    expect(wood.openK).toBeLessThan(wood.airK);
    expect(wood.tarpK).toBeGreaterThan(wood.openK);
    expect(open.openK).toBeLessThan(wood.openK);
    expect(open.windMS).toBeGreaterThan(wood.windMS);
  });

  it("has an adult look in on the young when the coldest stretch begins", () => {
    const child = sleeper("c", { ageYears: 12 });
    const { warmth } = berthWarmth(child, {}, nightAirs(CAMP, NIGHT, { ...CLOCK, lowK: ICE_K + 3.4 }), {});
    expect(warmth.by === "youth-rule" ? warmth.checkAt : "").toBe("2027-05-15T01:00Z");
    expect(warmth.notes).not.toContain("hours-from-low");
  });
});
