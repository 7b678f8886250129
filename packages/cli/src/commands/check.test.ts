import { describe, expect, it } from "vitest";
import { exampleText, folder, lines, ran } from "../testing.fixture.ts";

describe("check", () => {
  it("says that a camp can be used, and what is in it", async () => {
    const { code, out, err } = await ran(["check", "examples/demo.camp.json"]);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(out).toContain("71 trees (7 not looked at yet), 14 sleepers");
  });

  it("tells ten faults in ten lines: file, field, what was found, what is needed", async () => {
    const { code, out, err } = await ran(["check", "examples/ten-faults.camp.json"]);
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(lines(err)).toHaveLength(10);
    for (const line of lines(err)) {
      expect(line).toMatch(/^examples\/ten-faults\.camp\.json: [a-z_[\]0-9.]+: found .+, needed .+$/);
    }
  });

  it("answers in JSON alone with --json, whatever it says", async () => {
    const good: unknown = JSON.parse((await ran(["check", "examples/demo.camp.json", "--json"])).out);
    expect(good).toMatchObject({ ok: true, trees: 71, not_looked_at: 7, sleepers: 14, unknown_fields: [] });
    const bad = await ran(["check", "examples/ten-faults.camp.json", "--json"]);
    expect(bad.code).toBe(2);
    const told = JSON.parse(bad.out) as { ok: boolean; refusals: readonly object[] };
    expect(told.ok).toBe(false);
    expect(told.refusals).toHaveLength(10);
    for (const refusal of told.refusals) expect(Object.keys(refusal)).toEqual(["field", "got", "need"]);
  });

  it("reports fields it does not know, and goes on", async () => {
    const text = exampleText("pairs").replace('"muster"', '"owls": 3,\n    "muster"');
    const { code, err } = await ran(["check", "c.json"], { cwd: folder({ "c.json": text }) });
    expect(code).toBe(0);
    expect(lines(err)).toEqual(["c.json: ground.owls: a field this version does not know; kept, not used"]);
  });

  it("names stems at one spot, and says that the camp can be used", async () => {
    const text = exampleText("demo").replace(
      /"trees": \[/,
      '"trees": [{ "id": "t1", "x_m": 900, "y_m": 0, "dbh_cm": 30 }, { "id": "u", "x_m": 900, "y_m": 0, "dbh_cm": 30 },',
    );
    const cwd = folder({ "c.json": text });
    const { code, out } = await ran(["check", "c.json"], { cwd });
    expect(code).toBe(0);
    expect(out).toContain("  Look again: Stems at the same spot: t1 and u. Find out which is right.\n");
    const told: unknown = JSON.parse((await ran(["check", "c.json", "--json"], { cwd })).out);
    expect(told).toMatchObject({ ok: true, look_again: [{ rule: "site.stems-touch", about: ["u"] }] });
  });

  it("keeps signs that would move a terminal's cursor off it", async () => {
    const text = exampleText("pairs").replace("Larkmoss copse", "Lark\\u001b[2J\\u202emoss");
    const { out } = await ran(["check", "c.json"], { cwd: folder({ "c.json": text }) });
    expect(out).toContain("Lark");
    for (const sign of ["\u001b", "\u202e"]) expect(out).not.toContain(sign);
  });
});
