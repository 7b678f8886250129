import { describe, expect, it } from "vitest";
import { exampleCamp, planOf } from "../examples.fixture.ts";
import { campOfOne, type TwoTrees } from "../format/camp-of-one.ts";
import { openCamp } from "../format/open-camp.ts";
import { footSentence, headSentence, levelWords, sitSentence, webbingSentence } from "./say-hang.ts";

function tonight(two: TwoTrees) {
  const opened = openCamp(campOfOne(two));
  if (!opened.ok) throw new Error(JSON.stringify(opened.refusals));
  const { camp } = opened.value;
  const [berth] = planOf(camp).berths;
  if (berth === undefined) throw new Error("no berth");
  return { camp, berth };
}

describe("a hang in sentences", () => {
  it("tells the foot strap from level, and no height of it, where nobody knows the ground", () => {
    const { camp, berth } = tonight({ spanM: 4.2, statureM: 1.75 });
    expect(footSentence(berth, camp)).toMatch(
      /^Tie the foot strap round the second tree \d+\u00a0cm higher than the head strap, sighted level across\. Let out \d\.\d[05]\u00a0m from bark to hammock\.$/,
    );
    expect(headSentence(berth, camp)).toMatch(/^Tie the head strap round the first tree .* up\. Let out /);
  });

  it("tells it also from its own ground where that is known", () => {
    const { camp, berth } = tonight({ spanM: 4.2, statureM: 1.75, fallM: 0.2 });
    expect(footSentence(berth, camp)).toMatch(
      /, \d\.\d[05]\u00a0m up: \d+\u00a0cm higher than the head strap, sighted/,
    );
  });

  it("tells the webbing to bring, each end as much as its hang takes, and none for slings", () => {
    const { camp, berth } = tonight({ spanM: 4.2, statureM: 1.75 });
    const said = webbingSentence(berth, camp) ?? "";
    const told = [...said.matchAll(/(\d\.\d\d)\u00a0m/g)].map(([, figure]) => Number(figure));
    const wanted = [berth.hang.head.webbingM, berth.hang.foot.webbingM];
    expect(told).toHaveLength(2);
    for (const [end, figure] of told.entries()) {
      expect(figure).toBeGreaterThanOrEqual((wanted[end] ?? NaN) - 1e-9);
      expect(figure).toBeLessThan((wanted[end] ?? NaN) + 0.05);
    }
    const slung = tonight({ spanM: 4.2, statureM: 1.75, sling: { shortestM: 0.3 } });
    expect(webbingSentence(slung.berth, slung.camp)).toBeUndefined();
  });

  it("lets a sling out, and wraps its strap", () => {
    const { camp, berth } = tonight({ spanM: 4.2, statureM: 1.75, sling: { shortestM: 0.3 } });
    expect(headSentence(berth, camp)).toMatch(/^Wrap the head strap round .* Let its sling out to \d/);
  });

  it("tells heights to 5 cm, on the body of whoever sets the strap", () => {
    const { camp } = exampleCamp("demo");
    const [berth] = planOf(camp).berths;
    if (berth === undefined) throw new Error("no berth");
    expect(headSentence(berth, camp)).toContain(" your ");
    expect(headSentence({ ...berth, setBy: "rhodri" }, camp)).toContain("Rhodri Llywelyn's ");
    expect(sitSentence(berth)).toMatch(/comes? \d+[05]\u00a0cm above the ground\.$/);
  });

  it("says level where less than 2.5 cm is between the straps", () => {
    expect(levelWords(0.02)).toBe("level with the head strap");
    expect(levelWords(0.26)).toBe("25\u00a0cm higher than the head strap");
    expect(levelWords(-0.08)).toBe("10\u00a0cm lower than the head strap");
  });
});
