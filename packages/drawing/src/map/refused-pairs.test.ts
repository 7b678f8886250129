import { describe, expect, it } from "vitest";
import { harrowmere } from "../fixture/harrowmere.fixture.ts";
import { planByHand } from "../fixture/plan-by-hand.fixture.ts";
import { EIGHT } from "../fixture/wanted.fixture.ts";
import type { Item } from "../scene/scene.ts";
import { plainLabels } from "../words/plain-labels.ts";
import { plainMeasure } from "../words/plain-measure.ts";
import { mapScene } from "./map-scene.ts";
import { refusedPairs } from "./refused-pairs.ts";

const camp = harrowmere();
const plan = planByHand(camp, EIGHT);
const nearly = (first: string, second: string) => ({
  trees: [first, second] as const,
  spanM: 4,
  because: [],
});

describe("refusedPairs", () => {
  it("are the wishes that could not be kept and the nearest of those without a berth, each once", () => {
    const found = refusedPairs({
      ...plan,
      pinsRefused: [{ sleeper: "nira", trees: ["B7", "C2"], because: [] }],
      unplaced: [{ sleeper: "nur", because: [], pairs: [nearly("C2", "B7"), nearly("R14", "R15")] }],
    });
    expect(found).toEqual([
      ["B7", "C2"],
      ["R14", "R15"],
    ]);
  });

  it("leave out a pair that carries a berth", () => {
    expect(
      refusedPairs({ ...plan, unplaced: [{ sleeper: "nur", because: [], pairs: [nearly("A5", "A3")] }] }),
    ).toEqual([]);
  });

  it("stand on the map, and in its legend", () => {
    const draw = (unplaced: typeof plan.unplaced) =>
      mapScene({ ...plan, unplaced }, camp, {
        words: { labels: plainLabels, measure: plainMeasure },
        widthPx: 1050,
      });
    const count = (items: readonly Item[]): number =>
      items.reduce(
        (sum, item) =>
          sum + (item.class === "ns-refused" ? 1 : 0) + (item.kind === "group" ? count(item.items) : 0),
        0,
      );
    const without = count(draw([]).items);
    const drawn = draw([{ sleeper: "nur", because: [], pairs: [nearly("R14", "R15")] }]);
    expect(without).toBe(0);
    expect(count(drawn.items)).toBeGreaterThanOrEqual(1);
    expect(JSON.stringify(drawn.items)).toContain("legend.refused");
  });
});
