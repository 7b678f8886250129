import { EUROPEAN_WOODS } from "./european-woods.ts";
import { PSI, wood, type Wood } from "./wood.ts";

export type { Wood } from "./wood.ts";

/** Words of a name that only say that a rank follows. */
const RANKS: readonly string[] = ["var", "sp", "spp"];

/**
 * Mean bending strength of clear green wood by species. North American: Wood Handbook table 5-3b in pounds a
 * square inch; European: `EUROPEAN_WOODS`. Coefficient of variation about 16 %.
 * Where a name covers several origins or growths it means the weakest of them: Sitka spruce as grown in Britain,
 * Douglas-fir of the southern inland, young redwood.
 * Source: wood-handbook, lavers-1983.
 */
export const WOODS: readonly Wood[] = [
  wood("Fraxinus americana", ["white ash"], 9_500 * PSI, "from memory"),
  wood("Fraxinus pennsylvanica", ["green ash"], 9_500 * PSI, "from memory"),
  wood("Fraxinus nigra", ["black ash"], 6_000 * PSI, "from memory"),
  wood("Populus tremuloides", ["quaking aspen", "trembling aspen"], 5_100 * PSI, "from memory"),
  wood("Populus grandidentata", ["bigtooth aspen"], 5_400 * PSI, "from memory"),
  wood("Tilia americana", ["american basswood", "basswood", "american linden"], 5_000 * PSI, "from memory"),
  wood("Fagus grandifolia", ["american beech"], 8_600 * PSI, "from memory"),
  wood("Betula papyrifera", ["paper birch"], 6_400 * PSI, "from memory"),
  wood("Betula lenta", ["sweet birch"], 9_400 * PSI, "from memory"),
  wood("Betula alleghaniensis", ["yellow birch"], 8_300 * PSI, "from memory"),
  wood("Prunus serotina", ["black cherry"], 8_000 * PSI, "from memory"),
  wood("Populus deltoides", ["eastern cottonwood"], 5_300 * PSI, "from memory"),
  wood("Ulmus americana", ["american elm", "white elm"], 7_200 * PSI, "from memory"),
  wood("Carya ovata", ["shagbark hickory", "shagbark"], 11_000 * PSI, "from memory"),
  wood("Robinia pseudoacacia", ["black locust", "false acacia", "robinia"], 13_800 * PSI, "from memory"),
  wood("Acer rubrum", ["red maple"], 7_700 * PSI, "from memory"),
  wood("Acer saccharinum", ["silver maple"], 5_800 * PSI, "from memory"),
  wood("Acer saccharum", ["sugar maple", "hard maple"], 9_400 * PSI, "read"),
  wood("Quercus velutina", ["black oak"], 8_200 * PSI, "from memory"),
  wood("Quercus rubra", ["northern red oak", "red oak"], 8_300 * PSI, "from memory"),
  wood("Quercus falcata", ["southern red oak"], 6_900 * PSI, "from memory"),
  wood("Quercus alba", ["white oak"], 8_300 * PSI, "from memory"),
  wood("Quercus macrocarpa", ["bur oak"], 7_200 * PSI, "read"),
  wood("Liquidambar styraciflua", ["sweetgum", "sweet gum"], 7_100 * PSI, "from memory"),
  wood("Platanus occidentalis", ["american sycamore", "american plane"], 6_500 * PSI, "from memory"),
  wood("Juglans nigra", ["black walnut"], 9_500 * PSI, "from memory"),
  wood(
    "Liriodendron tulipifera",
    ["yellow-poplar", "tulip tree", "tuliptree", "tulip poplar"],
    6_000 * PSI,
    "from memory",
  ),
  wood("Taxodium distichum", ["baldcypress", "bald cypress"], 6_600 * PSI, "read"),
  wood(
    "Thuja plicata",
    ["western red cedar", "western redcedar", "western red-cedar"],
    5_200 * PSI,
    "from memory",
  ),
  wood("", ["coast douglas-fir"], 7_700 * PSI, "from memory"),
  wood("Abies balsamea", ["balsam fir"], 5_500 * PSI, "from memory"),
  wood("Abies concolor", ["white fir"], 5_900 * PSI, "read"),
  wood("Tsuga canadensis", ["eastern hemlock"], 6_400 * PSI, "read"),
  wood("Tsuga heterophylla", ["western hemlock"], 6_600 * PSI, "read"),
  wood("Larix occidentalis", ["western larch"], 7_700 * PSI, "from memory"),
  wood("Pinus strobus", ["eastern white pine", "weymouth pine"], 4_900 * PSI, "from memory"),
  wood("Pinus taeda", ["loblolly pine"], 7_300 * PSI, "read"),
  wood("Pinus contorta", ["lodgepole pine"], 5_500 * PSI, "read"),
  wood("Pinus palustris", ["longleaf pine"], 8_500 * PSI, "read"),
  wood("Pinus serotina", ["pond pine"], 7_400 * PSI, "read"),
  wood("Pinus ponderosa", ["ponderosa pine"], 5_100 * PSI, "read"),
  wood("Pinus resinosa", ["red pine"], 5_800 * PSI, "read"),
  wood("Pinus echinata", ["shortleaf pine"], 7_400 * PSI, "read"),
  wood("Pinus elliottii", ["slash pine"], 8_700 * PSI, "read"),
  wood("Pinus lambertiana", ["sugar pine"], 4_900 * PSI, "read"),
  wood("Pinus virginiana", ["virginia pine"], 7_300 * PSI, "read"),
  wood("Pinus monticola", ["western white pine"], 4_700 * PSI, "read"),
  wood("", ["old-growth redwood"], 7_500 * PSI, "read"),
  wood("Sequoia sempervirens", ["young-growth redwood", "redwood", "coast redwood"], 5_900 * PSI, "read"),
  wood("Picea mariana", ["black spruce"], 6_100 * PSI, "from memory"),
  wood("Picea engelmannii", ["engelmann spruce"], 4_700 * PSI, "from memory"),
  wood("Picea rubens", ["red spruce"], 6_000 * PSI, "from memory"),
  wood("", ["us-grown sitka spruce"], 5_700 * PSI, "from memory"),
  wood("Larix laricina", ["tamarack"], 7_200 * PSI, "from memory"),
  wood(
    "Pseudotsuga menziesii var. glauca",
    ["interior south douglas-fir", "douglas-fir", "pseudotsuga menziesii"],
    6_820 * PSI,
    "read",
  ),
  wood("Pinus clausa", ["sand pine"], 7_500 * PSI, "read"),
  wood("Pinus glabra", ["spruce pine"], 6_000 * PSI, "read"),
  wood("Abies grandis", ["grand fir"], 5_839 * PSI, "read"),
  wood("Abies magnifica", ["california red fir"], 5_809 * PSI, "read"),
  wood("Abies lasiocarpa", ["subalpine fir"], 4_900 * PSI, "read"),
  wood("Populus trichocarpa", ["black cottonwood"], 4_890 * PSI, "read"),
  wood(
    "Chamaecyparis lawsoniana",
    ["port orford cedar", "port-orford-cedar", "lawson cypress"],
    6_598 * PSI,
    "read",
  ),
  ...EUROPEAN_WOODS,
];

