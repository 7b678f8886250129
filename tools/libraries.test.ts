import { join } from "node:path";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { ROOT } from "./source-files.mjs";

const SURROUNDINGS = /lib\.(dom|webworker)[.\w]*$|\/@types\/node\/index\.d\.ts$/;

/** The type libraries of a page, a worker or Node that the files of a project see. */
function surroundingsOf(project: string): string[] {
  const file = join(ROOT, "packages", project);
  const read: { readonly config?: unknown } = ts.readConfigFile(file, (path) => ts.sys.readFile(path));
  const parsed = ts.parseJsonConfigFileContent(read.config, ts.sys, join(file, ".."));
  const program = ts.createProgram({
    rootNames: parsed.fileNames,
    options: parsed.options,
    ...(parsed.projectReferences === undefined ? {} : { projectReferences: parsed.projectReferences }),
  });
  const seen = program.getSourceFiles().flatMap(({ fileName }) => SURROUNDINGS.exec(fileName)?.[0] ?? []);
  return seen.map((name) => name.replace(/\.d\.ts$/, "")).sort();
}

describe("what code can see of its surroundings", () => {
  it.each([
    ["core/tsconfig.src.json", []],
    ["drawing/tsconfig.src.json", []],
    ["web/tsconfig.shared.json", []],
    ["web/tsconfig.worker.json", ["lib.webworker"]],
    ["web/tsconfig.sw.json", ["lib.webworker"]],
  ])("%s: %j", (project, libraries) => {
    expect(surroundingsOf(project)).toEqual(libraries);
  });
});
