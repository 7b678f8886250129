import type { Refusal } from "@nightspan/core";

/** A row of a list before it is judged: cells by the camp file's field names. */
export interface RawRow {
  /** "line 5", "feature 3". */
  readonly place: string;
  readonly cells: Readonly<Record<string, unknown>>;
  /** True where the row as a whole cannot be read, so that its cells are not judged. */
  readonly unreadable?: boolean;
  /** Faults found while the row was read. */
  readonly faults: readonly Refusal[];
}

/** A row that cannot be used, and why. */
export interface BadRow {
  readonly place: string;
  readonly refusals: readonly Refusal[];
}

/** Rows that can be used and rows that cannot, by a judge of their cells; what was told of a field is told once. */
export function judged<T>(
  raw: readonly RawRow[],
  judge: (row: RawRow) => { readonly value?: T; readonly refusals: readonly Refusal[] },
): { readonly rows: readonly T[]; readonly bad: readonly BadRow[] } {
  const rows: T[] = [];
  const bad: BadRow[] = [];
  for (const row of raw) {
    const { value, refusals } = judge(row);
    const told = new Set(row.faults.map(({ field }) => field));
    const own = row.unreadable === true ? [] : refusals.filter(({ field }) => !told.has(field));
    const all = [...row.faults, ...own];
    if (all.length === 0 && value !== undefined) rows.push(value);
    else bad.push({ place: row.place, refusals: all });
  }
  return { rows, bad };
}

/** A fault where an earlier row has this name already; else the name is noted. */
export function twiceFaults(
  field: string,
  name: unknown,
  place: string,
  seen: Map<string, string>,
): readonly Refusal[] {
  if (typeof name !== "string") return [];
  const before = seen.get(name);
  if (before === undefined) {
    seen.set(name, place);
    return [];
  }
  return [{ field, got: name, need: `one of its own; ${before} has this one` }];
}
