import type { Refusal } from "@nightspan/core";
import { textAt } from "./raw.ts";

/** One refusal for each item whose id or tag an earlier item of the list has already. */
export function twice(
  items: readonly unknown[],
  list: string,
  key: string,
  fallback = key,
): readonly Refusal[] {
  const first = new Map<string, number>();
  return items.flatMap((item, index) => {
    const name = textAt(item, key) ?? textAt(item, fallback);
    if (name === undefined) return [];
    const before = first.get(name);
    if (before === undefined) {
      first.set(name, index);
      return [];
    }
    return [
      {
        field: `${list}[${index}].${key}`,
        got: name,
        need: `a name of its own; ${list}[${before}] has this one`,
      },
    ];
  });
}
