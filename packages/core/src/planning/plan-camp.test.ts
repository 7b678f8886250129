import { describe, expect, it } from "vitest";
import { at, camp, hammock, pair, sleeper, TONIGHT, webbing } from "./testing/camp.fixture.ts";
import { onlyBerth, planned, troubles } from "./testing/planned.fixture.ts";

const TWO = [at(0, 0), at(4.2, 0)] as const;

describe("planCamp on a map", () => {
  it("finds no rule broken for ordinary sound kit, 80 kg, between two trees looked at today", () => {
    const plan = planned(
      camp()
        .trees(...TWO)
        .sleepers(1)
        .build(),
    );
    expect(plan).toMatchObject({ verdict: "clear", asked: 1, placed: 1, bound: 1, gap: 0 });
    expect(troubles(onlyBerth(plan).findings)).toEqual([]);
    expect(plan.treesLookedAt).toEqual({ done: 2, of: 2, by: ["Ngozi"], on: TONIGHT });
  });

  it("lists what was not worked out, and the cautions of every plan", () => {
    const plan = planned(
      camp()
        .trees(...TWO)
        .sleepers(1)
        .build(),
    );
    expect(plan.checked).toEqual(["site", "hang", "strength", "trunk"]);
    expect(plan.notChecked).toEqual(["tarp", "rain", "warmth", "night", "cuts", "packing"]);
    expect(plan.cautions).toContain("thunder-leave-trees");
  });

  it("says look again for a tree nobody looked at, however stout it is", () => {
    const unseen = at(4.2, 0, { condition: "not-looked-at", dbhM: 0.6 });
    const plan = planned(camp().trees(at(0, 0), unseen).sleepers(1).build());
    expect(plan.verdict).toBe("look-again");
    expect(troubles(onlyBerth(plan).findings)).toEqual(["tree.looked-at"]);
    expect(plan.treesLookedAt).toMatchObject({ done: 1, of: 2 });
  });

  it("does not take a tree for looked at that was looked at on another day", () => {
    const before = { lookedAt: { by: "Ngozi", on: "2027-05-13" } };
    const plan = planned(
      camp()
        .trees(at(0, 0), at(4.2, 0, before))
        .sleepers(1)
        .build(),
    );
    expect(plan.verdict).toBe("look-again");
    expect(plan.treesLookedAt).toMatchObject({ done: 1, of: 2 });
  });

  it("never hangs anybody on a doubtful or dead tree, on one that is not allowed or too thin", () => {
    for (const but of [
      { condition: "doubtful" },
      { condition: "dead" },
      { use: false },
      { dbhM: 0.19 },
    ] as const) {
      const plan = planned(
        camp()
          .trees(at(0, 0), at(4.2, 0, but))
          .sleepers(1)
          .build(),
      );
      expect(plan.placed, JSON.stringify(but)).toBe(0);
    }
  });

  it("keeps berths out of the reach of a dead tree, and tells the distance where it is near", () => {
    const dead = (yM: number) => at(2.1, yM, { condition: "dead", heightM: 12 });
    const near = planned(
      camp()
        .trees(...TWO, dead(13))
        .sleepers(1)
        .build(),
    );
    expect(near.placed).toBe(0);
    expect(near.supply.blockedBy["dead-tree"]).toBe(1);
    expect(near.unplaced[0]?.because).toMatchObject([
      { rule: "layout.no-berth", about: ["none-serves"] },
      { rule: "site.dead-tree-reach", demand: 11.5, limit: 12, about: ["T03"], verdict: "do-not-hang" },
    ]);
    const told = (yM: number) => {
      const build = camp()
        .trees(...TWO, dead(yM))
        .sleepers(1)
        .build();
      return onlyBerth(planned(build)).findings.find(({ rule }) => rule === "site.dead-tree-reach");
    };
    expect(told(14)).toMatchObject({ demand: 12.5, limit: 12, verdict: "look-again", about: ["T03"] });
    expect(told(19.4)).toMatchObject({ verdict: "look-again" });
    expect(told(19.6)).toMatchObject({ limit: 12, verdict: "clear" });
  });

  it("takes no look for today's where the camp has no day", () => {
    const { name, ground, rules, sleepers, groups, kit, defaultsUsed } = camp()
      .trees(...TWO)
      .sleepers(1)
      .build();
    const undated = { name, rules, sleepers, groups, kit, defaultsUsed };
    const plan = planned(ground === undefined ? undated : { ...undated, ground });
    expect(plan.treesLookedAt).toMatchObject({ done: 0, of: 2 });
    expect(onlyBerth(plan).verdict).toBe("look-again");
  });

  it("looks again where every strength was compared with an assumed weight", () => {
    const build = camp()
      .trees(...TWO)
      .sleepers(1)
      .build();
    const [one] = build.sleepers;
    if (one === undefined) throw new Error("no sleeper");
    const assumed = { field: "sleepers[].mass_kg", value: 80, for: [one.id] };
    const stated = onlyBerth(planned(build));
    const silent = onlyBerth(planned({ ...build, defaultsUsed: [assumed] }));
    expect(troubles(stated.findings)).toEqual([]);
    expect(troubles(silent.findings)).toEqual(["sleeper.weight-assumed"]);
  });

  it("says look again near a dead tree whose height is a guess", () => {
    const dead = at(2.1, 21, { condition: "dead", dbhM: 0.3 });
    const berth = onlyBerth(
      planned(
        camp()
          .trees(...TWO, dead)
          .sleepers(1)
          .build(),
      ),
    );
    expect(troubles(berth.findings)).toEqual(["tree.height-estimated"]);
  });

  it("keeps berths from under a hung-up limb and from the fire", () => {
    const limb = { id: "limb", kind: "overhead", setbackM: 3, shape: { type: "point", at: [2, 2] } } as const;
    const fire = { id: "fire", kind: "fire", setbackM: 4, shape: { type: "point", at: [2, 5] } } as const;
    const wood = () =>
      camp()
        .trees(...TWO)
        .sleepers(1);
    expect(planned(wood().obstacles(limb).build()).supply.blockedBy.overhead).toBe(1);
    expect(planned(wood().obstacles(fire).build()).supply.blockedBy.obstacle).toBe(1);
    const away = { ...fire, shape: { type: "point", at: [2, 6] } } as const;
    const [setback] = onlyBerth(planned(wood().obstacles(away).build())).findings.filter(
      ({ rule }) => rule === "site.setback",
    );
    expect(setback).toMatchObject({ demand: 4.5, limit: 4, verdict: "clear" });
  });

  it("puts the head at the lower ground, and at the first tree by id where the ground is level", () => {
    const level = onlyBerth(
      planned(
        camp()
          .trees(...TWO)
          .sleepers(1)
          .build(),
      ),
    );
    expect([level.headTree, level.footTree, level.groundKnown]).toEqual(["T01", "T02", false]);
    const sloping = camp().trees(at(0, 0, { elevationM: 5.4 }), at(4.2, 0, { elevationM: 5 }));
    const berth = onlyBerth(planned(sloping.sleepers(1).build()));
    expect([berth.headTree, berth.footTree, berth.groundKnown]).toEqual(["T02", "T01", true]);
    expect(berth.bearingRad).toBeCloseTo((3 * Math.PI) / 2, 12);
    expect(berth.hang.foot.aboveLevelM - berth.hang.foot.strapHeightM).toBeCloseTo(0.4, 9);
  });

  it("says of trees from GPS that the span is to be stepped out", () => {
    const berth = onlyBerth(
      planned(
        camp()
          .trees(...TWO)
          .ground({ source: "gps", positionErrorM: 3 })
          .sleepers(1)
          .build(),
      ),
    );
    expect(berth.stepItOut).toBe(true);
    const [stepped] = berth.findings.filter(({ rule }) => rule === "span.stepped");
    expect(stepped).toMatchObject({ verdict: "look-again", demand: 3 * Math.SQRT2 });
  });

  it("numbers berths as one reads the map: rows from the north, each from west to east", () => {
    const grid = [30, 15, 0].flatMap((yM) => [0, 15].flatMap((xM) => [at(xM, yM), at(xM + 4, yM)]));
    const plan = planned(
      camp()
        .trees(...grid)
        .sleepers(6)
        .build(),
    );
    expect(plan.berths.map(({ id, headTree }) => `${id} ${headTree}`)).toEqual([
      "1 T01",
      "2 T03",
      "3 T05",
      "4 T07",
      "5 T09",
      "6 T11",
    ]);
  });

  it("hangs the heavier sleeper on the stouter trees", () => {
    const trees = [at(0, 0, { dbhM: 0.25 }), at(4, 0, { dbhM: 0.25 }), at(0, 20), at(4, 20)];
    const people = [sleeper("light", { massKg: 60 }), sleeper("heavy", { massKg: 100 })];
    const plan = planned(
      camp()
        .trees(...trees)
        .sleepers(...people)
        .build(),
    );
    expect(plan.berths.map(({ id, sleeper: who, headTree }) => `${id} ${who} ${headTree}`)).toEqual([
      "1 heavy T03",
      "2 light T01",
    ]);
  });
});

