/** One kind of wood as the trunk sees it. */
export interface Wood {
  /** Empty where the row is one of several of its species and not the one meant by the plain name. */
  readonly scientific: string;
  /** English names, the handbook's own first. */
  readonly english: readonly string[];
  /** Mean modulus of rupture of clear green wood [Pa]. */
  readonly strengthPa: number;
  /** Whether the figure was read in a source, is from memory, or follows from the density of the wood. */
  readonly seen: "read" | "from memory" | "from density";
}

/** Pounds a square inch in pascals, exact by definition to the digits given. */
export const PSI = 6894.757293168;
export const MPA = 1e6;

export function wood(
  scientific: string,
  english: readonly string[],
  strengthPa: number,
  seen: Wood["seen"],
): Wood {
  return { scientific, english, strengthPa, seen };
}

/**
 * A wood of which no bending strength was found, by the handbook's line through the density of all green woods.
 *
 *   strength = 17,600 lbf/in² × G^1.25
 *
 * Units    basic density over that of water: oven-dry mass over green volume [1]
 * Error    single species scatter by 20 to 30 % about the line
 * Source   wood-handbook (the line read; densities from memory)
 */
export function woodOfDensity(scientific: string, english: readonly string[], density: number): Wood {
  return wood(scientific, english, 17_600 * PSI * density ** 1.25, "from density");
}
