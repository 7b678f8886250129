import { handMarks, type Camp, type Plan, type PlannedBerth } from "@nightspan/core";
import {
  berthScene,
  cardBackScene,
  cardScene,
  leadersSheetScenes,
  pocketTables,
  type Item,
  type Scene,
} from "@nightspan/drawing";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { exampleCamp, planOf } from "../examples.fixture.ts";
import { campOfOne } from "../format/camp-of-one.ts";
import { openCamp } from "../format/open-camp.ts";
import { berthTable } from "./berth-table.ts";
import { labels, measure } from "./labels.ts";
import { handDifference, handLength } from "./quantities.ts";
import { footSentence, headSentence } from "./say-hang.ts";

const words = { labels, measure };

/** All that a drawing says, a text a line. */
function said(scenes: readonly Scene[]): readonly string[] {
  const of = (items: readonly Item[]): readonly string[] =>
    items.flatMap((item) => {
      if (item.kind === "group") return of(item.items);
      return item.kind === "text" ? [item.runs.map((run) => labels(run.item)).join("")] : [];
    });
  return scenes.flatMap(({ items }) => of(items));
}

/** What every place that tells a berth's marks must say. */
function expectAgreed(plan: Plan, camp: Camp, berth: PlannedBerth): void {
  const { headHeightM, footOverHeadM, headStrapM, footStrapM } = handMarks(berth);
  const [head, over] = [handLength(headHeightM), handDifference(Math.abs(footOverHeadM))];
  const row = berthTable(plan, camp).find((line) => line.startsWith(`${berth.id} `)) ?? "";
  const side = berthScene(plan, camp, berth.id, { words, widthPx: 1000 });
  const sheet = said(leadersSheetScenes(plan, camp, words));
  const drawings = [
    said([cardBackScene(plan, camp, berth.id, words)]),
    said([side]),
    sheet.slice(sheet.indexOf(berth.id)),
    [row],
    [headSentence(berth, camp)],
  ].map((texts) => texts.join("\n"));
  for (const text of drawings) expect(text).toContain(head);
  const front = said([cardScene(plan, camp, berth.id, words)]).join("\n");
  if (berth.verdict === "do-not-hang") return;
  const [number = ""] = head.split("\u00a0");
  expect(front).toContain(number);
  expect(front.replaceAll("\n", "\u00a0")).toContain(handDifference(footStrapM));
  expect(headSentence(berth, camp)).toContain(handLength(headStrapM));
  if (Math.abs(footOverHeadM) < 0.01) return;
  for (const text of [...drawings.slice(0, 4), footSentence(berth, camp)]) expect(text).toContain(over);
  expect(front.replaceAll("\n", "\u00a0")).toContain(over);
}

describe("card, back, sheet, table, side view and sentence", () => {
  it("tell the same marks of every berth of the demo", () => {
    const { camp } = exampleCamp("demo");
    const plan = planOf(camp);
    expect(plan.berths.length).toBeGreaterThan(10);
    for (const berth of plan.berths) expectAgreed(plan, camp, berth);
  });

  it("tell the same marks as the pocket table, of fifty berths at random", () => {
    let hung = 0;
    fc.assert(
      fc.property(
        fc.record({
          statureM: fc.double({ min: 1.5, max: 1.95, noNaN: true }),
          stepM: fc.double({ min: 0.6, max: 0.8, noNaN: true }),
          half: fc.integer({ min: 9, max: 15 }),
        }),
        ({ statureM, stepM, half }) => {
          const opened = openCamp(campOfOne({ statureM, stepM, steps: half / 2, trunkM: 0.3 }));
          if (!opened.ok) throw new Error(JSON.stringify(opened.refusals));
          const { camp } = opened.value;
          const plan = planOf(camp);
          const [berth] = plan.berths;
          if (berth === undefined) return;
          hung += 1;
          expectAgreed(plan, camp, berth);
          const rows = pocketTables(plan, camp)[0]?.rows ?? [];
          const row = rows.find(({ steps }) => steps === half / 2)?.hung;
          const marks = handMarks(berth);
          expect(row?.head.strapHeightM).toBeCloseTo(marks.headHeightM, 9);
          expect(row?.head.strapLengthM).toBeCloseTo(marks.headStrapM, 9);
          expect(row?.foot.strapLengthM).toBeCloseTo(marks.footStrapM, 9);
          const overM = (row?.foot.strapHeightM ?? NaN) - (row?.head.strapHeightM ?? NaN);
          expect(overM).toBeCloseTo(marks.footOverHeadM, 9);
        },
      ),
      { seed: 1, numRuns: 50 },
    );
    expect(hung).toBeGreaterThan(25);
  });
});
