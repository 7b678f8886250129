import { describe, expect, it } from "vitest";
import { at, camp, hammock, sleeper, webbing } from "./testing/camp.fixture.ts";
import { onlyBerth, planned, troubles } from "./testing/planned.fixture.ts";

const TWO = [at(0, 0), at(4.2, 0)] as const;

describe("planCamp when not everybody finds a berth", () => {
  it("answers for an empty camp, no trees, and no ground at all", () => {
    expect(
      planned(
        camp()
          .trees(...TWO)
          .build(),
      ),
    ).toMatchObject({ asked: 0, placed: 0, verdict: "clear" });
    const bare = planned(camp().sleepers(2).build());
    expect(bare).toMatchObject({ asked: 2, placed: 0, bound: 0, verdict: "look-again" });
    const none = planned(camp().noGround().sleepers(1).build());
    for (const { unplaced } of [bare, none]) {
      expect(unplaced[0]?.because).toMatchObject([
        { rule: "layout.no-berth", demand: 0, limit: 1, about: ["no-ground"] },
      ]);
    }
    expect(none.notChecked).toContain("site");
  });

  it("proves how many can be placed, and says of the others that the berths are taken", () => {
    const plan = planned(
      camp()
        .trees(...TWO)
        .sleepers(2)
        .build(),
    );
    expect(plan).toMatchObject({ asked: 2, placed: 1, bound: 1 });
    expect(plan.unplaced).toMatchObject([
      { sleeper: "s2", because: [{ rule: "layout.no-berth", demand: 1, limit: 2, about: ["all-taken"] }] },
    ]);
    expect(plan.findings).toMatchObject([{ rule: "layout.no-berth", subject: "camp", demand: 1, limit: 2 }]);
  });

  it("gives leaders their berth first", () => {
    const people = [sleeper("a"), sleeper("z", { leads: true })];
    expect(
      onlyBerth(
        planned(
          camp()
            .trees(...TWO)
            .sleepers(...people)
            .build(),
        ),
      ).sleeper,
    ).toBe("z");
  });

  it("names the kit that is short", () => {
    const wood = camp()
      .trees(...TWO, at(0, 20), at(4.2, 20))
      .sleepers(2);
    const plan = planned(wood.kit(hammock("h"), webbing("w", { count: 2 })).build());
    expect(plan).toMatchObject({ placed: 1, asked: 2 });
    expect(plan.unplaced[0]?.because).toMatchObject([{ rule: "layout.kit-short", demand: 1, limit: 2 }]);
  });

  it("leaves out pairs whose hang is refused before it searches, and says what was in the way", () => {
    const sling = webbing("sling", { type: "whoopie-sling", minM: 0.9, maxM: 2 });
    const plan = planned(
      camp()
        .trees(...TWO)
        .sleepers(1)
        .kit(hammock("h"), sling)
        .build(),
    );
    expect(plan.supply).toMatchObject({ pairs: 1, blockedBy: { hang: 1 }, berths: 0 });
    const because = plan.unplaced[0]?.because ?? [];
    expect(troubles(because)).toContain("sling.shortest");
    const [short] = because.filter(({ rule }) => rule === "sling.shortest");
    expect(short).toMatchObject({ limit: 0.9, unit: "m", about: ["T01", "T02", "sling-shortest"] });
    expect(short?.demand).toBeLessThan(0.9);
  });

  it("does not count a pair as refused that serves somebody, and finds that somebody", () => {
    const sling = webbing("sling", { type: "whoopie-sling", minM: 0.9, maxM: 2 });
    const people = [sleeper("a", { kit: ["sling"] }), sleeper("b", { kit: ["w"] })];
    const store = [hammock("h", { count: 2 }), sling, webbing("w")];
    const plan = planned(
      camp()
        .trees(...TWO)
        .sleepers(...people)
        .kit(...store)
        .build(),
    );
    expect(plan.supply.blockedBy.hang).toBe(0);
    expect(onlyBerth(plan).sleeper).toBe("b");
  });

  it("refuses a pair that the webbing does not reach round", () => {
    const plan = planned(
      camp()
        .trees(...TWO)
        .sleepers(1)
        .kit(hammock("h"), webbing("w", { strapLengthM: 1.2 }))
        .build(),
    );
    expect(plan.supply.blockedBy.hang).toBe(1);
    expect(plan.unplaced[0]?.because).toMatchObject([
      { about: ["none-serves"] },
      { rule: "sling.longest", limit: 1.2 },
    ]);
  });
});
