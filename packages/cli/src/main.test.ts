import { spawn } from "node:child_process";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { ROOT } from "./testing.fixture.ts";

/** The command line as a process of its own; its standard output is closed after the first bytes where asked. */
function shell(
  args: readonly string[],
  closeEarly = false,
): Promise<{ code: number | null; out: string; err: string }> {
  const command = [join(ROOT, "node_modules/tsx/dist/cli.mjs"), "--conditions=camp-source"];
  const child = spawn(process.execPath, [...command, join(ROOT, "packages/cli/src/main.ts"), ...args], {
    cwd: ROOT,
  });
  const printed = { out: "", err: "" };
  child.stdout.setEncoding("utf8").on("data", (text: string) => {
    printed.out += text;
    if (closeEarly) child.stdout.destroy();
  });
  child.stderr.setEncoding("utf8").on("data", (text: string) => {
    printed.err += text;
  });
  return new Promise((resolve) => {
    child.on("close", (code) => {
      resolve({ code, ...printed });
    });
  });
}

describe("the process", () => {
  it("plans the demo camp from the shell, in plain text through a pipe", async () => {
    const { code, out, err } = await shell(["plan", "examples/demo.camp.json"]);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(out).toContain("14 of 14 have a berth.");
    expect(out).not.toContain("\u001b");
  });

  it("is quiet where the reader closes the pipe early", async () => {
    const { code, err } = await shell(["plan", "examples/demo.camp.json", "--json"], true);
    expect({ code, err }).toEqual({ code: 0, err: "" });
  });

  it("ends with 2 at an input that cannot be used", async () => {
    expect(await shell(["check", "none.camp.json"])).toMatchObject({ code: 2, out: "" });
  });
});
