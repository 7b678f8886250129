import type { HallInput } from "./hall-input.ts";

/**
 * The fewest people who have fewer pieces between them than they are.
 *
 * Lines that serve the same people are one. Of every choice of lines those count whom no other line serves: where they
 * are more than its pieces, any pieces + 1 of them are short. The choice with fewest pieces so gives the smallest set,
 * for the lines of that set are such a choice.
 *
 * Shapes   people × lines → people, those without a piece before others; nothing where lines differ in more than 12 ways
 * Error    exact: all 2^ways choices are tried
 * Source   kit-dealing (handbook/kit.md)
 */
export function fewestShort({ room, serves, lineOf }: HallInput): readonly number[] | undefined {
  const people = [...lineOf.keys()];
  const ways = new Map<string, { pieces: number; bit: number }>();
  const masks = new Int32Array(people.length);
  for (const [line, pieces] of room.entries()) {
    const key = people.map((person) => Number(serves(person, line))).join("");
    const way = ways.get(key) ?? { pieces: 0, bit: 1 << ways.size };
    ways.set(key, { ...way, pieces: way.pieces + pieces });
    if (ways.size > MOST_WAYS) return undefined;
    for (const person of people) if (serves(person, line)) masks[person] = (masks[person] ?? 0) | way.bit;
  }
  const least = cheapestShort([...ways.values()], masks);
  if (least === undefined) return undefined;
  return people
    .filter((person) => ((masks[person] ?? 0) & ~least.choice) === 0)
    .sort((a, b) => Number(lineOf[a] !== -1) - Number(lineOf[b] !== -1) || a - b)
    .slice(0, least.pieces + 1);
}

const MOST_WAYS = 12;

/** The choice with fewest pieces that are too few for those whom nothing else serves. */
function cheapestShort(
  ways: readonly { readonly pieces: number; readonly bit: number }[],
  masks: Int32Array,
): { readonly choice: number; readonly pieces: number } | undefined {
  const alike = new Map<number, number>();
  for (const mask of masks) alike.set(mask, (alike.get(mask) ?? 0) + 1);
  let best: { choice: number; pieces: number } | undefined;
  for (let choice = 0; choice < 1 << ways.length; choice++) {
    const pieces = ways.reduce((sum, way) => sum + ((choice & way.bit) === 0 ? 0 : way.pieces), 0);
    if (pieces >= (best?.pieces ?? Infinity)) continue;
    let bound = 0;
    for (const [mask, many] of alike) if ((mask & ~choice) === 0) bound += many;
    if (bound > pieces) best = { choice, pieces };
  }
  return best;
}
