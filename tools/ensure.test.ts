import { describe, expect, it } from "vitest";
import { fingerprint, nodeIsNewEnough, npmCommand } from "./ensure.mjs";

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
});
