import type { BorderNote, HangNote } from "@nightspan/core";
import { describe, expect, it } from "vitest";
import { sayHangNote } from "./say-hang-note.ts";

const BORDERS: readonly BorderNote[] = [
  "nearly-straight",
  "short-cloth",
  "short-straps",
  "ridgeline-barely-taut",
  "stretchy-straps",
  "steep-ground",
  "body-unlike-table",
];

describe("a note of a hang in words", () => {
  it("names the limit that moved it, or that it is outside of", () => {
    expect(sayHangNote({ key: "moved-by", limit: "strap-reach" })).toBe(
      "The strap angle gives way: at the one asked for, a strap would come higher than anybody here can reach.",
    );
    expect(sayHangNote({ key: "outside-usual", limit: "angle-steepest" })).toContain(
      "the straps would come too steep",
    );
  });

  it("is a sentence of its own for every border of the model", () => {
    const said = BORDERS.map((key): HangNote => ({ key })).map(sayHangNote);
    expect(new Set(said).size).toBe(BORDERS.length);
    for (const sentence of said) expect(sentence).toMatch(/^[A-Z].*\.$/);
  });
});
