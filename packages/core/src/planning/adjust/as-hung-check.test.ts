import { describe, expect, it } from "vitest";
import type { Tree } from "../../site/tree.ts";
import { degrees } from "../../quantity/angle.ts";
import { at, camp } from "../testing/camp.fixture.ts";
import { onlyBerth, planned } from "../testing/planned.fixture.ts";
import { asHungCheck, type FoundOnTheSpot } from "./as-hung-check.ts";

function checkOf(found: FoundOnTheSpot, head: Partial<Tree> = {}) {
  const { request, hang, findings } = onlyBerth(
    planned(
      camp()
        .trees(at(0, 0, head), at(4.2, 0))
        .sleepers(1)
        .build(),
    ),
  );
  if (request === undefined) throw new Error("a planned berth says what it was asked for");
  const check = asHungCheck({ request, hang, findings }, found);
  if (!check.ok) throw new Error(JSON.stringify(check.refusals));
  return check.value;
}

const STRAPS = { head: { angle: degrees(28) }, foot: { angle: degrees(32) } };
const AS_PLANNED = { ...STRAPS, seatHeightM: 0.45, footRaiseM: 0.2 };

describe("asHungCheck", () => {
  it("is clear where its straps are measured as planned, between trees that were looked at", () => {
    const check = checkOf({ measured: AS_PLANNED });
    expect(check.adjustment.next).toBe("leave-it");
    expect(check.treesLookedAt).toEqual({ done: 2, of: 2 });
    expect(check.verdict).toBe("clear");
    expect(check.symptom).toBeUndefined();
  });

  it("is looked at again while nobody has measured the straps", () => {
    const check = checkOf({ measured: { seatHeightM: 0.45 } });
    expect(check.adjustment.next).toBe("leave-it");
    expect(check.adjustment.doubts).toEqual(["head.angle", "foot.angle", "footRaiseM"]);
    expect(check.verdict).toBe("look-again");
  });

  it("is looked at again while nobody has measured the seat or the foot end, well as the straps may hang", () => {
    const { adjustment, verdict } = checkOf({ measured: STRAPS });
    expect(adjustment.verdict).toBe("clear");
    expect(adjustment.doubts).toEqual(["seatHeightM", "footRaiseM"]);
    expect(verdict).toBe("look-again");
    const { seatHeightM } = AS_PLANNED;
    expect(checkOf({ measured: { ...STRAPS, seatHeightM } }).adjustment.doubts).toEqual(["footRaiseM"]);
  });

  it("is never clear by measurements that do not fit together", () => {
    for (const measured of [{ spanM: 6.5 }, { ...AS_PLANNED, head: { angle: degrees(45) } }]) {
      expect(checkOf({ measured }).verdict).not.toBe("clear");
    }
  });

  it("is never clear while nobody has looked at a tree, however well it hangs", () => {
    const check = checkOf({ measured: AS_PLANNED }, { condition: "not-looked-at" });
    expect(check.adjustment.verdict).toBe("clear");
    expect(check.treesLookedAt).toEqual({ done: 1, of: 2 });
    expect(check.verdict).toBe("look-again");
  });

  it("says do not hang while the straps are too flat", () => {
    const flat = { head: { angle: degrees(15) }, foot: { angle: degrees(15) } };
    expect(checkOf({ measured: flat }).verdict).toBe("do-not-hang");
  });

  it("answers a symptom with figures and advice beside the check", () => {
    const check = checkOf({ measured: {}, symptom: "strap-slips" });
    expect(check.symptom?.symptom).toBe("strap-slips");
    expect(check.symptom?.figures.length).toBeGreaterThan(0);
    expect(check.symptom?.advice.length).toBeGreaterThan(0);
  });

  it("is refused as adjust and symptom are", () => {
    const { request, hang, findings } = onlyBerth(
      planned(camp().trees(at(0, 0), at(4.2, 0)).sleepers(1).build()),
    );
    if (request === undefined) throw new Error("a planned berth says what it was asked for");
    for (const symptom of [undefined, "calf-ridge"] as const) {
      const check = asHungCheck(
        { request, hang, findings },
        { measured: { spanM: 300 }, ...(symptom === undefined ? {} : { symptom }) },
      );
      expect(check.ok ? [] : check.refusals.map(({ field }) => field)).toEqual(["measured.spanM"]);
    }
  });
});
