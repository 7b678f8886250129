import { describe, expect, it } from "vitest";
import {
  advised,
  afterTheSit,
  AT_FIRST,
  bothered,
  measureNow,
  moved,
  relieved,
  tellAs,
  toggled,
  told,
  wouldNotGo,
} from "./spot-state.ts";
import { TOLD_ALONE, withFound } from "./spot-things.ts";

const MOVE = { end: "head", action: "let-out", cm: 10 } as const;

describe("the way on the spot", () => {
  it("asks what was chosen in the order of the list, whatever was pressed first", () => {
    const first = toggled(tellAs(AT_FIRST, false), "knees", TOLD_ALONE);
    expect(toggled(first, "seat", TOLD_ALONE).asked).toEqual(["seat", "knees"]);
    expect(toggled(first, "knees", TOLD_ALONE).asked).toEqual([]);
  });

  it("goes from one thing to the next, and after the last to what it means", () => {
    const start = measureNow({ ...AT_FIRST, asked: ["seat", "knees"] });
    const half = told(start, { seatHeightM: 0.5 });
    expect([half.page, half.at]).toEqual(["measure", 1]);
    const whole = told(half, { knees: "easy" });
    expect(whole.page).toBe("result");
    expect(whole.found).toEqual({ seatHeightM: 0.5, knees: "easy" });
  });

  it("keeps with a move what was found before it, and asks the same again", () => {
    const start = { ...AT_FIRST, asked: ["seat"] as const };
    const next = moved(told(start, { seatHeightM: 0.3 }), MOVE);
    expect(next.followed).toEqual([{ ...MOVE, measured: { seatHeightM: 0.3 } }]);
    expect([next.page, next.at, next.found]).toEqual(["measure", 0, {}]);
  });

  it("keeps with a move what a symptom told", () => {
    const next = moved(bothered(AT_FIRST, "slides-to-foot"), MOVE);
    expect(next.followed[0]?.measured).toEqual({ slides: "to-foot" });
    expect(next.page).toBe("still");
  });

  it("does not take a move that would not go for one that was made", () => {
    const next = wouldNotGo(afterTheSit("too-low"), MOVE);
    expect(next.followed).toEqual([]);
    expect(next.refused).toEqual([{ end: "head", action: "let-out" }]);
  });

  it("takes four answers after the sit straight to what to do", () => {
    expect(afterTheSit("too-low")).toMatchObject({ page: "result", found: { sits: "too-low" } });
    expect(afterTheSit("too-high")).toMatchObject({ page: "result", found: { sits: "too-high" } });
    expect(afterTheSit("slides")).toMatchObject({ page: "result", symptom: "slides-to-foot" });
    expect(afterTheSit("knees")).toMatchObject({ page: "result", symptom: "calf-ridge" });
  });

  it("goes on to the next advice, and forgets the symptom when it is gone", () => {
    const next = advised(bothered(AT_FIRST, "strap-slips"));
    expect([next.page, next.advised]).toEqual(["still", 1]);
    expect(relieved(next).symptom).toBeUndefined();
  });
});

describe("withFound", () => {
  it("adds up what is told of one strap", () => {
    const height = withFound({ spanM: 4 }, { head: { strapHeightM: 1.6 } });
    const angle = withFound(height, { foot: { strapHeightM: 1.8 } });
    expect(angle).toEqual({ spanM: 4, head: { strapHeightM: 1.6 }, foot: { strapHeightM: 1.8 } });
  });
});
