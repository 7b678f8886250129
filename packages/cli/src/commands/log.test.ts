import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { folder, ran } from "../testing.fixture.ts";

const CAMP = {
  format: "nightspan-camp/1",
  name: "Beech hill",
  date: "2027-05-14",
  ground: {
    trees: [
      { id: "A", x_m: 0, y_m: 0, dbh_cm: 32 },
      { id: "B", x_m: 4.2, y_m: 0, dbh_cm: 30 },
      { id: "C", x_m: 20, y_m: 0, dbh_cm: 32 },
      { id: "D", x_m: 24.2, y_m: 0, dbh_cm: 30 },
    ],
  },
  sleepers: [
    { id: "ada", name: "Ada", stature_m: 1.7, mass_kg: 62, age: 34, sex: "f" },
    { id: "kid", name: "أمينة", stature_m: 1.5, mass_kg: 42, age: 12 },
  ],
  kit: [
    { id: "u", kind: "under", form: "underblanket", count: 2, limit_c: -1 },
    { id: "o", kind: "over", count: 2, comfort_c: -1 },
  ],
  night: { low_c: 6, wind_m_s: 1, gust_m_s: 3, cloud: 0.8 },
};

async function planned() {
  const cwd = folder({ "a.camp.json": JSON.stringify(CAMP) });
  const first = await ran(["plan", "a.camp.json", "--json"], { cwd });
  writeFileSync(join(cwd, "plan.json"), first.out);
  return cwd;
}

interface WarmBerth {
  readonly sleeper: string;
  readonly warmth?: {
    readonly band_k?: number;
    readonly comfort_c?: number;
    readonly notes: readonly string[];
  };
}

async function warmthOf(cwd: string, args: readonly string[], sleeper: string) {
  const { out } = await ran(["plan", "a.camp.json", "--json", ...args], { cwd });
  const { berths } = JSON.parse(out) as { readonly berths: readonly WarmBerth[] };
  return berths.find((berth) => berth.sleeper === sleeper)?.warmth;
}

describe("log", () => {
  it("writes nights that the next plan learns from, and tells what is learnt", async () => {
    const cwd = await planned();
    const before = await warmthOf(cwd, [], "ada");
    for (const day of ["14", "15", "16", "17", "18", "19"]) {
      const date = ["--plan", "plan.json", "--date", `2027-05-${day}`];
      const told = ["--sleeper", "ada", "--under", "cold", "--over", "cool", "--woke", "03:30"];
      const { code } = await ran(["log", "nights.json", ...date, ...told, "--trouble", "noise,wind"], {
        cwd,
      });
      expect(code).toBe(0);
    }
    const after = await warmthOf(cwd, ["--log", "nights.json"], "ada");
    expect(after?.comfort_c).toBeGreaterThan((before?.comfort_c ?? NaN) + 2);
    expect(before?.band_k).toBe(4);
    expect(after?.band_k).toBeLessThan(4);
    expect(after?.notes).toContain("from-the-log");
    const { out } = await ran(["log", "nights.json", "--camp", "a.camp.json"], { cwd });
    expect(out).toBe("Ada: under colder than reckoned (6 nights); over colder than reckoned (6 nights).\n");
    const why = await ran(["log", "nights.json", "--camp", "a.camp.json", "--why"], { cwd });
    expect(why.out).toMatch(/under colder than reckoned by \d\.\d K, give or take \d\.\d K \(6 nights\)/);
  });

  it("keeps and tells no degree of a child", async () => {
    const cwd = await planned();
    writeFileSync(
      join(cwd, "answers.json"),
      JSON.stringify([{ sleeper: "kid", under: "cool", over: "right" }]),
    );
    const args = ["--plan", "plan.json", "--date", "2027-05-14", "--answers", "answers.json"];
    const { code, out } = await ran(["log", "n.json", ...args, "--camp", "a.camp.json", "--why"], { cwd });
    expect(code).toBe(0);
    expect(out).toContain("warmer than the rule asks under.");
    expect(out).not.toMatch(/ K\b/);
    const { nights } = JSON.parse(readFileSync(join(cwd, "n.json"), "utf8")) as {
      readonly nights: readonly { readonly sleepers: readonly object[] }[];
    };
    expect(JSON.stringify(nights[0]?.sleepers)).not.toContain("margin_k");
    expect(JSON.stringify(await warmthOf(cwd, ["--log", "n.json"], "kid"))).not.toMatch(/_[ck]"/);
  });

  it("writes nothing where an answer cannot be used", async () => {
    const cwd = await planned();
    const plan = ["log", "n.json", "--plan", "plan.json"];
    const no = async (...args: readonly string[]) => (await ran([...plan, ...args], { cwd })).err;
    expect(await no("--sleeper", "ada")).toContain("--date");
    expect(await no("--date", "2027-05-14")).toContain("--sleeper");
    expect(await no("--date", "2027-05-14", "--sleeper", "ada", "--under", "icy")).toContain("under");
    expect(await no("--date", "2027-05-14", "--sleeper", "bo", "--under", "cold")).toContain(
      "a sleeper of the plan",
    );
    expect(await no("--date", "14 May", "--sleeper", "ada", "--under", "cold")).toContain("nights[0].date");
    expect(await no("--date", "2027-05-14", "--sleeper", "ada", "--measured-low", "x")).toContain(
      "--measured-low",
    );
    expect((await ran(["log", "n.json"], { cwd })).out).toBe("n.json: 0 nights.\n");
    expect((await ran(["plan", "a.camp.json", "--log", "no.json"], { cwd })).code).toBe(2);
  });
});