/**
 * The wood of a species by scientific or English name, any case and order of words ("Ash, white"). A name of which only
 * the genus or the kind is listed, "oak", "Quercus sp.", "cork oak", stands for the weakest listed of that; where fewer
 * than two of it are listed, "honey locust", for the weakest of all, since one alone may well be the strongest.
 */
export function findWood(species: string): Wood | undefined {
  return findNamedWood(species) ?? standIn(species);
}

/** The wood of a species that is itself listed. "Black locust tree" is black locust. */
export function findNamedWood(species: string): Wood | undefined {
  return BY_NAME.get(nameKey(species)) ?? BY_NAME.get(nameKey(withoutTree(species)));
}

/** As many of a genus or a kind must be listed before the weakest of them stands in for another. Source: house-convention. */
const LEAST_LISTED = 2;

function standIn(species: string): Wood | undefined {
  const words = wordsOf(withoutTree(species));
  const [first = "", last = ""] = [words[0], words.at(-1)];
  const like = BY_GENUS.get(first) ?? BY_KIND.get(last) ?? [];
  return like.length > 0 && like.length < LEAST_LISTED ? WEAKEST_WOOD : weakest(like);
}

/** A last word "tree" says nothing, except in a name that is listed with it. */
function withoutTree(species: string): string {
  return species.replace(/[^\p{L}]+tree\s*$/iu, "");
}

function weakest(woods: readonly Wood[]): Wood | undefined {
  return woods.reduce<Wood | undefined>(
    (least, next) => (least !== undefined && least.strengthPa <= next.strengthPa ? least : next),
    undefined,
  );
}

/** The weakest listed: what a tree of unknown species is taken for. */
export const WEAKEST_WOOD: Wood = WOODS.reduce((least, next) =>
  next.strengthPa < least.strengthPa ? next : least,
);

const BY_NAME = new Map(
  WOODS.flatMap((entry) =>
    [entry.scientific, ...entry.english]
      .filter((name) => name !== "")
      .map((name): readonly [string, Wood] => [nameKey(name), entry]),
  ),
);

/** Woods by the first word of their scientific name. */
const BY_GENUS = grouped(WOODS, ({ scientific }) => [wordsOf(scientific)[0] ?? ""]);

/** Woods by the last word of their English names, "tree" left out: what kind of tree one is. */
const BY_KIND = grouped(WOODS, ({ english }) =>
  english.flatMap((name) =>
    wordsOf(name)
      .filter((word) => word !== "tree")
      .slice(-1),
  ),
);

function grouped(
  woods: readonly Wood[],
  keysOf: (entry: Wood) => readonly string[],
): ReadonlyMap<string, readonly Wood[]> {
  const groups = new Map<string, Wood[]>();
  for (const entry of woods) {
    for (const key of new Set(keysOf(entry))) {
      if (key !== "") groups.set(key, [...(groups.get(key) ?? []), entry]);
    }
  }
  return groups;
}

/** Lower case, letters alone, words in alphabetical order. */
function nameKey(name: string): string {
  return wordsOf(name).toSorted().join(" ");
}

/** Lower case, letters alone, in the order written; what only says that a rank follows is left out. */
function wordsOf(name: string): readonly string[] {
  const words = name.toLowerCase().split(/[^\p{L}]+/u);
  return words.filter((word) => word !== "" && !RANKS.includes(word));
}
