import { describe, expect, it } from "vitest";
import { at, camp, hammock, sleeper, webbing } from "./testing/camp.fixture.ts";
import { onlyBerth, planned, troubles } from "./testing/planned.fixture.ts";

const TWO = [at(0, 0), at(4.2, 0)] as const;

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
