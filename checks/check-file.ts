/** Where the figures of a row can have been seen. */
const SEEN: readonly string[] = ["read", "from memory", "common practice, no source", "derived"];

/** One row of figures from outside the code. */
export interface CheckRow<Given> {
  readonly id: string;
  readonly source: string;
  /** Page, table or equation within the source. */
  readonly locator: string;
  /** One of the four words of `SEEN`; typed as text so that imported JSON fits. */
  readonly seen: string;
  readonly given: Given;
  readonly expected: Readonly<Record<string, number | undefined>>;
  /** In the unit of the expected field of the same name. */
  readonly tolerance: Readonly<Record<string, number | undefined>>;
  /** Why the tolerance has its size. */
  readonly why: string;
}

export interface CheckFile<Given> {
  readonly model: string;
  readonly rows: readonly CheckRow<Given>[];
}

/** All that keeps a checks file from being used, one sentence each; empty when it can be. */
export function checkFileFaults(file: unknown): string[] {
  if (!isRecord(file)) return ["the file is not a JSON object"];
  const { model, rows } = file;
  const faults = isText(model) ? [] : ["model: a name is needed"];
  if (!Array.isArray(rows) || rows.length === 0) return [...faults, "rows: at least one row is needed"];
  const ids = rows.map((row: unknown) => (isRecord(row) ? row["id"] : undefined));
  const twice = ids.filter((id, at) => ids.indexOf(id) !== at);
  return [
    ...faults,
    ...twice.map((id) => `row ${String(id)}: the id is used twice`),
    ...rows.flatMap((row: unknown, at) => rowFaults(row, at)),
  ];
}

function rowFaults(row: unknown, at: number): string[] {
  if (!isRecord(row)) return [`row ${at}: not an object`];
  const name = isText(row["id"]) ? row["id"] : String(at);
  const missing = ["id", "source", "locator", "why"].filter((field) => !isText(row[field]));
  const faults = missing.map((field) => `row ${name}: ${field} is needed`);
  if (!SEEN.includes(String(row["seen"]))) faults.push(`row ${name}: seen must be one of ${SEEN.join(", ")}`);
  if (!isRecord(row["given"])) faults.push(`row ${name}: given is needed`);
  return [...faults, ...figureFaults(name, row["expected"], row["tolerance"])];
}

function figureFaults(name: string, expected: unknown, tolerance: unknown): string[] {
  if (!isRecord(expected) || Object.keys(expected).length === 0) return [`row ${name}: expected is needed`];
  if (!isRecord(tolerance)) return [`row ${name}: tolerance is needed`];
  const keys = Object.keys(expected);
  return [
    ...keys
      .filter((key) => !isFinite(expected[key]))
      .map((key) => `row ${name}: expected.${key} is no number`),
    ...keys
      .filter((key) => !isFinite(tolerance[key]) || Number(tolerance[key]) < 0)
      .map((key) => `row ${name}: tolerance.${key} is needed`),
    ...Object.keys(tolerance)
      .filter((key) => !(key in expected))
      .map((key) => `row ${name}: tolerance.${key} has nothing expected`),
  ];
}

function isFinite(value: unknown): boolean {
  return typeof value === "number" && Number.isFinite(value);
}

function isText(value: unknown): value is string {
  return typeof value === "string" && value.trim() !== "";
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
