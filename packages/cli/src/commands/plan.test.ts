import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { CAUTIONS, readPlan } from "@nightspan/edge";
import { describe, expect, it } from "vitest";
import { exampleText, folder, lines, ran, ROOT } from "../testing.fixture.ts";

const DEMO = join(ROOT, "examples/demo.camp.json");

interface Camp {
  ground: { trees: { id: string; condition: string }[] };
  kit: { id: string; count?: number; rated_load_n?: number; breaking_n?: number }[];
}

/** The demo camp with something changed. */
function changed(change: (camp: Camp) => void): string {
  const camp = JSON.parse(exampleText("demo")) as Camp;
  change(camp);
  return folder({ "c.camp.json": JSON.stringify(camp) });
}

describe("plan", () => {
  it("tells the demo camp in the order of doing", async () => {
    const { code, out, err } = await ran(["plan", DEMO]);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    await expect(out).toMatchFileSnapshot("../../golden/demo-summary.txt");
  });

  it("tells a person who watches how far it is, pairs first, and no verdict before the end", async () => {
    const { out, err } = await ran(["plan", DEMO], { watched: true });
    const told = lines(err);
    expect(told[0]).toBe("Preliminary: pairs of trees for 14 of 14. Hangs are not all worked out.");
    expect(told).toContain("Searching: 14 of 14 have a berth so far.");
    expect(err).not.toMatch(/no rule broken|look again|do not hang/);
    expect(out).toBe((await ran(["plan", DEMO])).out);
  });

  it("tells first of a child who lacks a layer, and who looks in", async () => {
    const cwd = changed(({ kit }) => {
      for (const line of kit) if (line.id === "under-full") line.count = 1;
    });
    const { out } = await ran(["plan", "c.camp.json"], { cwd });
    const told = lines(out);
    const at = told.indexOf("Before anybody sets out");
    expect(at).toBeGreaterThan(0);
    expect(at).toBeLessThan(told.indexOf("Look on the ground"));
    const sentence = told
      .slice(at + 1, told.indexOf("Look on the ground"))
      .join(" ")
      .replaceAll(/\s+/g, " ");
    expect(sentence).toContain("Not warm enough tonight for Ελένη Παππά, ");
    expect(sentence).toContain("王小梅: under layer. Do not take them out without a warmer one.");
    expect(sentence).toMatch(/Maren Ødegård looks in at \d\d:\d\d\./);
  });

  it("fits people out from the store where there is no ground", async () => {
    const { code, out } = await ran(["plan", "examples/store.camp.json"]);
    await expect(out).toMatchFileSnapshot("../../golden/store-summary.txt");
    const air = /hardest air at the hammocks: −?\d+\u00a0°C/;
    expect(out).not.toMatch(air);
    expect((await ran(["plan", "examples/store.camp.json", "--why"])).out.replaceAll(/\n +/g, " ")).toMatch(
      air,
    );
    expect(code).toBe(0);
    expect(out).not.toMatch(/Arrive by \d|sleep on the ground|as surveyed/);
  });

  it("tells pairs without a map just as well", async () => {
    const { code, out } = await ran(["plan", join(ROOT, "examples/pairs.camp.json")]);
    expect(code).toBe(0);
    await expect(out).toMatchFileSnapshot("../../golden/pairs-summary.txt");
  });

  it("has every caution, in words of its own, and never says that a berth is safe", async () => {
    const { out } = await ran(["plan", DEMO, "--why"]);
    for (const { text } of CAUTIONS) expect(out).toContain(text);
    expect(out).not.toMatch(/\b(?:safe|passes|holds|guaranteed|OK)\b/i);
  });

  it("tells nobody's weight and no pull", async () => {
    const { out } = await ran(["plan", DEMO, "--why"]);
    expect(out).not.toMatch(/\d\s?(?:kg|N)\b/);
  });

  it("prints the plan file alone with --json, also where not everybody has a berth", async () => {
    const good = await ran(["plan", DEMO, "--json"]);
    expect(good.code).toBe(0);
    expect(readPlan(good.out)).toMatchObject({
      ok: true,
      value: { asked: 14, placed: 14, verdict: "look-again" },
    });
    const few = changed((camp) => {
      camp.ground.trees = camp.ground.trees.filter(({ id }) => id < "C");
    });
    const short = await ran(["plan", "c.camp.json", "--json"], { cwd: few });
    expect(short.code).toBe(1);
    const plan = readPlan(short.out);
    expect(plan.ok && plan.value.placed < 14 && plan.value.unplaced.length).toBe(
      plan.ok && 14 - plan.value.placed,
    );
    expect(short.err).toBe("");
  });

  it("ends with 1 where a part is too weak, and says which", async () => {
    const weak = changed((camp) => {
      for (const item of camp.kit) {
        if (item.id === "webbing") item.rated_load_n = 400;
        if (item.id === "sling") item.breaking_n = 2_000;
      }
    });
    const { code, out } = await ran(["plan", "c.camp.json"], { cwd: weak });
    expect(code).toBe(1);
    expect(lines(out)[0]).toBe("Do not hang. 14 of 14 have a berth.");
    expect(out).toContain("is over the rated load of webbing.");
  });

  it("is clear only where somebody looked at every tree that carries", async () => {
    const unseen = changed((camp) => {
      for (const tree of camp.ground.trees)
        if (tree.condition === "healthy") tree.condition = "not-looked-at";
    });
    const { out } = await ran(["plan", "c.camp.json"], { cwd: unseen });
    expect(lines(out)[0]).toContain("Look again.");
  });

  it("breaks lines at a terminal's width, and colours nothing without colour", async () => {
    const narrow = await ran(["plan", DEMO], { columns: 60 });
    const told = lines(narrow.out);
    expect(Math.max(...told.slice(-20).map((line) => line.length))).toBeLessThanOrEqual(60);
    expect(told).toContain("  3   Rhodri Llywelyn: C6 to C4, 5½ steps");
    const usual = lines((await ran(["plan", DEMO], { columns: 80 })).out);
    const marks = usual.filter((line) => /^ {6}\S/.test(line));
    expect(marks.length).toBeGreaterThanOrEqual(14);
    for (const line of marks) expect(line.length).toBeLessThanOrEqual(80);
    expect(narrow.out).not.toContain("\u001b");
    expect((await ran(["plan", DEMO], { colour: true })).out).toContain("\u001b[1m");
  });
});