describe("planCamp by stated pairs", () => {
  it("plans just as well without a map, but knows nothing of the surroundings", () => {
    const plan = planned(
      camp()
        .pairs(pair("p", ["red 1", "red 2"]))
        .sleepers(1)
        .build(),
    );
    expect(plan).toMatchObject({ verdict: "clear", placed: 1 });
    expect(plan.notChecked).toContain("site");
    expect(onlyBerth(plan)).toMatchObject({
      pair: "p",
      headTree: "red 1",
      footTree: "red 2",
      stepItOut: false,
    });
  });

  it("does not use pairs together that are too near each other", () => {
    const pairs = [pair("p", ["A", "B"], { tooNear: ["q"] }), pair("q", ["C", "D"])];
    const plan = planned(
      camp()
        .pairs(...pairs)
        .sleepers(2)
        .build(),
    );
    expect(plan).toMatchObject({ placed: 1, bound: 1, asked: 2 });
  });

  it("shares a tree between two pairs only where the house allows two hammocks on it", () => {
    const pairs = [pair("p", ["A", "B"]), pair("q", ["B", "C"])];
    const two = camp()
      .pairs(...pairs)
      .sleepers(2);
    expect(planned(two.build()).placed).toBe(1);
    const shared = { hammocksPerTree: { value: 2, source: "land manager" } };
    expect(planned(two.rules("usual", shared).build()).placed).toBe(2);
  });

  it("says look again where nobody measured the trunks", () => {
    const plan = planned(
      camp()
        .pairs(pair("p", ["A", "B"], { dbhAssumed: true }))
        .sleepers(1)
        .build(),
    );
    expect(troubles(onlyBerth(plan).findings)).toEqual(["tree.trunk-unknown"]);
  });

  it("lets a span counted in steps stand where its error stays inside the rules, else asks to look again", () => {
    const stepped = (spanM: number) =>
      onlyBerth(
        planned(
          camp()
            .pairs(pair("p", ["A", "B"], { spanM, stepped: true }))
            .sleepers(1)
            .build(),
        ),
      );
    expect(stepped(4.2).verdict).toBe("clear");
    const [finding] = stepped(4.9).findings.filter(({ rule }) => rule === "span.stepped");
    expect(finding).toMatchObject({ verdict: "look-again", unit: "m" });
    expect(finding?.demand).toBeCloseTo(0.04 * 4.9, 12);
    expect(finding?.limit).toBeCloseTo(0.1, 12);
  });

  it("takes the fall as stated and knows the foot strap's ground by it", () => {
    const berth = onlyBerth(
      planned(
        camp()
          .pairs(pair("p", ["A", "B"], { fallM: 0.3 }))
          .sleepers(1)
          .build(),
      ),
    );
    expect([berth.headTree, berth.groundKnown]).toEqual(["B", true]);
  });
});

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

