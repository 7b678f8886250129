/**
 * @typedef {{ row: string, key: string, expected: number, got: number, tolerance: number, source: string }} Row
 * @typedef {{ name: string, meta: () => { checkErrors?: Row[] }, parent: { name?: string }, result: () => { state: string } }} RowTest
 * @typedef {{ moduleId: string, children: { allTests: () => Iterable<RowTest> } }} RowModule
 */

const HEAD = ["row", "figure", "expected", "got", "error", "tolerance", "source"];

/**
 * The lines of one module's table.
 *
 * @param {readonly Row[]} rows
 * @returns {string[]}
 */
export function table(rows) {
  const cells = rows.map(({ row, key, expected, got, tolerance, source }) => [
    row,
    key,
    figure(expected),
    figure(got),
    figure(got - expected),
    `${figure(tolerance)}${Math.abs(got - expected) <= tolerance ? "" : "  OFF"}`,
    source,
  ]);
  const all = [HEAD, ...cells];
  const widths = HEAD.map((_, column) => Math.max(...all.map((line) => (line[column] ?? "").length)));
  return all.map((line) =>
    line
      .map((cell, column) => (column < HEAD.length - 1 ? cell.padEnd((widths[column] ?? 0) + 2) : cell))
      .join("")
      .trimEnd(),
  );
}

/** @param {number} value */
function figure(value) {
  return String(Number(value.toPrecision(6)));
}

/** Prints each check row's error beside its tolerance, model by model. */
export default class CheckRowsReporter {
  /** @param {ReadonlyArray<RowModule>} modules */
  onTestRunEnd(modules) {
    let count = 0;
    let failed = 0;
    for (const module of modules) {
      /** @type {Map<string, Row[]>} */
      const models = new Map();
      for (const test of module.children.allTests()) {
        if (test.result().state === "skipped") continue;
        count += 1;
        if (test.result().state === "failed") failed += 1;
        const rows = test.meta().checkErrors;
        const model = test.parent.name ?? module.moduleId;
        if (rows === undefined) console.log(`${model}: ${test.name} threw`);
        else models.set(model, [...(models.get(model) ?? []), ...rows]);
      }
      for (const [model, rows] of models) console.log(`\n${model}\n  ${table(rows).join("\n  ")}`);
    }
    console.log(`\n${count} rows, ${failed} off`);
  }
}
