import { describe, expect, it } from "vitest";
import type { Ground } from "../plan/camp.ts";
import { at, camp, sleeper, TONIGHT } from "./testing/camp.fixture.ts";
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
    expect(plan.checked).toEqual(["site", "hang", "strength", "trunk", "cuts", "packing"]);
    expect(plan.notChecked).toEqual(["tarp", "rain", "warmth", "night"]);
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

  it("asks for a tape where a survey may be off by more than what is left to a fire, a limb or a dead tree", () => {
    const limb = {
      id: "limb",
      kind: "overhead",
      setbackM: 3,
      shape: { type: "point", at: [2, -5.5] },
    } as const;
    const fire = { id: "fire", kind: "fire", setbackM: 4, shape: { type: "point", at: [2, 6] } } as const;
    const dead = at(30, 0, { condition: "dead", heightM: 17 });
    const told = (ground: Partial<Ground>) =>
      onlyBerth(
        planned(
          camp()
            .trees(...TWO, dead)
            .obstacles(limb, fire)
            .ground(ground)
            .sleepers(1)
            .build(),
        ),
      ).findings.flatMap(({ rule, verdict }) => (rule.startsWith("site.") ? [`${rule}: ${verdict}`] : []));
    const all = (verdict: string) => [
      `site.dead-tree-reach: ${verdict}`,
      `site.overhead-reach: ${verdict}`,
      `site.setback: ${verdict}`,
    ];
    expect(told({})).toEqual(all("clear"));
    expect(told({ positionErrorM: 0.5 })).toEqual(all("look-again"));
    expect(told({ source: "stepped", positionErrorM: 0.01 })).toEqual(all("clear"));
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
