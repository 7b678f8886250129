import { describe, expect, it } from "vitest";
import { closingLine, tally } from "./closing-line-reporter.mjs";

type State = "passed" | "failed" | "skipped";

/** A test module as far as the tally looks at one. */
function moduleOf(state: State, tests: State[]) {
  const allTests = () => tests.map((each) => ({ result: () => ({ state: each }) }));
  return { state: () => state, children: { allTests } };
}

describe("the closing line", () => {
  it("counts each test once", () => {
    const modules = [moduleOf("passed", ["passed", "skipped"]), moduleOf("failed", ["failed", "passed"])];
    expect(tally(modules)).toEqual({ passed: 2, failed: 1, skipped: 1 });
  });

  it("counts a file that broke before its tests as one failure", () => {
    expect(tally([moduleOf("failed", ["skipped", "skipped"])])).toEqual({ passed: 0, failed: 1, skipped: 2 });
    expect(tally([moduleOf("failed", [])])).toEqual({ passed: 0, failed: 1, skipped: 0 });
  });

  it("is plain", () => {
    expect(closingLine({ passed: 3, failed: 0, skipped: 1 })).toBe("3 passed, 0 failed, 1 skipped");
  });
});
