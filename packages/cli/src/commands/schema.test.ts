import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { ran, ROOT } from "../testing.fixture.ts";

describe("schema", () => {
  it.each(["camp", "plan", "log"])(
    "prints the schema of the %s file, which is the one on disk",
    async (name) => {
      const { code, out } = await ran(["schema", name]);
      expect(code).toBe(0);
      expect(out).toBe(readFileSync(join(ROOT, "schema", `${name}.schema.json`), "utf8"));
    },
  );

  it("prints all by name, and refuses a fourth", async () => {
    expect(Object.keys(JSON.parse((await ran(["schema"])).out) as object)).toEqual(["camp", "plan", "log"]);
    expect(await ran(["schema", "card"])).toEqual({
      code: 2,
      out: "",
      err: 'schema: NAME: found "card", needed "camp", "plan" or "log"\n',
    });
  });
});
