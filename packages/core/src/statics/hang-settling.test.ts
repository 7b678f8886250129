import { describe, expect, it } from "vitest";
import { degrees } from "../quantity/angle.ts";
import { CENTRAL_90, USUAL_ERRORS } from "./hang-errors.ts";
import { hangInput, type HangFixture } from "./hang.fixture.ts";
import { hang } from "./hang.ts";

function hung(given: HangFixture = {}) {
  const outcome = hang(hangInput(given));
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.refusals));
  return outcome.value;
}

function settling(given: HangFixture = {}) {
  const { settling: told } = hung(given);
  if (told === undefined) throw new Error("nothing settles");
  return told;
}

describe("what straps give", () => {
  it("brings the low point down by about the stretch of each side over sin of its angle", () => {
    // Straps of 1 m at 30°: each gives 15 mm in ten minutes and 1 % of its length until the morning.
    const { head, foot } = hung();
    const { tenMinutesM, overnightM } = settling();
    const overSin = (1 / Math.sin(head.angle) + 1 / Math.sin(foot.angle)) / 2;
    expect(tenMinutesM / (0.015 * overSin)).toBeCloseTo(1, 1);
    const creepM = 0.01 * ((head.strapLengthM + foot.strapLengthM) / 2);
    expect(overnightM / (creepM * overSin)).toBeCloseTo(1, 1);
  });

  it("is told as a whole too: both parts together", () => {
    const { settleM, settling: told } = hung();
    expect(settleM).toBe((told?.tenMinutesM ?? NaN) + (told?.overnightM ?? NaN));
  });

  it("is stretch as pull over stiffness says, half as much for straps twice as stiff", () => {
    const soft = settling({ suspension: { eaN: 20_000 } });
    const { head } = hung({ suspension: { eaN: 20_000 } });
    expect(soft.headStretchM).toBeCloseTo(
      (head.strapLengthM * head.pullN) / 20_000 / (1 + head.pullN / 20_000),
      9,
    );
    const stiff = settling({ suspension: { eaN: 40_000 } });
    expect(soft.headStretchM / stiff.headStretchM).toBeCloseTo(2, 1);
  });

  it("is more the flatter the straps: what the table of the trade says of a unit of stretch", () => {
    const flat = settling({ targets: { angle: degrees(26) } });
    expect(flat.tenMinutesM).toBeGreaterThan(settling().tenMinutesM);
  });

  it("tells what wet nylon gives besides, and nothing of that for slick slings", () => {
    const { wetNylonM = NaN, headStretchM } = settling();
    // Nylon stretches twice what polyester does, and a fifth of that more when wet, over sin 30°.
    expect(wetNylonM / ((2 * headStretchM * 0.2) / Math.sin(Math.PI / 6))).toBeCloseTo(1, 0);
    expect(settling({ suspension: { type: "whoopie-sling" } }).wetNylonM).toBeUndefined();
  });
});

describe("the band of what is set", () => {
  it("is the central 90 % of the errors of setting and measuring, round what was planned", () => {
    const { head, foot, band } = hung();
    const half = CENTRAL_90 * USUAL_ERRORS.strapHeightM;
    expect(band["head.strapHeightM"]).toEqual([head.strapHeightM - half, head.strapHeightM + half]);
    expect(band["foot.strapHeightM"]).toEqual([foot.strapHeightM - half, foot.strapHeightM + half]);
    const [low, high] = band.spanM ?? [NaN, NaN];
    expect((high - low) / 2).toBeCloseTo(CENTRAL_90 * 0.05, 12);
  });
});
