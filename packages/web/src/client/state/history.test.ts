import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { change, redo, settle, startHistory, undo } from "./history.ts";

describe("history", () => {
  it("goes back to the value before a change and forward again", () => {
    const changed = change(startHistory("first"), "second", "");
    expect(undo(changed).present).toBe("first");
    expect(redo(undo(changed)).present).toBe("second");
  });

  it("undoes a run of changes to one thing together", () => {
    let history = change(startHistory("1"), "1.7", "stature");
    history = change(history, "1.75", "stature");
    expect(undo(history).present).toBe("1");
  });

  it("keeps two runs apart once the first is settled", () => {
    const first = settle(change(startHistory("a"), "b", "name"));
    expect(undo(change(first, "c", "name")).present).toBe("b");
  });

  it("forgets the future after a new change", () => {
    const history = change(undo(change(startHistory(1), 2, "")), 3, "");
    expect(redo(history).present).toBe(3);
  });

  it("leaves an empty past and future as they are", () => {
    const history = startHistory("only");
    expect(undo(history)).toBe(history);
    expect(redo(history)).toBe(history);
  });

  it("returns to any earlier value after as many undos", () => {
    fc.assert(
      fc.property(fc.array(fc.integer(), { minLength: 1, maxLength: 50 }), (values) => {
        let history = startHistory(-1);
        for (const value of values) history = change(history, value, "");
        for (let step = values.length; step > 0; step -= 1) {
          expect(history.present).toBe(values[step - 1]);
          history = undo(history);
        }
        expect(history.present).toBe(-1);
      }),
      { seed: 1, numRuns: 50 },
    );
  });
});
