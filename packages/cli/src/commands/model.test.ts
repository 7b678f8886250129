import { MODEL_NAMES, MODELS } from "@nightspan/edge";
import { describe, expect, it } from "vitest";
import { lines, ran } from "../testing.fixture.ts";

describe("model", () => {
  it("lists what is built", async () => {
    const { code, out } = await ran(["model"]);
    expect(code).toBe(0);
    expect(lines(out).map((line) => line.split(/\s/)[0])).toEqual([...MODEL_NAMES]);
    expect(lines(out)).toContainEqual(expect.stringMatching(/^two-cable +pulls of two/));
    const listed: unknown = JSON.parse((await ran(["model", "--json"])).out);
    expect(listed).toEqual(MODELS);
  });

  it("answers one object for one object", async () => {
    const { code, out } = await ran(["model", "two-cable"], {
      input: '{"load_n": 100, "left_deg": 30, "right_deg": 30}',
    });
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({
      ok: true,
      value: { left_n: 100, right_n: 100 },
      basis: { rule: "two-cable" },
    });
  });

  it.each([
    ["two-cable", '{"load_n": 100}', ["left_deg", "right_deg"]],
    ["two-cable", "{load_n}", ["line 1, column 2"]],
    ["two-cable", "[]", ["input"]],
    ["crystal-ball", "{}", ["NAME"]],
  ])("refuses %s with %s, still as one JSON object, and ends with 2", async (name, input, fields) => {
    const { code, out, err } = await ran(["model", name], { input });
    expect(code).toBe(2);
    const told = JSON.parse(out) as { ok: boolean; refusals: readonly { field: string }[] };
    expect(told.ok).toBe(false);
    expect(told.refusals.map(({ field }) => field)).toEqual(fields);
    expect(lines(err)).toHaveLength(fields.length);
  });

  it("lays out a wood, proven", async () => {
    const trees = Array.from({ length: 40 }, (_, index) => ({
      id: String(index),
      x_m: (index % 8) * 3.7 + (index % 3) * 0.4,
      y_m: Math.floor(index / 8) * 4.1,
      dbh_cm: 22 + (index % 5),
    }));
    const { code, out } = await ran(["model", "layout"], { input: JSON.stringify({ trees, people: 15 }) });
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({ ok: true, value: { proven: true, gap: 0 } });
  });
});
