import { describe, expect, it } from "vitest";
import type { OkRange } from "@nightspan/core";
import { berthFacts } from "../berth/berth-facts.ts";
import { harrowmere } from "../fixture/harrowmere.fixture.ts";
import { planByHand } from "../fixture/plan-by-hand.fixture.ts";
import { EIGHT } from "../fixture/wanted.fixture.ts";
import { plainLabels } from "../words/plain-labels.ts";
import { footServes, headServes, strapServes } from "./card-serves.ts";

const camp = harrowmere();
const plan = planByHand(camp, EIGHT);
const [berth] = plan.berths;
if (berth === undefined) throw new Error("no berth");

/** The facts of a berth whose straps stand at 1.60 and 1.85 m on level ground and are let out 80 and 85 cm. */
function facts(ok: Readonly<Record<string, OkRange>>, footOutM = 0.85) {
  const head = { ...berth?.hang.head, strapHeightM: 1.6, strapLengthM: 0.8 };
  const foot = { ...berth?.hang.foot, strapHeightM: 1.85, strapLengthM: footOutM };
  const own = berthFacts(plan, camp, berth?.id ?? "");
  const hang = { ...own.berth.hang, ok, levelFootOverHeadM: 0.25 };
  return {
    ...own,
    berth: {
      ...own.berth,
      hang: { ...hang, head: { ...hang.head, ...head }, foot: { ...hang.foot, ...foot } },
    },
  };
}

function range(low: number, high: number): OkRange {
  return { low, high, bindsLow: "angle-flattest", bindsHigh: "angle-steepest" };
}

function said({ note }: ReturnType<typeof headServes>): string | undefined {
  return note === undefined ? undefined : plainLabels(note).replaceAll("\u00a0", " ");
}

describe("what still serves, on a card", () => {
  it("is told to the centimetre, never wider than it is", () => {
    expect(said(headServes(facts({ "head.strapHeightM": range(1.521, 1.689) })))).toBe(
      "1.53 to 1.68 m serves",
    );
    const straps = { "head.strapLengthM": range(0.751, 0.859), "foot.strapLengthM": range(0.8, 0.9) };
    expect(said(strapServes(facts(straps)))).toBe("76 to 85 cm, 80 to 90 cm serves");
    expect(said(strapServes(facts(straps, 0.81)))).toBe("80 to 85 cm serves");
  });

  it("is told of the foot strap over the head strap, on either side of level", () => {
    const over = (low: number, high: number) =>
      said(footServes(facts({ "foot.strapHeightM": range(1.6 + low, 1.6 + high) })));
    expect(over(0.15, 0.35)).toBe("15 to 35 cm higher serves");
    expect(over(-0.1, 0.1)).toBe("10 cm lower to 10 cm higher serves");
    expect(over(-0.3, -0.1)).toBe("10 to 30 cm lower serves");
    expect(over(0, 0.2)).toBe("level to 20 cm higher serves");
  });

  it("is left out where it is not known", () => {
    expect([headServes, footServes, strapServes].map((serves) => serves(facts({})))).toEqual([{}, {}, {}]);
  });
});