describe("planCamp and kit", () => {
  it("keeps the three strengths apart", () => {
    const weak = [hammock("h", { maxUserKg: 82 }), webbing("w", { breakingN: 3800, ratedLoadN: 700 })];
    const { findings } = onlyBerth(
      planned(
        camp()
          .trees(...TWO)
          .sleepers(1)
          .kit(...weak)
          .build(),
      ),
    );
    const by = (rule: string) => findings.filter((finding) => finding.rule === rule);
    expect(by("part.user-weight")).toMatchObject([
      { demand: 80, limit: 82, unit: "kg", verdict: "look-again" },
    ]);
    expect(by("part.working-load")).toMatchObject([
      { limit: 700, verdict: "do-not-hang" },
      { limit: 700, verdict: "do-not-hang" },
    ]);
    const [breaking] = by("part.breaking-load");
    const [working] = by("part.working-load");
    expect((breaking?.demand ?? 0) / (working?.demand ?? 1)).toBeCloseTo(5, 12);
  });

  it("assumes an item where the store lists none of its kind, lists it, and looks again at its strength", () => {
    const plan = planned(
      camp()
        .trees(...TWO)
        .sleepers(1)
        .kit()
        .build(),
    );
    expect(plan.defaultsUsed.map(({ field }) => field)).toEqual([
      "kit.default.hammock.length_m",
      "kit.default.hammock.ridgeline_ratio",
      "kit.default.suspension.type",
    ]);
    expect(onlyBerth(plan).kit).toEqual({});
    expect(troubles(onlyBerth(plan).findings)).toEqual(["part.strength-unknown"]);
  });

  it("says who sets the strap where a short sleeper cannot reach", () => {
    const people = [
      sleeper("short", { statureM: 1.2, reachM: 1.2, massKg: 30 }),
      sleeper("tall", { leads: true }),
    ];
    const trees = [...TWO, at(0, 20), at(4.2, 20)];
    const plan = planned(
      camp()
        .trees(...trees)
        .sleepers(...people)
        .build(),
    );
    const berth = plan.berths.find((one) => one.sleeper === "short");
    expect(berth?.setBy).toBe("tall");
    expect(troubles(berth?.findings ?? [])).toEqual(["strap.reach"]);
  });

  it("keeps a pair with low straps for who could not reach high ones", () => {
    const people = [sleeper("short", { statureM: 1.45, reachM: 1.5, massKg: 70 }), sleeper("tall")];
    const trees = [at(0, 0, { dbhM: 0.4 }), at(4.6, 0, { dbhM: 0.4 }), at(0, 20), at(3.7, 20)];
    const plan = planned(
      camp()
        .trees(...trees)
        .sleepers(...people)
        .build(),
    );
    expect(plan.berths.map(({ sleeper: who, setBy, headTree }) => [who, setBy, headTree])).toEqual([
      ["short", "short", "T03"],
      ["tall", "tall", "T01"],
    ]);
  });

  it("asks for a stop line where there is a night", () => {
    const wood = camp()
      .trees(...TWO)
      .sleepers(1);
    expect(troubles(planned(wood.night().build()).findings)).toEqual(["night.stop-line-blank"]);
    expect(troubles(planned(wood.night({ stopGustMS: 12 }).build()).findings)).toEqual([]);
  });
});
