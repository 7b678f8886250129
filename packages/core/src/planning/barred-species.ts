import type { Ground } from "../plan/camp.ts";
import type { HouseRules } from "../plan/house-rules.ts";

/**
 * The ground with the trees left out of use whose species the house rules bar. A rule names a species, a genus
 * ("quercus", "oak") or a whole scientific name, in any case; a tree of which nobody says the species is not barred.
 *
 * Source   house-rules
 */
export function withoutBarredSpecies(ground: Ground, { speciesNot }: Pick<HouseRules, "speciesNot">): Ground {
  const barred = (speciesNot?.value ?? []).map(plain).filter((name) => name !== "");
  if (barred.length === 0) return ground;
  const isBarred = (species: string | undefined): boolean =>
    species !== undefined && barred.some((name) => isOf(plain(species), name));
  return {
    ...ground,
    trees: ground.trees.map((tree) => (isBarred(tree.species) ? { ...tree, use: false } : tree)),
  };
}

/** The very name, a genus before it, or a kind after it: "red oak" is an oak, "Quercus rubra" a Quercus. */
function isOf(species: string, name: string): boolean {
  return species === name || species.startsWith(`${name} `) || species.endsWith(` ${name}`);
}

function plain(name: string): string {
  return name.trim().toLowerCase().replaceAll(/\s+/g, " ");
}
