import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { EMPTY_LOG, openLog, readLog, withNight, writeLog, type LoggedNightDocument } from "./log-file.ts";
import { nightOfPlan } from "./night-of-plan.ts";

const NIGHT: LoggedNightDocument = {
  camp: "Beech hill",
  date: "2027-05-14",
  planned_low_c: 5,
  measured_low_c: 3.5,
  sleepers: [
    {
      sleeper: "ada",
      under: { felt: "cold", margin_k: 2.5, item: "u" },
      over: { felt: "right", margin_k: 4 },
      woke_at: "03:30",
      trouble: ["wet", "noise"],
      note: "أمينة woke her",
    },
    { sleeper: "أمينة", under: { felt: "right" }, leave_out: true },
  ],
};

describe("a log file", () => {
  it("is read into SI, and written as it was", () => {
    const text = writeLog({ ...EMPTY_LOG, nights: [NIGHT] });
    const read = readLog(text);
    if (!read.ok) throw new Error("refused");
    expect(writeLog(read.value.document)).toBe(text);
    expect(read.value.nights).toMatchObject([
      {
        plannedLowK: 278.15,
        measuredLowK: 276.65,
        sleepers: [{ under: { felt: "cold", marginK: 2.5 }, wokeAt: "03:30" }, { leaveOut: true }],
      },
    ]);
  });

  it("keeps fields that it does not know, and tells of them", () => {
    const read = openLog({ ...EMPTY_LOG, nights: [{ ...NIGHT, moon: "full" }] });
    expect(read.ok && read.value.unknownFields).toEqual(["nights[0].moon"]);
    expect(read.ok && writeLog(read.value.document)).toContain('"moon": "full"');
  });

  it("names every fault by its field", () => {
    const [first] = NIGHT.sleepers;
    const faulty = { ...first, sleeper: " ", under: { felt: "frozen" }, woke_at: "25:00" };
    const told = openLog({ ...EMPTY_LOG, nights: [{ ...NIGHT, date: "2027-02-30", sleepers: [faulty] }] });
    expect(told.ok ? [] : told.refusals.map(({ field }) => field).sort()).toEqual([
      "nights[0].date",
      "nights[0].sleepers[0].sleeper",
      "nights[0].sleepers[0].under.felt",
      "nights[0].sleepers[0].woke_at",
    ]);
    const twice = openLog({ ...EMPTY_LOG, nights: [{ ...NIGHT, sleepers: [first, first] }] });
    expect(twice.ok ? [] : twice.refusals.map(({ field }) => field)).toEqual([
      "nights[0].sleepers[1].sleeper",
    ]);
    const newer = openLog({ format: "nightspan-log/2", nights: [] });
    expect(newer.ok ? [] : newer.refusals.map(({ need }) => need)).toEqual([
      '"nightspan-log/1"; a newer file needs a newer version of Nightspan',
    ]);
    expect(readLog("[]").ok).toBe(false);
  });

  it("never throws, whatever it is given", () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        expect(typeof openLog(value).ok).toBe("boolean");
      }),
      { seed: 1, numRuns: 200 },
    );
  });

  it("takes a night more, and the later answer of the same night", () => {
    const once = withNight(EMPTY_LOG, NIGHT);
    const again = withNight(once, { ...NIGHT, sleepers: [{ sleeper: "ada", under: { felt: "cool" } }] });
    expect(again.nights).toHaveLength(1);
    expect(again.nights[0]?.sleepers.map(({ sleeper, under }) => [sleeper, under?.felt])).toEqual([
      ["أمينة", "right"],
      ["ada", "cool"],
    ]);
    expect(withNight(once, { ...NIGHT, date: "2027-05-15" }).nights).toHaveLength(2);
    expect(EMPTY_LOG.nights).toEqual([]);
  });
});

describe("a night made from a plan", () => {
  const plan = {
    camp: "Beech hill",
    berths: [
      { sleeper: "ada", warmth: { under: { item: "u", margin_k: 3 }, over: { item: "o", margin_k: 4 } } },
      { sleeper: "kid", warmth: { under: { item: "u" }, over: {} } },
    ],
  };

  it("keeps what was reckoned of grown people, and of children their word alone", () => {
    const night = nightOfPlan(plan, { date: "2027-05-14", measured_low_c: 4 }, [
      { sleeper: "ada", under: "cool", over: "right", woke_at: "04:00" },
      { sleeper: "kid", under: "right" },
      { sleeper: "guest", over: "warm" },
    ]);
    expect(night.sleepers).toEqual([
      {
        sleeper: "ada",
        woke_at: "04:00",
        under: { felt: "cool", margin_k: 3, item: "u" },
        over: { felt: "right", margin_k: 4, item: "o" },
      },
      { sleeper: "kid", under: { felt: "right", item: "u" } },
      { sleeper: "guest", over: { felt: "warm" } },
    ]);
    expect(openLog(withNight(EMPTY_LOG, night)).ok).toBe(true);
  });
});
