import { execFile } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { promisify } from "node:util";
import { describe, expect, it } from "vitest";
import { fingerprint, inTurn, nodeIsNewEnough, npmCommand } from "./ensure.mjs";

const ENSURE = pathToFileURL(fileURLToPath(new URL("./ensure.mjs", import.meta.url))).href;

describe("ensure", () => {
  it.each([
    ["20.19.0", true],
    ["20.20.2", true],
    ["22.0.0", true],
    ["20.18.3", false],
    ["18.20.0", false],
  ])("Node %s is new enough: %s", (version, enough) => {
    expect(nodeIsNewEnough(version)).toBe(enough);
  });

  it("has a fingerprint that follows the lock file", () => {
    expect(fingerprint("a")).toBe(fingerprint("a"));
    expect(fingerprint("a")).not.toBe(fingerprint("b"));
  });

  it("runs npm by Node itself, without a shell", () => {
    const { command, args, shell } = npmCommand(["ci"]);
    expect(command).toBe(process.execPath);
    expect(args.at(-1)).toBe("ci");
    expect(shell).toBe(false);
  });

  it("lets one process at a time work on a folder", async () => {
    const folder = mkdtempSync(join(tmpdir(), "nightspan-turn-"));
    const log = join(folder, "log");
    writeFileSync(log, "");
    const code = `
      import { appendFileSync } from "node:fs";
      import { inTurn } from ${JSON.stringify(ENSURE)};
      inTurn(${JSON.stringify(folder)}, () => {
        appendFileSync(${JSON.stringify(log)}, "in ");
        Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 100);
        appendFileSync(${JSON.stringify(log)}, "out ");
      });`;
    const run = promisify(execFile);
    await Promise.all([1, 2, 3].map(() => run(process.execPath, ["--input-type=module", "--eval", code])));
    expect(readFileSync(log, "utf8")).toBe("in out in out in out ");
    rmSync(folder, { recursive: true });
  });

  it("gives the turn back when the work fails", () => {
    const folder = join(tmpdir(), "nightspan-turn-of-nobody");
    const fail = (): never => {
      throw new Error("no network");
    };
    expect(() => inTurn(folder, fail)).toThrow("no network");
    expect(inTurn(folder, () => "again")).toBe("again");
  });
});
