import { describe, expect, it } from "vitest";
import { readTar } from "./tar.mjs";

function entry(name: string, text: string, kind = "0"): Buffer {
  const header = Buffer.alloc(512);
  header.write(name, 0);
  header.write(text.length.toString(8).padStart(11, "0"), 124);
  header.write(kind, 156);
  const content = Buffer.alloc(Math.ceil(text.length / 512) * 512);
  content.write(text);
  return Buffer.concat([header, content]);
}

const END = Buffer.alloc(1024);

describe("readTar", () => {
  it("reads files in order, folders left out", () => {
    const archive = Buffer.concat([
      entry("lib/", "", "5"),
      entry("lib/one", "1".repeat(512)),
      entry("two", "22"),
      END,
    ]);
    expect(readTar(archive).map(({ name, content }) => [name, content.toString()])).toEqual([
      ["lib/one", "1".repeat(512)],
      ["two", "22"],
    ]);
  });

  it.each(["../escape", "lib/../../escape", "/etc/escape"])("refuses the name %s", (name) => {
    expect(() => readTar(Buffer.concat([entry(name, "x"), END]))).toThrow("unsafe name");
  });

  it("refuses an archive that is cut short", () => {
    expect(() => readTar(entry("long", "x".repeat(2000)).subarray(0, 1024))).toThrow("cut short");
  });
});
