import { refuse, succeed, type Outcome } from "@nightspan/core";
import { CAMP_FORMAT } from "./camp-schema.ts";
import { field } from "./raw.ts";

/** Turns a document of one format version into the next one. */
export interface Migration {
  readonly to: string;
  readonly change: (document: Readonly<Record<string, unknown>>) => Readonly<Record<string, unknown>>;
}

/** From format version to the next. Empty while there is only one version. */
export const MIGRATIONS: Readonly<Record<string, Migration>> = {};

/** A document brought up to a format version, step by step; a version nobody knows is refused. */
export function migrate(
  document: unknown,
  migrations: Readonly<Record<string, Migration>> = MIGRATIONS,
  target: string = CAMP_FORMAT,
): Outcome<unknown> {
  if (typeof document !== "object" || document === null || Array.isArray(document)) {
    return refuse("file", document, 'a camp: an object with "format", "name" and "sleepers"');
  }
  let current: Readonly<Record<string, unknown>> = { ...document };
  const seen = new Set<string>();
  for (;;) {
    const format = field(current, "format");
    if (format === target || typeof format !== "string" || !OWN_FORMAT.test(format)) return succeed(current);
    const step = Object.hasOwn(migrations, format) ? migrations[format] : undefined;
    if (step === undefined || seen.has(format)) {
      const known = [target, ...Object.keys(migrations)].map((name) => `"${name}"`).join(" or ");
      return refuse("format", format, `${known}; a newer file needs a newer version of Nightspan`);
    }
    seen.add(format);
    current = { ...step.change(current), format: step.to };
  }
}

/** Any other text is a slip that the schema tells together with all the rest. */
const OWN_FORMAT = /^nightspan-camp\/\d+$/;
