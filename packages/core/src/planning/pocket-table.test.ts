import { describe, expect, it } from "vitest";
import { presetRules } from "../plan/rule-defaults.ts";
import { hang } from "../statics/hang.ts";
import { handMarks } from "./hand-marks.ts";
import { hangKit, hangLimits } from "./hang-request.ts";
import { pocketTable, type PocketRow, type PocketTableInput } from "./pocket-table.ts";
import { camp, hammock, sleeper, webbing } from "./testing/camp.fixture.ts";

function input(statureM: number, but: Partial<PocketTableInput> = {}): PocketTableInput {
  const one = sleeper("a", { statureM });
  const wood = camp().sleepers(one).build();
  const dealt = { sleeper: one, hammock: hammock("h"), suspension: webbing("w"), assumed: [] };
  return {
    kit: hangKit(dealt, hangLimits(wood, statureM)),
    trunkM: 0.3,
    stepM: one.stepM,
    setterStatureM: statureM,
    rules: presetRules("usual"),
    ...but,
  };
}

function table(of: PocketTableInput): readonly PocketRow[] {
  const found = pocketTable(of);
  if (!found.ok) throw new Error(JSON.stringify(found.refusals));
  return found.value;
}

describe("pocketTable", () => {
  it("has a row for each half step in the house's range", () => {
    const rows = table(input(1.75, { stepM: 0.7 }));
    expect(rows.map(({ steps }) => steps)).toEqual([4.5, 5, 5.5, 6, 6.5, 7]);
    expect(rows.every(({ spanM }) => spanM >= 3 && spanM <= 5)).toBe(true);
  });

  it("says in each row the marks of the hang itself", () => {
    const asked = input(1.75);
    for (const { spanM, hung } of table(asked)) {
      const end = { dbhM: 0.3, elevationM: 0 };
      const found = hang({ ...asked.kit, spanM, head: end, foot: end });
      const request = { ...asked.kit, spanM, head: end, foot: end };
      const marks = found.ok ? handMarks({ hang: found.value, request }) : undefined;
      expect(hung?.head.strapHeightM).toBe(marks?.headHeightM);
      expect(hung?.foot.strapHeightM).toBe(marks?.footHeightM);
      expect(hung?.foot.strapLengthM).toBe(marks?.footStrapM);
    }
  });

  it("goes higher with every half step, and marks the body of whoever sets the straps", () => {
    const rows = table(input(1.75)).flatMap(({ hung }) => hung ?? []);
    const heights = rows.map(({ head }) => head.strapHeightM);
    expect(heights).toEqual([...heights].sort((a, b) => a - b));
    expect(rows.length).toBeGreaterThan(3);
    const short = table(input(1.75, { setterStatureM: 1.5 })).flatMap(({ hung }) => hung ?? []);
    expect(short[0]?.head.mark.markM).toBeLessThan(rows[0]?.head.mark.markM ?? 0);
    expect(short[0]?.head.strapHeightM).toBe(rows[0]?.head.strapHeightM);
  });

  it("names the limit where a row cannot be hung", () => {
    const asked = input(1.75);
    const sling = { type: "whoopie-sling", minM: 0.6, maxM: 3 } as const;
    const rows = table({ ...asked, kit: { ...asked.kit, suspension: sling } });
    expect(rows[0]).toMatchObject({ binds: "sling-shortest" });
    expect(rows[0]?.hung).toBeUndefined();
    expect(rows.at(-1)?.hung).toBeDefined();
  });

  it("refuses steps nobody takes, and kit that cannot be used", () => {
    const found = pocketTable(input(1.75, { stepM: 7, trunkM: -1 }));
    expect(found.ok ? [] : found.refusals.map(({ field }) => field)).toEqual(["stepM", "trunkM"]);
    const asked = input(1.75);
    const bad = pocketTable({ ...asked, kit: { ...asked.kit, hammock: { lengthM: NaN, massKg: 0.5 } } });
    expect(bad.ok ? [] : bad.refusals.map(({ field }) => field)).toContain("hammock.lengthM");
  });
});
