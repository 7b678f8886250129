import { spawn, type ChildProcess } from "node:child_process";
import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as after } from "node:timers/promises";
import { describe, expect, it } from "vitest";
import { folder, ROOT } from "./testing.fixture.ts";

interface Ended {
  readonly code: number | null;
  readonly signal: NodeJS.Signals | null;
}

/** The command line as a process of its own, straight from the source, so that a signal meets the process that works. */
function begun(args: readonly string[]): { readonly child: ChildProcess; readonly ended: Promise<Ended> } {
  const source = ["--import", "tsx", "--conditions=camp-source", join(ROOT, "packages/cli/src/main.ts")];
  const child = spawn(process.execPath, [...source, ...args], { cwd: ROOT, stdio: "ignore" });
  const ended = new Promise<Ended>((resolve) => {
    child.on("close", (code, signal) => {
      resolve({ code, signal });
    });
  });
  return { child, ended };
}

/** A wood in rows that takes many seconds to plan. */
function largeCamp(): string {
  const trees = Array.from({ length: 3600 }, (_, at) => ({
    id: `t${at}`,
    x_m: 3.4 * (at % 60) + 0.5 * Math.sin(7 * at),
    y_m: 3.4 * Math.floor(at / 60) + 0.5 * Math.cos(5 * at),
    dbh_cm: 30,
  }));
  const groups = Array.from({ length: 40 }, (_, at) => ({ id: `g${at}`, within_m: 15 }));
  const sleepers = Array.from({ length: 320 }, (_, at) => ({
    id: `s${at}`,
    name: `S ${at}`,
    stature_m: 1.6 + (at % 9) * 0.03,
    mass_kg: 50 + (at % 30),
    group: `g${Math.floor(at / 8)}`,
    ...(at % 5 === 1 ? { near: [`s${(at * 7) % 320}`] } : {}),
  }));
  return JSON.stringify({ format: "nightspan-camp/1", name: "Large", ground: { trees }, groups, sleepers });
}

describe("an interrupt", () => {
  it("ends a search at once, and nothing is written", async () => {
    const here = folder({ "large.camp.json": largeCamp() });
    const out = join(here, "out");
    const { child, ended } = begun(["plan", join(here, "large.camp.json"), "--out", out]);
    await after(2500);
    expect(child.exitCode).toBeNull();
    const asked = Date.now();
    child.kill("SIGINT");
    expect(await ended).toEqual({ code: null, signal: "SIGINT" });
    expect(Date.now() - asked).toBeLessThan(5000);
    expect(readdirSync(here)).toEqual(["large.camp.json"]);
  }, 60_000);

  it("leaves all papers or none, whenever it comes", async () => {
    for (const waitMs of [700, 1300, 1700, 2100]) {
      const out = join(folder(), "out");
      const { child, ended } = begun(["plan", "examples/demo.camp.json", "--out", out]);
      await after(waitMs);
      child.kill("SIGINT");
      const { signal } = await ended;
      const names = existsSync(out) ? readdirSync(out, { recursive: true, encoding: "utf8" }) : [];
      expect(names.filter((name) => name.endsWith(".new"))).toEqual([]);
      const isWhole = ["plan.json", "map.svg", "cards.html"].every((name) => names.includes(name));
      expect([waitMs, signal, isWhole || !names.includes("plan.json")]).toEqual([waitMs, signal, true]);
    }
  }, 120_000);
});
