import { describe, expect, it } from "vitest";
import type { HangAlternatives } from "../../plan/alternative-types.ts";
import type { Pin } from "../../plan/camp.ts";
import type { KitItem, Suspension } from "../../plan/kit.ts";
import { inDegrees } from "../../quantity/angle.ts";
import { at, camp, hammock, sleeper, webbing } from "../testing/camp.fixture.ts";
import { onlyBerth, planned } from "../testing/planned.fixture.ts";

function sling(minM: number, but: Partial<Suspension> = {}): Suspension {
  return webbing("sling", { type: "whoopie-sling", minM, maxM: 2, strapLengthM: 3, ...but });
}

const NEAR = [at(0, 0), at(4.2, 0)] as const;

/** One sleeper in a sling between two trees; what else is in the store. */
function unplacedWith(
  minM: number,
  but: Partial<Suspension>,
  ...store: readonly KitItem[]
): HangAlternatives {
  const plan = planned(
    camp()
      .trees(...NEAR)
      .sleepers(sleeper("s1", { kit: ["red", "sling"] }))
      .kit(hammock("red", { lengthM: 3.3 }), sling(minM, but), ...store)
      .build(),
  );
  const [found] = plan.unplaced[0]?.alternatives ?? [];
  if (found === undefined) throw new Error("no alternatives");
  return found;
}

const kinds = ({ tries }: HangAlternatives) => tries.map(({ kind, item }) => item ?? kind);

describe("a sling that is too long for two trees", () => {
  it("is told with its trees and what binds", () => {
    expect(unplacedWith(0.9, {})).toMatchObject({
      sleeper: "s1",
      trees: ["T01", "T02"],
      binds: "sling-shortest",
    });
    expect(unplacedWith(0.9, {}).spanM).toBeCloseTo(4.2, 9);
  });

  it("can be done without: the hammock hitched onto the tree strap, with its angle and seat", () => {
    const { tries } = unplacedWith(0.9, {});
    const [alone] = tries.filter(({ kind }) => kind === "strap-alone");
    expect(alone?.because).toEqual([]);
    expect(inDegrees(alone?.hung?.angle ?? hungNowhere())).toBeCloseTo(30, 1);
    expect(alone?.hung?.headStrapLengthM).toBeLessThan(0.9);
    expect(alone?.hung?.seatHeightM).toBeCloseTo(0.453, 2);
    expect(alone?.hung?.webbingM).toBeGreaterThan(Math.PI * 0.3 + 0.4);
  });

  it("is shorter by its connector where that makes it serve, and not where it does not", () => {
    const found = (connectorM: number) =>
      unplacedWith(0.88, { connectorM }).tries.find(({ kind }) => kind === "connector-left-out");
    expect(found(0.3)?.hung).toBeDefined();
    const short = found(0.01);
    expect(short?.hung).toBeUndefined();
    expect(short?.because[0]).toMatchObject({ rule: "sling.shortest", limit: 0.87 });
    expect(unplacedWith(0.9, {}).tries.map(({ kind }) => kind)).not.toContain("connector-left-out");
  });

  it("can be another suspension or a shorter hammock of the store, those that serve first", () => {
    const short = hammock("short", { lengthM: 2.4 });
    const told = unplacedWith(
      0.6,
      {},
      webbing("band"),
      short,
      hammock("weak", { lengthM: 2.5, maxUserKg: 70 }),
    );
    expect(kinds(told)).toContain("band");
    expect(kinds(told)).toContain("short");
    expect(kinds(told)).not.toContain("weak");
    const served = told.tries.map(({ hung }) => hung !== undefined);
    expect(served).toEqual([...served].sort((a, b) => Number(b) - Number(a)));
  });

  it("tells of every try either how it hangs or why it fails too", () => {
    for (const minM of [0.6, 0.9, 1.4]) {
      const told = unplacedWith(minM, { connectorM: 0.1 }, hammock("long", { lengthM: 4 }), webbing("band"));
      expect(told.tries.length).toBeGreaterThan(2);
      for (const { hung, because } of told.tries) expect(hung === undefined).toBe(because.length > 0);
    }
  });
});

describe("another pair near by", () => {
  it("is told where it is free, and never one where somebody lies", () => {
    const trees = [...NEAR, at(0, 12), at(4.2, 12), at(0, 30), at(4.8, 30)];
    const people = [sleeper("s1", { kit: ["red", "sling"] }), sleeper("s2", { leads: true, kit: ["band"] })];
    const store = [hammock("red", { count: 2 }), sling(0.78), webbing("band")];
    const wood = camp()
      .trees(...trees)
      .sleepers(...people)
      .kit(...store);
    const pins: readonly Pin[] = [
      { sleeper: "s1", trees: ["T01", "T02"] },
      { sleeper: "s2", trees: ["T03", "T04"] },
    ];
    const plan = planned({ ...wood.build(), pins });
    const [pin] = plan.pinsRefused ?? [];
    const pairs = pin?.alternatives?.tries.filter(({ kind }) => kind === "other-pair") ?? [];
    expect(pairs.map((one) => one.trees)).toEqual([["T05", "T06"]]);
    expect(pairs[0]?.hung).toBeDefined();
    expect(pairs[0]?.spanM).toBeCloseTo(4.8, 9);
  });
});

describe("a berth whose angle had to give way", () => {
  it("is told with what else could be done", () => {
    const build = (minM: number) =>
      onlyBerth(
        planned(
          camp()
            .trees(...NEAR)
            .sleepers(1)
            .kit(hammock("red"), sling(minM))
            .build(),
        ),
      );
    const [easy, tight] = [build(0.3), build(0.58)];
    expect(easy.alternatives).toBeUndefined();
    expect(tight.hang.notes).toContainEqual({ key: "moved-by", limit: "sling-shortest" });
    expect(tight.alternatives?.binds).toBe("sling-shortest");
    const [first] = tight.alternatives?.tries ?? [];
    expect(first?.kind).toBe("strap-alone");
    expect(Math.abs(inDegrees(first?.hung?.angle ?? hungNowhere()) - 30)).toBeLessThan(0.5);
  });
});

function hungNowhere(): never {
  throw new Error("it hangs nowhere");
}
