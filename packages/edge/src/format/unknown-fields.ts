import { fieldPath, valueAt } from "./raw.ts";

/** Paths of what stands in a document but not in what the schema made of it. */
export function unknownFields(document: unknown, known: unknown): readonly string[] {
  const found: string[] = [];
  collect(document, known, [], found);
  return found;
}

function collect(given: unknown, known: unknown, path: readonly PropertyKey[], found: string[]): void {
  if (Array.isArray(given)) {
    given.forEach((item: unknown, index) => collect(item, valueAt(known, [index]), [...path, index], found));
    return;
  }
  if (typeof given !== "object" || given === null) return;
  for (const [key, value] of Object.entries(given)) {
    const here = [...path, key];
    if (isRecord(known) && Object.hasOwn(known, key)) collect(value, valueAt(known, [key]), here, found);
    else found.push(fieldPath(here));
  }
}

function isRecord(value: unknown): value is object {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
