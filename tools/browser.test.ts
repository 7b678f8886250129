import { chmodSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { delimiter, join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { fromVariable, onPath } from "./browser.mjs";

let folder = "";
let program = "";

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "nightspan-browser-"));
  program = join(folder, "chromium-browser");
  writeFileSync(program, "");
  chmodSync(program, 0o755);
});

afterAll(() => rmSync(folder, { recursive: true }));

describe("which browser", () => {
  it("takes the variable that is set, our own before the common one", () => {
    expect(fromVariable({})).toBeUndefined();
    expect(fromVariable({ CHROME_PATH: program })).toBe(program);
    expect(fromVariable({ NIGHTSPAN_BROWSER: program, CHROME_PATH: "nowhere" })).toBe(program);
  });

  it("fails aloud when the variable names no file", () => {
    expect(() => fromVariable({ NIGHTSPAN_BROWSER: join(folder, "absent") })).toThrow("NIGHTSPAN_BROWSER");
    expect(() => fromVariable({ CHROME_PATH: join(folder, "absent") })).toThrow("CHROME_PATH");
  });

  it("looks through the folders of the PATH", () => {
    expect(onPath(["", join(folder, "absent"), folder].join(delimiter))).toBe(program);
    expect(onPath(join(folder, "absent"))).toBeUndefined();
  });
});
