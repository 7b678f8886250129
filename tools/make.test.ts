import { describe, expect, it } from "vitest";
import { importsOf, layerFaults } from "./layers.mjs";
import { handbookStub, modelFiles } from "./make.mjs";

const files = modelFiles("statics", "level-hang");
const BASE = "packages/core/src/statics/level-hang";

describe("a new model", () => {
  it("is a source, a test and a checks file, named for it", () => {
    expect(Object.keys(files)).toEqual([`${BASE}.ts`, `${BASE}.test.ts`, `${BASE}.checks.json`]);
    expect(files[`${BASE}.ts`]).toContain("export function levelHang(");
    expect(handbookStub("level-hang")).toContain("## level-hang");
  });

  it("keeps to the map", () => {
    const sources = Object.entries(files).map(([path, text]) => ({ path, text }));
    expect(layerFaults(sources.filter(({ path }) => path.endsWith(".ts")))).toEqual([]);
    expect(importsOf({ path: "", text: files[`${BASE}.test.ts`] ?? "" })).toContain("./level-hang.ts");
  });

  it("has no check row of its own making", () => {
    expect(JSON.parse(files[`${BASE}.checks.json`] ?? "")).toEqual({ model: "level-hang", rows: [] });
  });
});
