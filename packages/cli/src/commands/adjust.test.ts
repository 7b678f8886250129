import { beforeAll, describe, expect, it } from "vitest";
import { folder, lines, ran } from "../testing.fixture.ts";

let plan = "";

beforeAll(async () => {
  plan = (await ran(["plan", "examples/demo.camp.json", "--json"])).out;
});

async function adjusted(found: unknown, ...more: readonly string[]) {
  const cwd = folder({ "plan.json": plan, "found.json": JSON.stringify(found) });
  return ran(["adjust", "plan.json", "--berth", "3", "--measured", "found.json", ...more], { cwd });
}

/** What stands at a path of a JSON value. */
function at(value: unknown, ...path: readonly (string | number)[]): unknown {
  return path.reduce<unknown>((inner, step) => {
    if (typeof inner !== "object" || inner === null) return undefined;
    return Object.entries(inner).find(([key]) => key === String(step))?.[1];
  }, value);
}

describe("adjust", () => {
  it("needs the saved plan alone, and says one thing to change", async () => {
    const { code, out, err } = await adjusted({ seat_height_m: 0.4, slides: "to-foot" });
    expect(err).toBe("");
    expect([0, 1]).toContain(code);
    expect(lines(out)[0]).toMatch(/^(?:Look again|Do not hang)\.$/);
    expect(out).toMatch(/\nOne thing to change\n {2}(?:Let out|Take in|Move) .*\n {2}Then sit again/);
    expect(out).not.toMatch(/\d\s?(?:kg|N)\b/);
  });

  it("answers in JSON by the contract, and in words the same", async () => {
    const found = { seat_height_m: 0.4, head: { angle_deg: 33 }, foot: { angle_deg: 33 } };
    const [words, json] = [await adjusted(found), await adjusted(found, "--json")];
    const answer: unknown = JSON.parse(json.out);
    expect(answer).toMatchObject({
      berth: "3",
      state: { head: {}, foot: {} },
      off: expect.any(Array) as unknown,
      next: "change",
      instruction: {
        end: expect.any(String) as unknown,
        action: "take-in",
        cm: expect.any(Number) as unknown,
      },
      predicted: { head: {}, foot: {} },
      verdict: expect.any(String) as unknown,
    });
    expect(json.code).toBe(words.code);
  });

  it("leaves a hang that is as planned", async () => {
    const angle = (end: string) => at(JSON.parse(plan), "berths", 2, "hang", end, "angle_deg");
    const { code, out } = await adjusted({
      head: { angle_deg: angle("head") },
      foot: { angle_deg: angle("foot") },
    });
    expect(code).toBe(0);
    expect(out).toContain("\n  Leave it as it is.\n");
  });

  it("ends with 1 while the straps are far too flat", async () => {
    const { code, out } = await adjusted({ head: { angle_deg: 12 }, foot: { angle_deg: 12 } });
    expect(code).toBe(1);
    expect(lines(out)[0]).toBe("Do not hang.");
  });

  it("comes right when what it says is followed and told again", async () => {
    const measured = { seat_height_m: 0.4 };
    const first: unknown = JSON.parse((await adjusted(measured, "--json")).out);
    const step = { end: at(first, "instruction", "end"), action: at(first, "instruction", "action") };
    const followed = [{ ...step, cm: at(first, "instruction", "cm"), measured }];
    const again = await adjusted({ seat_height_m: 0.48, followed });
    expect(again.out).toContain("Leave it as it is.");
  });

  it("answers a symptom without anything measured", async () => {
    const cwd = folder({ "plan.json": plan });
    const { code, out } = await ran(["adjust", "plan.json", "--berth", "3", "--symptom", "calf-ridge"], {
      cwd,
    });
    expect(code).toBe(0);
    expect(out).toContain("\nA ridge under the calves, knees forced straight\n");
    expect(out).toContain("\nWhat helps besides\n");
  });

  it("refuses with 2 what cannot be used, all of it at once, and prints nothing else", async () => {
    const bad = await adjusted({ spam: 1, seat_height_m: "low", head: { angle_deg: 99 } });
    expect({ code: bad.code, out: bad.out }).toEqual({ code: 2, out: "" });
    expect(lines(bad.err).length).toBe(3);
    const cwd = folder({ "plan.json": plan, "found.json": "{}" });
    const [nobody, nothing, word, broken] = [
      await ran(["adjust", "plan.json", "--berth", "99", "--measured", "found.json"], { cwd }),
      await ran(["adjust", "plan.json", "--berth", "3"], { cwd }),
      await ran(["adjust", "plan.json", "--berth", "3", "--symptom", "cold"], { cwd }),
      await ran(["adjust", "found.json", "--berth", "3", "--measured", "none.json"], { cwd }),
    ];
    expect([nobody, nothing, word, broken].map(({ code }) => code)).toEqual([2, 2, 2, 2]);
    expect(nobody.err).toContain('--berth: found "99", needed one of 1, 2, 3');
    expect(nothing.err).toContain("--measured or --symptom");
    expect(word.err).toContain("needed one of slides-to-foot, calf-ridge");
    expect(broken.err).toContain("none.json: found");
    expect(broken.err).toContain("found.json: format");
  });
});
