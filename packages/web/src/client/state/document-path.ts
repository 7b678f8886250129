/** The way to a field of the camp file: `["sleepers", 2, "stature_m"]`. */
export type DocumentPath = readonly (string | number)[];

/** As refusals write it: "sleepers[2].stature_m". */
export function writePath(path: DocumentPath): string {
  return path.reduce<string>((sofar, step) => {
    if (typeof step === "number") return `${sofar}[${step}]`;
    return sofar === "" ? step : `${sofar}.${step}`;
  }, "");
}

/** What stands at a path; undefined where there is nothing. */
export function readAt(value: unknown, path: DocumentPath): unknown {
  const [step, ...rest] = path;
  if (step === undefined) return value;
  return readAt(child(value, step), rest);
}

/** A copy with another value at a path; undefined takes the field away. All else is shared, not copied. */
export function writeAt(value: unknown, path: DocumentPath, wanted: unknown): unknown {
  const [step, ...rest] = path;
  if (step === undefined) return wanted;
  const below = writeAt(child(value, step), rest, wanted);
  if (typeof step === "number") return withItem(value, step, below);
  const fields = typeof value === "object" && value !== null ? Object.entries(value) : [];
  const others = fields.filter(([name]) => name !== step);
  if (below === undefined) return Object.fromEntries(others);
  return fields.length === others.length
    ? Object.fromEntries([...fields, [step, below]])
    : Object.fromEntries(fields.map(([name, old]) => [name, name === step ? below : old]));
}

function withItem(value: unknown, index: number, below: unknown): unknown[] {
  const old: readonly unknown[] = Array.isArray(value) ? value : [];
  const items = [...old];
  if (below === undefined) items.splice(index, 1);
  else items[index] = below;
  return items;
}

function child(value: unknown, step: string | number): unknown {
  if (Array.isArray(value)) {
    const items: readonly unknown[] = value;
    return typeof step === "number" ? items[step] : undefined;
  }
  if (typeof value !== "object" || value === null || !Object.hasOwn(value, step)) return undefined;
  return Object.entries(value).find(([name]) => name === step)?.[1];
}
