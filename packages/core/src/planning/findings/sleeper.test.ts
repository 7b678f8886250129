import { describe, expect, it } from "vitest";
import type { Sleeper } from "../../plan/camp.ts";
import type { Hammock } from "../../plan/kit.ts";
import { at, camp, hammock, sleeper, webbing } from "../testing/camp.fixture.ts";
import { onlyBerth, planned, troubles } from "../testing/planned.fixture.ts";

function found(but: Partial<Sleeper>, cloth: Partial<Hammock> = {}) {
  const trees = [at(0, 0), at(4.2, 0)];
  const wood = camp().trees(...trees);
  const build = wood.sleepers(sleeper("s1", but)).kit(hammock("red", cloth), webbing("band"));
  return onlyBerth(planned(build.build())).findings;
}

describe("a small child", () => {
  it("is looked at again below six years, and not from six on or where nobody told", () => {
    expect(troubles(found({ ageYears: 5 }))).toEqual(["sleeper.small-child"]);
    expect(troubles(found({ ageYears: 6 }))).toEqual([]);
    expect(troubles(found({}))).toEqual([]);
  });

  it("is told without an age", () => {
    const [child] = found({ ageYears: 4 }).filter(({ rule }) => rule === "sleeper.small-child");
    expect(child).toMatchObject({ verdict: "look-again", demand: 1, limit: 0, about: ["s1"] });
  });
});

describe("the length of the cloth", () => {
  it("is looked at again where it is less than the stature and 1.1 m", () => {
    expect(troubles(found({ statureM: 1.9 }, { lengthM: 3 }))).toEqual([]);
    const short = found({ statureM: 1.91 }, { lengthM: 3 });
    expect(troubles(short)).toEqual(["hammock.length"]);
    const [cloth] = short.filter(({ rule }) => rule === "hammock.length");
    expect(cloth?.demand).toBe(3);
    expect(cloth?.limit).toBeCloseTo(3.01, 12);
    expect(cloth?.about).toEqual(["red"]);
  });
});
