/** Looking into a document of which nothing is known yet. */

export function field(value: unknown, key: string): unknown {
  if (typeof value !== "object" || value === null || !Object.hasOwn(value, key)) return undefined;
  const found: unknown = Reflect.get(value, key);
  return found;
}

export function textAt(value: unknown, key: string): string | undefined {
  const found = field(value, key);
  return typeof found === "string" ? found : undefined;
}

export function numberAt(value: unknown, key: string): number | undefined {
  const found = field(value, key);
  return typeof found === "number" && Number.isFinite(found) ? found : undefined;
}

export function listAt(value: unknown, key: string): readonly unknown[] {
  const found = field(value, key);
  return Array.isArray(found) ? found : [];
}

export function textsAt(value: unknown, key: string): readonly string[] {
  return listAt(value, key).filter((item) => typeof item === "string");
}

/** `["sleepers", 2, "mass_kg"]` → "sleepers[2].mass_kg". */
export function fieldPath(path: readonly PropertyKey[]): string {
  return path.reduce<string>((sofar, step) => {
    if (typeof step === "number") return `${sofar}[${step}]`;
    return sofar === "" ? String(step) : `${sofar}.${String(step)}`;
  }, "");
}

/** What stands at a path; undefined where there is nothing. */
export function valueAt(document: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>((here, step) => {
    if (Array.isArray(here)) {
      const items: readonly unknown[] = here;
      return typeof step === "number" ? items[step] : undefined;
    }
    return field(here, String(step));
  }, document);
}
