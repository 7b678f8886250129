import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { exampleCamp, exampleText, smallCamp } from "../examples.fixture.ts";
import { openCamp, readCamp } from "./open-camp.ts";
import { writeCamp } from "./write-camp.ts";

describe("writing a camp", () => {
  it("writes what it read: same values, same order of keys, one newline at the end", () => {
    for (const name of ["demo", "pairs"]) {
      const written = writeCamp(exampleCamp(name).document);
      expect(written).toBe(`${JSON.stringify(JSON.parse(exampleText(name)), null, 2)}\n`);
      const again = readCamp(written);
      expect(again.ok && again.value).toEqual(exampleCamp(name));
    }
  });

  it("keeps unknown fields of every shape, wherever they stand", () => {
    const key = fc.constantFrom("nickname", "x-note", "__proto__", "constructor", "ünïcode");
    fc.assert(
      fc.property(key, fc.jsonValue(), (name, value) => {
        const extra: object = JSON.parse(`{${JSON.stringify(name)}: ${JSON.stringify(value)}}`) as object;
        const sleeper = { id: "s", name: "S", stature_m: 1.7, ...extra };
        const outcome = openCamp(smallCamp({ sleepers: [sleeper], ...extra }));
        expect(outcome.ok && JSON.parse(writeCamp(outcome.value.document))).toEqual(
          JSON.parse(JSON.stringify(smallCamp({ sleepers: [sleeper], ...extra }))),
        );
        expect(outcome.ok && outcome.value.unknownFields).toEqual([`sleepers[0].${name}`, name]);
      }),
      { seed: 1, numRuns: 100 },
    );
  });
});
