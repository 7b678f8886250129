import { describe, expect, it } from "vitest";
import { smallCamp } from "../examples.fixture.ts";
import type { Migration } from "./migrations.ts";
import { openCamp } from "./open-camp.ts";

/** A made-up older version, in which people were called campers and heights were in centimetres. */
const OLDER: Readonly<Record<string, Migration>> = {
  "nightspan-camp/0": {
    to: "nightspan-camp/1",
    change: ({ campers, ...rest }) => ({
      ...rest,
      sleepers: Array.isArray(campers)
        ? campers.map((camper: { id: string; name: string; height_cm: number }) => ({
            id: camper.id,
            name: camper.name,
            stature_m: camper.height_cm / 100,
          }))
        : [],
    }),
  },
};

describe("migration", () => {
  const old = {
    format: "nightspan-camp/0",
    name: "Old",
    kept: 1,
    campers: [{ id: "a", name: "A", height_cm: 172 }],
  };

  it("brings an older file to the version of today, unknown fields included", () => {
    const outcome = openCamp(old, OLDER);
    expect(outcome.ok && outcome.value.camp.sleepers[0]?.statureM).toBe(1.72);
    expect(outcome.ok && outcome.value.document.format).toBe("nightspan-camp/1");
    expect(outcome.ok && outcome.value.unknownFields).toEqual(["kept"]);
    expect(old.format).toBe("nightspan-camp/0");
  });

  it("refuses a version that leads nowhere, and one that leads in a ring", () => {
    const ring = {
      "nightspan-camp/8": { to: "nightspan-camp/9", change: (document: object) => ({ ...document }) },
      "nightspan-camp/9": { to: "nightspan-camp/8", change: (document: object) => ({ ...document }) },
    };
    for (const format of ["nightspan-camp/7", "nightspan-camp/8"]) {
      const outcome = openCamp(smallCamp({ format }), ring);
      expect(outcome.ok ? [] : outcome.refusals.map(({ field }) => field)).toEqual(["format"]);
    }
  });
});
