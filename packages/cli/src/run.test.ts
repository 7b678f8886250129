import { truncateSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { ENGINE } from "@nightspan/edge";
import { describe, expect, it } from "vitest";
import { folder, lines, ran } from "./testing.fixture.ts";

const DEMO = "examples/demo.camp.json";

describe("the command line", () => {
  it("tells its version and its use, and ends with 0", async () => {
    expect(await ran(["--version"])).toEqual({ code: 0, out: `${ENGINE}\n`, err: "" });
    for (const args of [["--help"], ["plan", "--help"], ["help", "berth"]]) {
      const help = await ran(args);
      expect(help.code).toBe(0);
      expect(help.out).toContain("Usage: nightspan");
    }
  });

  it.each([
    [["plan", DEMO, "--jason"]],
    [["plan"]],
    [["plan", DEMO, "extra"]],
    [["dance"]],
    [["import", DEMO]],
    [["berth", "--span"]],
    [["check", DEMO, "--out", "x"]],
  ])("refuses %j in one line, with nothing on standard output", async (args) => {
    const { code, out, err } = await ran(args);
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(lines(err)).toHaveLength(1);
    expect(err).toMatch(/^nightspan: \S/);
  });

  it("suggests the option that was meant", async () => {
    expect((await ran(["plan", DEMO, "--jsn"])).err).toContain("--json");
  });

  it("shows its use where no command is given", async () => {
    const bare = await ran([]);
    expect(bare.code).toBe(2);
    expect(bare.err).toContain("Usage: nightspan");
  });

  it("tells a file that cannot be read in one line", async () => {
    const here = folder({ "latin1.camp.json": "" });
    writeFileSync(join(here, "latin1.camp.json"), Buffer.from([0x7b, 0xe9, 0x7d]));
    writeFileSync(join(here, "large.camp.json"), "{}");
    truncateSync(join(here, "large.camp.json"), 20_000_001);
    const told = async (name: string) => ran(["check", name], { cwd: here });
    expect(await told("none.camp.json")).toEqual({
      code: 2,
      out: "",
      err: 'none.camp.json: found "no such file", needed a file that can be read\n',
    });
    expect((await told(".")).err).toBe('.: found "a folder", needed a file that can be read\n');
    expect((await told("latin1.camp.json")).err).toContain("needed text in UTF-8");
    expect((await told("large.camp.json")).err).toContain("needed at most 20 MB");
  });

  it("ends with 70 at a mistake of its own", async () => {
    const broken = await ran(["check", DEMO], {
      out: () => {
        throw new Error("made to fail");
      },
    });
    expect(broken.code).toBe(70);
    expect(broken.err).toContain("Nightspan made a mistake.");
    expect(broken.err).toContain("made to fail");
  });
});
