import { describe, expect, it } from "vitest";
import { degrees, inDegrees } from "../quantity/angle.ts";
import { GRAVITY_M_S2 } from "../quantity/constants.ts";
import { hang } from "./hang.ts";
import { hangInput, type HangFixture } from "./hang.fixture.ts";
import type { Hang } from "./hang-types.ts";

function hung(given: HangFixture): Hang {
  const outcome = hang(hangInput(given));
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.refusals));
  return outcome.value;
}

function bindsOf(given: HangFixture): readonly (string | undefined)[] {
  const outcome = hang(hangInput(given));
  return outcome.ok ? [] : outcome.refusals.map(({ binds }) => binds);
}

describe("hang", () => {
  it("meets the targets: mean angle, foot raise, seat height from the stature", () => {
    const { head, foot, footRaiseM, seatHeightM } = hung({});
    expect(inDegrees(head.angle) + inDegrees(foot.angle)).toBeCloseTo(60, 9);
    expect(footRaiseM).toBeCloseTo(0.2, 9);
    expect(seatHeightM).toBeCloseTo(0.453, 3);
  });

  it("splits the weight so that the two downs sum to it and pull² = sideways² + down²", () => {
    const { head, foot } = hung({ hammock: { ridgelineM: 2.49 } });
    expect(head.downN + foot.downN).toBeCloseTo(80.6 * GRAVITY_M_S2, 7);
    for (const { pullN, sidewaysN, downN } of [head, foot]) {
      expect(pullN ** 2).toBeCloseTo(sidewaysN ** 2 + downN ** 2, 5);
    }
  });

  it("refuses trees too close for the cloth, and a sling too long for them", () => {
    expect(bindsOf({ spanM: 2.7 })).toContain("trees-too-close");
    expect(bindsOf({ spanM: 3.4, suspension: { minM: 0.9 } })).toContain("sling-shortest");
    expect(bindsOf({ spanM: 6, suspension: { maxM: 0.9 } })).toContain("sling-longest");
  });

  it("lets the angle fall to keep the reach, says so, and refuses where that does not do", () => {
    const { notes, foot } = hung({ spanM: 5.5, limits: { reachM: 1.9 } });
    expect(notes.join()).toContain("strap-reach");
    expect(foot.strapHeightM).toBeCloseTo(1.9, 6);
    expect(bindsOf({ spanM: 7, limits: { reachM: 1.9 } })).toContain("strap-reach");
  });

  it("refuses bad fields by name, all at once", () => {
    const outcome = hang(
      hangInput({
        spanM: Number.NaN,
        sleeper: { massKg: -80 },
        hammock: { ridgelineM: 3.2 },
        targets: { angle: degrees(80) },
      }),
    );
    const fields = outcome.ok ? [] : outcome.refusals.map(({ field }) => field);
    expect(fields).toEqual(["spanM", "hammock.ridgelineM", "sleeper.massKg", "targets.angle"]);
  });
});
