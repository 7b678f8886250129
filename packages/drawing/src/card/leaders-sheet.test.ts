import { describe, expect, it } from "vitest";
import type { Plan, YouthWarmth } from "@nightspan/core";
import { harrowmere } from "../fixture/harrowmere.fixture.ts";
import { planByHand } from "../fixture/plan-by-hand.fixture.ts";
import { EIGHT } from "../fixture/wanted.fixture.ts";
import type { Item } from "../scene/scene.ts";
import { plainLabels } from "../words/plain-labels.ts";
import { plainMeasure } from "../words/plain-measure.ts";
import { leadersSheetScenes } from "./leaders-sheet-scenes.ts";

const camp = harrowmere();
const plan = planByHand(camp, EIGHT);
const words = { labels: plainLabels, measure: plainMeasure };

function said(of: Plan): readonly string[] {
  const texts = (items: readonly Item[]): readonly string[] =>
    items.flatMap((item) => {
      if (item.kind === "group") return texts(item.items);
      return item.kind === "text" ? [item.runs.map((run) => plainLabels(run.item)).join("")] : [];
    });
  return leadersSheetScenes(of, camp, words).flatMap(({ items }) => texts(items));
}

describe("the leader's sheet", () => {
  it("gives no marks of a berth that must not be hung", () => {
    const [first, ...rest] = plan.berths;
    if (first === undefined) throw new Error("no berth");
    const marks = (texts: readonly string[]): number =>
      texts.filter((text) => /^\d\.\d\d\u00a0m$/.test(text)).length;
    const refused = said({ ...plan, berths: [{ ...first, verdict: "do-not-hang" }, ...rest] });
    expect(refused).toContain("do not hang: see the card");
    expect(marks(refused)).toBe(marks(said(plan)) - 1);
  });

  it("tells first of a child whose layer is not enough", () => {
    const [first, ...rest] = plan.berths;
    const child = camp.sleepers.find(({ id }) => id === first?.sleeper);
    if (first === undefined || child === undefined) throw new Error("no berth");
    const warmth: YouthWarmth = {
      by: "youth-rule",
      under: { enough: "not-enough", item: "thin" },
      over: { enough: "enough", item: "bag" },
      weaker: "under",
      notes: [],
      checkAt: "03:00",
    };
    const of = (change: Partial<YouthWarmth>) =>
      said({ ...plan, berths: [{ ...first, warmth: { ...warmth, ...change } }, ...rest] });
    const texts = of({});
    const lacks = texts.findIndex((text) => text.startsWith(`Not warm enough tonight for ${child.name}:`));
    expect(texts[lacks]).toContain("under layer. Do not take them out without a warmer one.");
    expect(texts[lacks]).toContain("A grown person must look in at 03:00.");
    expect(lacks).toBeGreaterThan(-1);
    expect(lacks).toBeLessThan(texts.indexOf("HEAD mark"));
    const enough = of({ under: { enough: "enough", item: "thick" } });
    expect(enough.some((text) => text.includes("warm enough tonight"))).toBe(false);
  });

  it("names who has no berth", () => {
    const [person] = camp.sleepers;
    if (person === undefined) throw new Error("nobody");
    const texts = said({ ...plan, unplaced: [{ sleeper: person.id, because: [] }] });
    expect(texts.join("\n")).toContain(`No berth, sleep on the ground: ${person.name}.`);
  });
});
