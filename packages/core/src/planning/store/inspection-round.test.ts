import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { KitItem } from "../../plan/kit.ts";
import { hammock, webbing } from "../testing/camp.fixture.ts";
import { inspectionRound, type InspectionEntry } from "./inspection-round.ts";
import { numbersInUse, piecesInUse } from "./pieces-in-use.ts";

function look(item: string, but: Partial<InspectionEntry> = {}): InspectionEntry {
  return { item, by: "Ada", on: "2027-05-01", finding: "sound", action: "pass", ...but };
}

function after(kit: readonly KitItem[], ...entries: readonly InspectionEntry[]): readonly KitItem[] {
  const round = inspectionRound(kit, entries);
  if (!round.ok) throw new Error(JSON.stringify(round.refusals));
  return round.value;
}

function refused(kit: readonly KitItem[], ...entries: readonly InspectionEntry[]): string[] {
  const round = inspectionRound(kit, entries);
  return round.ok ? [] : round.refusals.map(({ field }) => field);
}

const STRAPS = webbing("w", { count: 3, numbers: ["W1", "W2", "W3"] });

describe("inspectionRound", () => {
  it("keeps the whole log, and takes numbered pieces out one by one", () => {
    const [first] = after([STRAPS], look("w", { number: "W2", action: "retire", finding: "edge cut" }));
    expect(first).toMatchObject({ state: "in-use" });
    const [second] = after(
      first === undefined ? [] : [first],
      look("w", { number: "W3", action: "quarantine" }),
    );
    expect(second?.inspections).toEqual([
      { by: "Ada", on: "2027-05-01", finding: "edge cut", action: "retire", number: "W2" },
      { by: "Ada", on: "2027-05-01", finding: "sound", action: "quarantine", number: "W3" },
    ]);
    expect(second === undefined ? NaN : piecesInUse(second)).toBe(1);
    expect(second === undefined ? [] : numbersInUse(second)).toEqual(["W1"]);
  });

  it("quarantines a line, and lets it pass again, but never one that is retired", () => {
    const quarantine = look("h", { action: "quarantine" });
    expect(after([hammock("h")], quarantine)).toMatchObject([{ state: "quarantined" }]);
    expect(after([hammock("h")], quarantine, look("h"))).toMatchObject([{ state: "in-use" }]);
    const retire = look("h", { action: "retire" });
    expect(after([hammock("h")], retire)).toMatchObject([{ state: "retired" }]);
    expect(refused([hammock("h")], retire, look("h"))).toEqual(["inspections.1.item"]);
    const piece = look("w", { number: "W1", action: "retire" });
    expect(refused([STRAPS], piece, look("w", { number: "W1" }))).toEqual(["inspections.1.item"]);
  });

  it("refuses all that it cannot enter, by look and field, and then enters none", () => {
    const logged = after([STRAPS], look("w", { on: "2027-05-02" }));
    expect(
      refused(
        logged,
        look("x"),
        look("w", { number: "W9" }),
        look("w", { by: " ", on: "2027-05-02" }),
        look("w", { on: "2027-05-01" }),
      ),
    ).toEqual(["inspections.0.item", "inspections.1.number", "inspections.2.by", "inspections.3.on"]);
  });

  it("never loses a look, and never has more in use than before but by a pass", () => {
    const entry = fc.record({
      number: fc.constantFrom("W1", "W2", "W3"),
      action: fc.constantFrom("pass", "quarantine", "retire"),
    });
    fc.assert(
      fc.property(fc.array(entry, { maxLength: 6 }), (entries) => {
        let kit: readonly KitItem[] = [STRAPS];
        let entered = 0;
        for (const one of entries) {
          const before = piecesInUse(kit[0] ?? STRAPS);
          const round = inspectionRound(kit, [look("w", one)]);
          if (!round.ok) continue;
          entered++;
          kit = round.value;
          const now = piecesInUse(kit[0] ?? STRAPS);
          if (now > before && one.action !== "pass") return false;
        }
        return (kit[0]?.inspections ?? []).length === entered;
      }),
      { seed: 1, numRuns: 200 },
    );
  });
});
