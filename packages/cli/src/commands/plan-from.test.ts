import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { readPlan } from "@nightspan/edge";
import { describe, expect, it } from "vitest";
import { exampleText, folder, ran, ROOT } from "../testing.fixture.ts";

const DEMO = join(ROOT, "examples/demo.camp.json");

interface Camp {
  ground: { trees: { id: string; use?: boolean }[] };
}

/** The demo camp planned and saved, then with the head tree of its fourth berth lost. */
async function lostTree(): Promise<{ readonly cwd: string; readonly sleeper: string }> {
  const { out } = await ran(["plan", DEMO, "--json"]);
  const before = readPlan(out);
  if (!before.ok) throw new Error("the plan can be read");
  const berth = before.value.berths[3];
  const camp = JSON.parse(exampleText("demo")) as Camp;
  for (const tree of camp.ground.trees) if (tree.id === berth?.head_tree) tree.use = false;
  const cwd = folder({ "c.camp.json": JSON.stringify(camp), "plan.json": out });
  return { cwd, sleeper: berth?.sleeper ?? "" };
}

describe("plan --from", () => {
  it("moves whoever lay at the lost tree, and tells what planning anew would do", async () => {
    const { cwd, sleeper } = await lostTree();
    const told = await ran(["plan", "c.camp.json", "--from", "plan.json"], { cwd });
    expect(told.code).toBe(0);
    expect(told.out).toMatch(/\nRepair\n {2}This plan moves one: .+\n {2}Planning anew moves \d+: cost /);
    const json = await ran(["plan", "c.camp.json", "--from", "plan.json", "--json"], { cwd });
    const plan = readPlan(json.out);
    expect(plan).toMatchObject({
      ok: true,
      value: { placed: 14, repair: { moved: [sleeper], fewest: true } },
    });
  });

  it("says so in the plan among the papers too", async () => {
    const { cwd, sleeper } = await lostTree();
    await ran(["plan", "c.camp.json", "--from", "plan.json", "--out", "papers"], { cwd });
    const plan = readPlan(readFileSync(join(cwd, "papers/plan.json"), "utf8"));
    expect(plan).toMatchObject({ ok: true, value: { repair: { moved: [sleeper] } } });
  });

  it("refuses a plan that cannot be read", async () => {
    const { cwd } = await lostTree();
    writeFileSync(join(cwd, "bad.json"), "{}");
    const told = await ran(["plan", "c.camp.json", "--from", "bad.json"], { cwd });
    expect(told).toMatchObject({ code: 2, out: "" });
    expect(told.err).toMatch(/^bad\.json: /);
    expect((await ran(["plan", "c.camp.json", "--from", "none.json"], { cwd })).err).toBe(
      'none.json: found "no such file", needed a file that can be read\n',
    );
  });
});
