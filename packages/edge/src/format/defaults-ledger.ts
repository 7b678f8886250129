import { defaultEntry, DEFAULTS, type DefaultKey, type DefaultUsed } from "@nightspan/core";

/** Hands out defaults of the one table and keeps a list of each one used and for whom. */
export interface DefaultsLedger {
  /** The value for a field that is silent; noted once, with the id it was used for. */
  readonly take: <K extends DefaultKey>(key: K, id?: string) => (typeof DEFAULTS)[K]["value"];
  readonly note: (field: string, value: number | string | boolean, id?: string) => void;
  readonly used: () => readonly DefaultUsed[];
}

export function defaultsLedger(): DefaultsLedger {
  const entries = new Map<string, { value: number | string | boolean; for: string[] }>();
  function note(field: string, value: number | string | boolean, id?: string) {
    const entry = entries.get(field) ?? { value, for: [] };
    if (id !== undefined) entry.for.push(id);
    entries.set(field, entry);
  }
  return {
    take(key, id) {
      note(key, defaultEntry(key).value, id);
      return DEFAULTS[key].value;
    },
    note,
    used: () => [...entries].map(([field, entry]) => ({ field, ...entry })),
  };
}
