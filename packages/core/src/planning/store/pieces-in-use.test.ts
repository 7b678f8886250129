import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Inspection, InspectionAction } from "../../plan/store-types.ts";
import { webbing } from "../testing/camp.fixture.ts";
import { numbersInUse, piecesInUse } from "./pieces-in-use.ts";

const NUMBERS = ["W1", "W2", "W3"] as const;

function look(number: string, action: InspectionAction): Inspection {
  return { by: "Ada", on: "2027-05-01", finding: "looked over", action, number };
}

function straps(...inspections: readonly Inspection[]) {
  return webbing("w", { count: 4, numbers: NUMBERS, inspections });
}

describe("piecesInUse", () => {
  it("takes numbered pieces out one by one; a quarantined one passes again, a retired one never", () => {
    expect(piecesInUse(straps())).toBe(4);
    const log = [look("W2", "retire"), look("W3", "quarantine")];
    expect(piecesInUse(straps(...log))).toBe(2);
    expect(numbersInUse(straps(...log))).toEqual(["W1"]);
    expect(numbersInUse(straps(...log, look("W3", "pass"), look("W2", "pass")))).toEqual(["W1", "W3"]);
  });

  it("has none of a line that is quarantined or retired, whatever its pieces", () => {
    for (const state of ["quarantined", "retired"] as const) {
      const line = { ...straps(look("W1", "pass")), state };
      expect([piecesInUse(line), numbersInUse(line)]).toEqual([0, []]);
    }
  });

  it("has more than before only by a pass", () => {
    const looks = fc.record({
      number: fc.constantFrom(...NUMBERS),
      action: fc.constantFrom("pass" as const, "quarantine" as const, "retire" as const),
    });
    fc.assert(
      fc.property(fc.array(looks, { maxLength: 6 }), looks, (before, { number, action }) => {
        const log = before.map((one) => look(one.number, one.action));
        const [was, is] = [straps(...log), straps(...log, look(number, action))].map(piecesInUse);
        return action === "pass" || (is ?? NaN) <= (was ?? NaN);
      }),
      { seed: 1, numRuns: 200 },
    );
  });
});
