import { planCamp, type Camp, type PlannedBerth } from "@nightspan/core";
import { campOfOne, openCamp } from "@nightspan/edge";
import { describe, expect, it } from "vitest";
import { spotAnswer, type SpotAnswer } from "./spot-answer.ts";
import {
  afterTheSit,
  AT_FIRST,
  bothered,
  moved,
  trusting,
  wouldNotGo,
  type SpotState,
} from "./spot-state.ts";
import { NUMBERS, spotPlace } from "./spot-things.ts";

function twoTrees(): { readonly camp: Camp; readonly berth: PlannedBerth } {
  const opened = openCamp(campOfOne({ steps: 6, statureM: 1.75 }));
  if (!opened.ok) throw new Error(JSON.stringify(opened.refusals));
  const { camp } = opened.value;
  const plan = planCamp(camp, { engine: "test" });
  const berth = plan.ok ? plan.value.berths[0] : undefined;
  if (berth === undefined) throw new Error("two good trees carry a berth");
  return { camp, berth };
}

const { camp, berth } = twoTrees();
const ask = (state: SpotState): SpotAnswer => spotAnswer(camp, berth, state);

function changeOf(answer: SpotAnswer) {
  if (answer.kind !== "change") throw new Error(`${answer.kind} instead of a change`);
  return answer;
}

describe("spotAnswer", () => {
  it("leaves alone what is as planned, and never clears trees that nobody looked at", () => {
    const answer = ask({ ...AT_FIRST, found: { seatHeightM: berth.hang.seatHeightM } });
    if (answer.kind !== "leave-it") throw new Error(answer.kind);
    expect(answer.check.verdict).toBe("look-again");
    expect(answer.check.treesLookedAt.done).toBe(0);
  });

  it("tells one move where it sits too low, after which it sits higher", () => {
    const { instruction, check, after } = changeOf(ask(afterTheSit("too-low")));
    expect(instruction.cm).toBeGreaterThanOrEqual(1);
    expect(after.adjustment.state.seatHeightM).toBeGreaterThan(check.adjustment.state.seatHeightM);
  });

  it("comes to rest: what was told is put right move by move", () => {
    let state: SpotState = { ...AT_FIRST, asked: ["seat"], found: { seatHeightM: 0.25 } };
    let count = 0;
    for (; count < 6; count += 1) {
      const answer = ask(state);
      if (answer.kind === "leave-it") break;
      const change = changeOf(answer);
      const { seatHeightM } = change.after.adjustment.state;
      state = { ...moved(state, change.instruction), found: { seatHeightM } };
    }
    expect(ask(state).kind).toBe("leave-it");
    expect(count).toBeGreaterThanOrEqual(1);
  });

  it("tells another move where the first will not go, and never one that would not", () => {
    let state = afterTheSit("too-low");
    const refused: string[] = [];
    for (let press = 0; press < 9; press += 1) {
      const answer = ask(state);
      if (answer.kind === "stuck") break;
      const { instruction } = changeOf(answer);
      const name = `${instruction.end} ${instruction.action}`;
      expect(refused).not.toContain(name);
      refused.push(name);
      state = wouldNotGo(state, instruction);
    }
    expect(refused.length).toBeGreaterThanOrEqual(2);
    expect(ask(state).kind).toBe("stuck");
  });

  it("answers a symptom with advice where no move helps, each advice once", () => {
    const first = ask(bothered(AT_FIRST, "strap-slips"));
    if (first.kind !== "advice") throw new Error(first.kind);
    const second = ask({ ...bothered(AT_FIRST, "strap-slips"), advised: 1 });
    if (second.kind !== "advice") throw new Error(second.kind);
    expect(second.advice).not.toBe(first.advice);
    expect(ask({ ...bothered(AT_FIRST, "strap-slips"), advised: 99 }).kind).toBe("stuck");
  });

  it("asks to measure again where what was told does not fit together, unless it is so all the same", () => {
    const absurd = {
      ...AT_FIRST,
      found: { head: { strapHeightM: 1.5 }, foot: { strapHeightM: 1.2 }, seatHeightM: 0.2 },
    };
    expect(ask(absurd).kind).toBe("misread");
    expect(ask(trusting(absurd)).kind).not.toBe("misread");
  });

  it("refuses what nobody can have measured", () => {
    expect(ask({ ...AT_FIRST, found: { seatHeightM: 20 } }).kind).toBe("refused");
  });
});

describe("numbers told on the spot", () => {
  const place = spotPlace(camp, berth);

  it("start as planned", () => {
    expect(NUMBERS.seat.start(place)).toBeCloseTo(berth.hang.seatHeightM * 100, -1);
    expect(NUMBERS.steps.start(place)).toBe(6);
  });

  it("takes a count of steps for a finding only where it differs", () => {
    expect(NUMBERS.steps.found(6, place)).toEqual({});
    expect(NUMBERS.steps.found(6.5, place).spanM).toBeCloseTo(berth.spanM + place.stepM / 2, 9);
  });
});
