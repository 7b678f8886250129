import { handMarks } from "@nightspan/core";
import { berthSteps, cardScene, pocketTables } from "@nightspan/drawing";
import { describe, expect, it } from "vitest";
import { planOf } from "../examples.fixture.ts";
import { campOfOne, type TwoTrees } from "../format/camp-of-one.ts";
import { openCamp } from "../format/open-camp.ts";
import { labels, measure } from "./labels.ts";
import { stepsBetween } from "./steps-between.ts";

const STATED = 6;
const STEP_M = 0.7;
const stepped = { statureM: 1.75, stepM: STEP_M, steps: STATED, trunkM: 0.3 };
const taped = { statureM: 1.75, stepM: STEP_M, spanM: STATED * STEP_M, trunkM: 0.3 };

function told(two: TwoTrees) {
  const opened = openCamp(campOfOne(two));
  if (!opened.ok) throw new Error(JSON.stringify(opened.refusals));
  const { camp } = opened.value;
  const plan = planOf(camp);
  const [berth] = plan.berths;
  const [pocket] = pocketTables(plan, camp);
  if (berth === undefined || pocket === undefined) throw new Error("no berth");
  const texts = cardScene(plan, camp, berth.id, { labels, measure }).items.flatMap((item) =>
    item.kind === "text" ? [item.runs.map(({ item: said }) => labels(said)).join("")] : [],
  );
  return { camp, berth, rows: pocket.rows, texts };
}

describe.each([
  ["stated in steps", stepped],
  ["stated by tape", taped],
])("one sleeper and one pair %s", (_, two) => {
  const { camp, berth, rows, texts } = told(two);

  it("have the steps that were stated on the card and in the table of berths", () => {
    expect(berthSteps(berth, camp).steps).toBeCloseTo(STATED, 12);
    expect(stepsBetween(berth, camp)).toBe("6");
    const at = texts.findIndex((text) => text.startsWith("Steps, trunk middle"));
    expect(texts[at + 1] ?? texts.find((text) => text.startsWith("Step it out"))).toContain("6");
  });

  it("hang as the pocket table says for that count", () => {
    const row = rows.find(({ steps }) => steps === STATED);
    const marks = handMarks(berth);
    expect(row?.hung?.head.strapHeightM).toBeCloseTo(marks.headHeightM, 6);
    expect(row?.hung?.foot.strapHeightM).toBeCloseTo(marks.footHeightM, 6);
    expect(row?.hung?.head.strapLengthM).toBeCloseTo(marks.headStrapM, 6);
  });
});
