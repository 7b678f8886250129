import { describe, expect, it } from "vitest";
import { at, camp, sleeper } from "../testing/camp.fixture.ts";
import { planned } from "../testing/planned.fixture.ts";
import { stem } from "../../site/wood.fixture.ts";
import { HAS_STEM_MAPS, stemMap } from "../../site/stem-maps.fixture.ts";
import { stemFindings } from "./stems.ts";

function pairsAtOneSpot(count: number) {
  return Array.from({ length: count }, (_, i) => [stem(`a${i}`, 5 * i, 0), stem(`b${i}`, 5 * i, 0)]).flat();
}

describe("stems in each other", () => {
  it("are told by the plan, which is made all the same", () => {
    const trees = [at(0, 0), at(4, 0), at(20, 0), at(20.1, 0)];
    const plan = planned(
      camp()
        .trees(...trees)
        .sleepers(sleeper("a"))
        .build(),
    );
    const found = plan.findings.filter(({ rule }) => rule === "site.stems-touch");
    expect(found).toMatchObject([{ verdict: "look-again", unit: "m", limit: 0.3 }]);
    expect(found[0]?.demand).toBeCloseTo(0.1, 9);
    expect(plan.placed).toBe(1);
  });

  it("are named up to twelve; of more the first five, and how many more", () => {
    const rules = (count: number) => stemFindings(pairsAtOneSpot(count)).map(({ rule }) => rule);
    expect(rules(0)).toEqual([]);
    expect(rules(12)).toEqual(Array.from({ length: 12 }, () => "site.stems-touch"));
    expect(rules(13).slice(4)).toEqual(["site.stems-touch", "site.stems-touch-more"]);
    expect(stemFindings(pairsAtOneSpot(40)).at(-1)).toMatchObject({ subject: "camp", demand: 35 });
  });

  it.skipIf(!HAS_STEM_MAPS)("keep a measured wood that has twelve pairs of them from nothing", () => {
    const trees = stemMap("waka").map((tree) => at(tree.xM, tree.yM, tree));
    const people = Array.from({ length: 8 }, (_, i) => sleeper(`s${i}`));
    const plan = planned(
      camp()
        .trees(...trees)
        .sleepers(...people)
        .build(),
    );
    expect(plan.placed).toBe(8);
    expect(plan.findings.some(({ rule }) => rule === "site.stems-touch-more")).toBe(true);
  });
});
