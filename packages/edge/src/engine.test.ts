import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { ENGINE } from "./engine.ts";

it("the engine's version is that of the packages", () => {
  for (const path of ["../package.json", "../../cli/package.json", "../../../package.json"]) {
    const text = readFileSync(new URL(path, import.meta.url), "utf8");
    expect(JSON.parse(text)).toMatchObject({ version: ENGINE });
  }
});