describe("plan --out", () => {
  it("writes every paper whole, with no weight and no pull on what is drawn", async () => {
    const here = folder();
    const { code, out } = await ran(["plan", DEMO, "--out", "papers"], { cwd: here });
    expect(code).toBe(0);
    expect(lines(out).at(-1)).toBe(
      "Files in papers: plan.json, map.svg, cards.html, leaders-sheet.html, angle-card.svg, map.pdf, cards.pdf, leaders-sheet.pdf, pocket-tables.pdf, angle-card.pdf, packing.csv, returns.csv, cuts.csv, spools.csv, night.ics, berths.gpx, berths.geojson, 14 in sheets/, 2 in a6/, 14 in berths/, 28 in cards/",
    );
    const names = readdirSync(join(here, "papers"), { recursive: true, encoding: "utf8" });
    expect(names.filter((name) => /\.(?:svg|json|html)$/.test(name))).toHaveLength(47);
    expect(names.filter((name) => name.endsWith(".pdf"))).toHaveLength(16);
    expect(names.filter((name) => name.includes(".new"))).toEqual([]);
    for (const name of names.filter((file) => /\.(?:csv|ics|gpx|geojson)$/.test(file))) {
      expect(readFileSync(join(here, "papers", name), "utf8")).not.toMatch(/mass|\d\s?(?:kg|N)\b/);
    }
    for (const name of names.filter((file) => /\.(?:svg|html)$/.test(file))) {
      const paper = readFileSync(join(here, "papers", name), "utf8");
      const words = paper.replaceAll(/base64,[^)]*/g, "");
      expect(words).not.toMatch(/\d\s?(?:kg|N)\b/);
      expect(paper).toMatch(/<\/(?:svg|html)>\n$/);
    }
  }, 90_000);

  it("writes over nothing without --force, and then leaves no card of a berth that is gone", async () => {
    const here = folder();
    const camp = join(here, "one.camp.json");
    writeFileSync(camp, JSON.stringify(ONE));
    expect((await ran(["plan", camp, "--out", "papers"], { cwd: here })).code).toBe(0);
    const stale = join(here, "papers", "cards", "berth-15-front.svg");
    writeFileSync(stale, "old");
    writeFileSync(join(here, "papers", "map.svg"), "mine");
    const again = await ran(["plan", camp, "--out", "papers"], { cwd: here });
    expect(again.code).toBe(2);
    expect(lines(again.err)).toEqual([
      'papers: plan.json: found "a file that is there", needed --force to write over it',
    ]);
    expect(again.out).toBe("");
    rmSync(join(here, "papers", "plan.json"));
    const without = await ran(["plan", camp, "--out", "papers"], { cwd: here });
    expect(without.code).toBe(2);
    expect(without.err).toContain('map.svg: found "a file that is there", needed --force to write over it');
    expect(existsSync(join(here, "papers", "plan.json"))).toBe(false);
    expect(readFileSync(join(here, "papers", "map.svg"), "utf8")).toBe("mine");
    const forced = await ran(["plan", camp, "--out", "papers", "--force"], { cwd: here });
    expect(forced.code).toBe(0);
    expect(readFileSync(join(here, "papers", "map.svg"), "utf8")).toContain("<svg");
    expect(existsSync(stale)).toBe(false);
  }, 90_000);
});

/** Two trees and somebody: the fewest papers there are. */
const ONE = {
  format: "nightspan-camp/1",
  name: "One",
  date: "2027-05-14",
  sleepers: [{ id: "ada", name: "Ada", mass_kg: 70, stature_m: 1.7, age: 30 }],
  ground: {
    trees: [
      { id: "1", x_m: 0, y_m: 0, dbh_cm: 30 },
      { id: "2", x_m: 4.2, y_m: 0, dbh_cm: 30 },
    ],
  },
};
