import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { checkFileFaults, type CheckFile, type CheckRow } from "./check-file.ts";

export * from "./random-search.ts";

export type { CheckFile, CheckRow } from "./check-file.ts";

/** How far one figure of one row is from its published value. */
export interface CheckError {
  readonly row: string;
  readonly key: string;
  readonly expected: number;
  readonly got: number;
  readonly tolerance: number;
  readonly source: string;
}

declare module "vitest" {
  interface TaskMeta {
    checkErrors?: CheckError[];
  }
}

type Figures = Readonly<Record<string, number | undefined>>;
type GivenOf<Rows extends CheckFile<unknown>> = Rows["rows"][number]["given"];

/**
 * Registers one test for each row of a checks file.
 *
 * A row holds where |got − expected| ≤ tolerance for every expected key. A file whose rows lack a source,
 * a tolerance or the reason for it is refused as a whole: its one test fails and says what is missing.
 *
 * @param source   the imported JSON (its `given` then has its own type), or the URL of the file
 * @param compute  from `given` to at least the expected keys
 */
export function checks<Rows extends CheckFile<unknown>>(
  source: Rows,
  compute: (given: GivenOf<Rows>) => Figures,
): void;
export function checks<Given = Readonly<Record<string, number>>>(
  source: URL,
  compute: (given: Given) => Figures,
): void;
export function checks<Given>(source: URL | CheckFile<Given>, compute: (given: Given) => Figures): void {
  const file: unknown = source instanceof URL ? JSON.parse(readFileSync(source, "utf8")) : source;
  const faults = checkFileFaults(file);
  if (faults.length > 0) {
    it("checks file can be used", () => expect(faults).toEqual([]));
    return;
  }
  const { model, rows } = trusted<Given>(file);
  describe(`checks of ${model}`, () => {
    for (const row of rows) {
      it(`${row.id} (${row.seen})`, ({ task }) => {
        const errors = rowErrors(row, compute(row.given));
        task.meta.checkErrors = errors;
        expect(errors.filter(isOff).map(sentence)).toEqual([]);
      });
    }
  });
}

/** Each expected figure of a row beside the one that was computed; NaN where none was. */
export function rowErrors<Given>(row: CheckRow<Given>, got: Figures): CheckError[] {
  const home = { row: row.id, source: `${row.source}, ${row.locator}` };
  return Object.entries(row.expected).flatMap(([key, expected]) =>
    expected === undefined
      ? []
      : [{ ...home, key, expected, got: got[key] ?? NaN, tolerance: row.tolerance[key] ?? NaN }],
  );
}

/** Written so that NaN counts as off. */
export function isOff({ expected, got, tolerance }: CheckError): boolean {
  return !(Math.abs(got - expected) <= tolerance);
}

function sentence({ key, expected, got, tolerance }: CheckError): string {
  return `${key}: got ${got}, expected ${expected} ± ${tolerance}`;
}

function trusted<Given>(file: unknown): CheckFile<Given> {
  assertUsable<Given>(file);
  return file;
}

function assertUsable<Given>(file: unknown): asserts file is CheckFile<Given> {
  const faults = checkFileFaults(file);
  if (faults.length > 0) throw new Error(faults.join("; "));
}
