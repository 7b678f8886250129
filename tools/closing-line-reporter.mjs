/**
 * @typedef {{ passed: number, failed: number, skipped: number }} Tally
 * @typedef {{ result: () => { state: string } }} RunTest
 * @typedef {{ state: () => string, children: { allTests: () => Iterable<RunTest> } }} RunModule
 */

/**
 * Counts the outcome of every test, and one failure for a file that broke without a failed test of its own.
 * A throwing `beforeAll` only skips the tests below it; counted by tests alone the line would read 0 failed.
 *
 * @param {ReadonlyArray<RunModule>} modules
 * @returns {Tally}
 */
export function tally(modules) {
  const total = { passed: 0, failed: 0, skipped: 0 };
  for (const module of modules) {
    let failedHere = 0;
    for (const test of module.children.allTests()) {
      const { state } = test.result();
      if (state === "passed") total.passed += 1;
      else if (state === "failed") failedHere += 1;
      else total.skipped += 1;
    }
    if (module.state() === "failed" && failedHere === 0) failedHere = 1;
    total.failed += failedHere;
  }
  return total;
}

/** @param {Tally} total */
export function closingLine({ passed, failed, skipped }) {
  return `${passed} passed, ${failed} failed, ${skipped} skipped`;
}

/** Prints the plain last line of a test run. */
export default class ClosingLineReporter {
  /**
   * @param {ReadonlyArray<RunModule>} modules
   * @param {ReadonlyArray<unknown>} unhandledErrors
   */
  onTestRunEnd(modules, unhandledErrors) {
    const total = tally(modules);
    total.failed += unhandledErrors.length;
    console.log(`\n${closingLine(total)}`);
  }
}
