import { readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { linkFaults } from "./links.mjs";
import { schemaFaults } from "./schema.mjs";
import { sourceKeyModule, sourcesFault } from "./sources.mjs";
import { filesBelow, readSource, ROOT } from "./source-files.mjs";

const FILES = filesBelow();

describe("the repository", () => {
  it("has no link in its pages that leads nowhere", () => {
    const read = (path: string) => {
      const at = statSync(join(ROOT, path), { throwIfNoEntry: false });
      return at?.isDirectory() === true ? "" : at && readFileSync(join(ROOT, path), "utf8");
    };
    const pages = FILES.filter((path) => path.endsWith(".md")).map(readSource);
    expect(pages.flatMap((page) => linkFaults(page, read))).toEqual([]);
  });

  it("has source keys that are the handbook's", () => {
    expect(sourcesFault()).toBeUndefined();
  });

  it("has the JSON Schemas that the code says", () => {
    expect(schemaFaults()).toEqual([]);
  });

  it("runs each of its checks files", () => {
    const tests = FILES.filter((path) => /\.test\.tsx?$/.test(path)).map((path) => readSource(path).text);
    const rows = FILES.filter((path) => path.endsWith(".checks.json"));
    const idle = rows.filter((path) => !tests.some((text) => text.includes(path.split("/").at(-1) ?? path)));
    expect(idle).toEqual([]);
  });

  it("holds a lock file without download addresses", () => {
    for (const lock of ["package-lock.json", "tools/browser/package-lock.json"]) {
      const lines = readFileSync(join(ROOT, lock), "utf8").split("\n");
      expect(lines.filter((line) => /"resolved": "[a-z+]+:/.test(line))).toEqual([]);
    }
  });
});

describe("the type of source keys", () => {
  it("lists the keys in order", () => {
    const made = sourceKeyModule('{ "b": {}, "a": {} }');
    expect(made).toContain('export type SourceKey =\n  | "a"\n  | "b";\n');
  });
});
