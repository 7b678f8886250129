import type { NameText, QuantityText, Quantity, TextItem, WordText } from "./text-item.ts";
import type { WordKey } from "../words/english.ts";

/** Text items by short names, for code that draws. */
export function name(written: string): NameText {
  return { name: written };
}

export function word(key: WordKey, args?: Readonly<Record<string, TextItem>>): WordText {
  return args === undefined ? { word: key } : { word: key, args };
}

export function quantity(
  kind: Quantity,
  value: number,
  digits: number,
  part?: "number" | "unit",
): QuantityText {
  const base = { quantity: kind, value, digits };
  return part === undefined ? base : { ...base, part };
}
