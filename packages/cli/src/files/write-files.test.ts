import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { folder } from "../testing.fixture.ts";
import { writeFiles } from "./write-files.ts";

describe("writing files whole", () => {
  it("writes texts and bytes, into folders that were not there", () => {
    const here = folder();
    writeFiles([
      { path: join(here, "a/b.txt"), content: "né" },
      { path: join(here, "c.bin"), content: new Uint8Array([1, 2, 3]) },
    ]);
    expect(readFileSync(join(here, "a/b.txt"), "utf8")).toBe("né");
    expect([...readFileSync(join(here, "c.bin"))]).toEqual([1, 2, 3]);
  });

  it("leaves every file as it was, and nothing beside, where one cannot be written", () => {
    const here = folder({ "a.txt": "old" });
    writeFileSync(join(here, "file"), "");
    const files = [
      { path: join(here, "a.txt"), content: "new" },
      { path: join(here, "file/b.txt"), content: "new" },
    ];
    expect(() => {
      writeFiles(files);
    }).toThrow();
    expect(readFileSync(join(here, "a.txt"), "utf8")).toBe("old");
    expect(readdirSync(here).sort()).toEqual(["a.txt", "file"]);
  });

  it.runIf(existsSync("/proc/self"))("comes back from a folder where nothing can be made", () => {
    expect(() => {
      writeFiles([{ path: "/proc/no-such-folder/a.txt", content: "new" }]);
    }).toThrow(/ENOENT/);
  });

  it("takes away what it staged where the last step fails", () => {
    const here = folder();
    mkdirSync(join(here, "taken"));
    expect(() => {
      writeFiles([{ path: join(here, "taken"), content: "new" }]);
    }).toThrow();
    expect(readdirSync(here)).toEqual(["taken"]);
    expect([process.listenerCount("SIGINT"), process.listenerCount("SIGTERM")]).toEqual([0, 0]);
  });
});
