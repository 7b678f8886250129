import type { Camp } from "@nightspan/core";
import { describe, expect, it } from "vitest";
import { exampleCamp, planOf } from "../examples.fixture.ts";
import { arriveAndStopLines } from "./night-lines.ts";

describe("what is said of the order of work", () => {
  const { camp } = exampleCamp("demo");
  if (camp.night === undefined) throw new Error("no night");
  const { night } = camp;
  const plan = planOf(camp);
  const told = (order: "fair" | "foul", but: Partial<NonNullable<Camp["night"]>>) => {
    const { nightClock } = plan;
    if (nightClock === undefined) throw new Error("no clock");
    const hours = nightClock.hours.map((hour) => ({ ...hour, rainMmH: but.rainMmH ?? 0 }));
    const lines = arriveAndStopLines(
      { ...plan, nightClock: { ...nightClock, order, hours } },
      { ...camp, night: { ...night, hours: [], ...but } },
    );
    return lines.filter((line) => line.includes("tarps first"));
  };

  it("is tarps first in rain", () => {
    expect(told("foul", { rainMmH: 2, thunder: "likely" })).toEqual([
      "Foul weather is forecast: tarps first, then straps and hammocks.",
    ]);
  });

  it("hurries nobody under the trees for thunder alone", () => {
    expect(told("foul", { rainMmH: 0, thunder: "possible" })).toEqual([
      "Thunder is forecast: tarps first, but only while none is heard. At the first thunder leave the trees, work undone.",
    ]);
    expect(told("fair", { rainMmH: 0 })).toEqual([]);
  });
});
