import { describe, expect, it } from "vitest";
import type { Hammock } from "../../plan/kit.ts";
import { degrees, radians } from "../../quantity/angle.ts";
import { ERROR_NAMES, type HangDeviation } from "../../statics/hang-band.ts";
import { at, camp, hammock, webbing } from "../testing/camp.fixture.ts";
import { onlyBerth, planned } from "../testing/planned.fixture.ts";
import type { Move } from "./adjust-types.ts";
import { AS_PLANNED, hungModel, plus, type HungModel } from "./hung-model.ts";
import { oneInstruction } from "./one-instruction.ts";

function model(but: Partial<Hammock> = {}): HungModel {
  const wood = camp().trees(at(0, 0), at(4.2, 0)).sleepers(1).kit(hammock("h", but), webbing("w")).build();
  const { request } = onlyBerth(planned(wood));
  if (request === undefined) throw new Error("a planned berth says what it was asked for");
  const built = hungModel(request);
  if (!built.ok) throw new Error(JSON.stringify(built.refusals));
  return built.value;
}

/** A hang that is too flat, and gets flatter whatever is moved. */
function stubborn(plain: HungModel): HungModel {
  const moved = (off: HangDeviation): number =>
    ERROR_NAMES.reduce((sum, name) => sum + Math.abs(off[name]), 0);
  const come = (off: HangDeviation) => {
    const { state, ...rest } = plain.planned;
    const angle = radians(plain.request.limits.angleMin - degrees(2) - moved(off));
    return { ...rest, state: { ...state, head: { ...state.head, angle } } };
  };
  return { ...plain, come };
}

describe("oneInstruction", () => {
  const plain = model();

  it("leaves a hang that is as planned", () => {
    expect(oneInstruction(plain, AS_PLANNED)).toEqual({ next: "leave-it" });
  });

  it("takes the adjuster for a seat too low, and behind a taut ridgeline the trunk for a foot end too low", () => {
    const low = oneInstruction(plain, plus(AS_PLANNED, { headStrapM: 0.08, footStrapM: 0.08 }));
    expect(low.instruction?.action).toBe("take-in");
    const level = oneInstruction(model({ ridgelineM: 2.75 }), plus(AS_PLANNED, { footHeightM: -0.15 }));
    expect(["raise", "lower"]).toContain(level.instruction?.action);
  });

  it("undoes one fault by one instruction at the same place, to a few centimetres", () => {
    for (const end of ["head", "foot"] as const) {
      const { instruction } = oneInstruction(plain, plus(AS_PLANNED, { [`${end}StrapM`]: 0.15 }));
      expect(instruction).toMatchObject({ end, action: "take-in" });
      expect(Math.abs((instruction?.cm ?? 0) - 15)).toBeLessThan(4);
    }
  });

  it("tells the next best where a move will not go, and nothing that is barred", () => {
    const off = plus(AS_PLANNED, { headStrapM: 0.15 });
    const first = oneInstruction(plain, off).instruction;
    expect(first).toMatchObject({ end: "head", action: "take-in" });
    const barred: Move[] = [];
    for (let round = 0; round < 8; round++) {
      const { instruction } = oneInstruction(plain, off, barred);
      if (instruction === undefined) break;
      const { end, action } = instruction;
      expect(barred).not.toContainEqual({ end, action });
      barred.push({ end, action });
    }
    expect(barred.length).toBeGreaterThan(2);
    const trunks = oneInstruction(plain, off, [
      { end: "head", action: "take-in" },
      { end: "foot", action: "take-in" },
      { end: "head", action: "let-out" },
      { end: "foot", action: "let-out" },
    ]);
    expect(["raise", "lower"]).toContain(trunks.instruction?.action);
  });

  it("says nothing to change where no move will go at all", () => {
    const every = (["head", "foot"] as const).flatMap((end) =>
      (["take-in", "let-out", "raise", "lower"] as const).map((action) => ({ end, action })),
    );
    const told = oneInstruction(plain, plus(AS_PLANNED, { headStrapM: 0.15 }), every);
    expect(told.instruction).toBeUndefined();
  });

  it("says to hang it anew where no one change brings a broken limit nearer", () => {
    expect(oneInstruction(stubborn(plain), AS_PLANNED)).toEqual({ next: "hang-anew" });
  });
});
