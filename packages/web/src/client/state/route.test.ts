import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CAMP_PAGES, hrefOf, parseRoute, TONIGHT_STEPS, type Route } from "./route.ts";

describe("route", () => {
  it("reads back every page it writes", () => {
    const routes: Route[] = [
      { page: "first" },
      { page: "start" },
      { page: "store" },
      ...CAMP_PAGES.map((page): Route => ({ page })),
      ...TONIGHT_STEPS.map((step): Route => ({ page: "tonight", step })),
    ];
    for (const route of routes) expect(parseRoute(hrefOf(route))).toEqual(route);
  });

  it("reads back any berth id", () => {
    fc.assert(
      fc.property(fc.string({ minLength: 1, unit: "grapheme" }), (berth) => {
        expect(parseRoute(hrefOf({ page: "berth", berth }))).toEqual({ page: "berth", berth });
      }),
      { seed: 1, numRuns: 100 },
    );
  });

  it("takes an unknown address to the first screen", () => {
    for (const hash of ["", "#", "#/nowhere", "#/berth", "#/%E0%A4%A"]) {
      expect(parseRoute(hash)).toEqual({ page: "first" });
    }
  });
});
