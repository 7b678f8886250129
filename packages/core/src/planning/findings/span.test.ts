import { describe, expect, it } from "vitest";
import type { Tarp } from "../../plan/kit.ts";
import { at, camp, hammock, webbing } from "../testing/camp.fixture.ts";
import { onlyBerth, planned, troubles } from "../testing/planned.fixture.ts";

function tarp(ridgeM: number): Tarp {
  return {
    id: "green",
    kind: "tarp",
    count: 1,
    state: "in-use",
    shape: "rectangle",
    ridgeM,
    widthM: 2.6,
  };
}

function hungUnder(ridgeM: number) {
  return onlyBerth(
    planned(
      camp()
        .trees(at(0, 0), at(3.6, 0))
        .sleepers(1)
        .kit(hammock("red", { lengthM: 3 }), webbing("band"), tarp(ridgeM))
        .build(),
    ),
  );
}

describe("a span outside the window of spans that serve", () => {
  it("is looked at again, with what ends the window there", () => {
    const berth = hungUnder(3.3);
    const [window] = berth.findings.filter(({ rule }) => rule === "span.window");
    expect(window).toMatchObject({ sense: "at-least", verdict: "look-again", about: ["tarp-ridge"] });
    expect(window?.demand).toBeCloseTo(3.6, 9);
    expect(window?.limit).toBe(berth.spanWindow?.low);
    expect(window?.limit).toBeGreaterThan(3.6);
  });

  it("is nothing inside it, nor on its end", () => {
    expect(troubles(hungUnder(3).findings)).not.toContain("span.window");
    expect(troubles(hungUnder(3.1).findings)).not.toContain("span.window");
  });
});
