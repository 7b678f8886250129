import { describe, expect, it } from "vitest";
import { berthOn, BODY, RECTANGLE, weatherOf } from "./berth.fixture.ts";
import { findBestPitch, type BestPitch, type BestPitchInput } from "./best-pitch.ts";

const BASE: BestPitchInput = {
  choices: [{ item: "wide", cut: RECTANGLE, massKg: 0.8 }],
  site: {
    berth: berthOn(),
    body: BODY,
    weather: weatherOf(3, 1, 3),
    windsFrom: [-0.8, 0, 0.8],
    gustMS: 3,
    surrounding: "wood",
    cord: { setN: 80, eaN: 20_000 },
    strapRise: { head: 0.53, foot: 0.63 },
  },
  effort: "few",
  reachM: 2.1,
  overhangM: 0.15,
  headroomM: 0.2,
  ventM2: 1.5,
  rainWeight: 1,
};

function best(more: Partial<BestPitchInput> = {}): BestPitch {
  const found = findBestPitch({ ...BASE, ...more });
  if (found === undefined) throw new Error("no pitch");
  return found;
}

describe("the best pitch", () => {
  it("keeps dry, keeps its room and clears the straps", () => {
    const { best: chosen } = best();
    expect(chosen.wetM2).toBeLessThan(0.01);
    expect(chosen.room.headroomM).toBeGreaterThan(0.1);
    expect(Math.min(chosen.strapClearM.head, chosen.strapClearM.foot)).toBeGreaterThan(0.05);
    expect(Math.min(chosen.room.overhangM.head, chosen.room.overhangM.foot)).toBeGreaterThan(0.15);
  });

  it("is the same for the same berth, however often it is asked", () => {
    expect(best()).toEqual(best());
  });

  it("gets lower or closes as the wind rises, never wetter than another pitch of its list", () => {
    const windy = best({ site: { ...BASE.site, weather: weatherOf(3, 4, 9), gustMS: 9 }, effort: "many" });
    const still = best({
      site: { ...BASE.site, weather: weatherOf(3, 0.2, 0.4), gustMS: 0.4 },
      effort: "many",
    });
    const floor = ({ best: { room } }: BestPitch) => room.ventM2;
    expect(floor(windy)).toBeLessThan(floor(still));
    expect(windy.looked).toBeGreaterThan(200);
  });

  it("takes the larger of two tarps where it rains sideways", () => {
    const small = { item: "small", cut: { ...RECTANGLE, ridgeM: 2.8, widthM: 2 }, massKg: 0.4 };
    const { best: chosen } = best({
      choices: [small, ...BASE.choices],
      site: { ...BASE.site, weather: weatherOf(3, 3, 6) },
    });
    expect(chosen.choice.item).toBe("wide");
  });

  it("shows a trade-off in which nothing beats anything else", () => {
    const { tradeOff, best: chosen } = best({ effort: "many" });
    expect(tradeOff).toContain(chosen);
    expect(tradeOff.length).toBeGreaterThan(2);
    for (const a of tradeOff) {
      for (const b of tradeOff) {
        const better =
          a.wetM2 < b.wetM2 - 1e-3 &&
          a.room.headroomM > b.room.headroomM + 0.01 &&
          a.room.ventM2 > b.room.ventM2 + 0.1 &&
          a.sideLoadN < b.sideLoadN - 1;
        expect(better && b !== chosen).toBe(false);
      }
    }
  });

  it("finds nothing where the ridge cannot be reached", () => {
    expect(findBestPitch({ ...BASE, reachM: 0.8 })).toBeUndefined();
    expect(findBestPitch({ ...BASE, choices: [] })).toBeUndefined();
  });
});
