import { describe, expect, it } from "vitest";
import { ICE_K } from "../../heat/heat-units.ts";
import type { Camp, Night } from "../../plan/camp.ts";
import type { KitItem } from "../../plan/kit.ts";
import { at, camp, hammock, sleeper, webbing } from "../testing/camp.fixture.ts";
import { planned } from "../testing/planned.fixture.ts";
import { coldestAirOf } from "./coldest-air-of.ts";

const NIGHT: Night = {
  lowK: ICE_K + 6,
  windMS: 0,
  gustMS: 0,
  windHeightM: 10,
  rainMmH: 0,
  humidityRatio: 0.8,
  cloudRatio: 0,
};
const UNDER = { id: "u", kind: "under", form: "underblanket", count: 2, state: "in-use" } as const;
const OVER = { id: "o", kind: "over", count: 2, state: "in-use", comfortK: ICE_K - 20 } as const;

function camped(limitK: number, hollow: boolean, night: Night = NIGHT): Camp {
  const kit: readonly KitItem[] = [
    hammock("h", { count: 2 }),
    webbing("w", { count: 2 }),
    { ...UNDER, limitK },
    OVER,
  ];
  const built = camp()
    .trees(at(0, 0), at(4.2, 0))
    .sleepers(sleeper("a", { ageYears: 40 }))
    .kit(...kit)
    .night(night)
    .build();
  return built.ground === undefined ? built : { ...built, ground: { ...built.ground, hollow } };
}

describe("the coldest air of a camp", () => {
  it("is colder in a hollow and above the station, and nothing without a night", () => {
    const { night, ...day } = camped(ICE_K, false);
    expect(night).toBeDefined();
    expect(coldestAirOf(day)).toBeUndefined();
    const plain = coldestAirOf(camped(ICE_K, false))?.airK ?? Number.NaN;
    expect(plain).toBeCloseTo(ICE_K + 6, 9);
    expect(plain - (coldestAirOf(camped(ICE_K, true))?.airK ?? Number.NaN)).toBeCloseTo(5, 9);
  });

  it("is the night of shortage and verdict alike, however warm the layer", () => {
    const told = [24, 20, 16, 12, 6, 0, -7, -14].flatMap((limitC) =>
      [true, false].map((hollow) => {
        const { berths, dealing } = planned(camped(ICE_K + limitC, hollow));
        const [berth] = berths;
        expect(berth?.warmth).toBeDefined();
        const isShort = (dealing?.shortages ?? []).some(({ kind }) => kind === "under");
        expect([limitC, hollow, isShort]).toEqual([limitC, hollow, berth?.warmth?.under.enough !== "enough"]);
        return isShort;
      }),
    );
    expect(new Set(told).size).toBe(2);
  });
});
