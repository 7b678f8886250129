import type { SourceKey } from "../outcome/source-key.ts";
import { degrees } from "../quantity/angle.ts";
import type { HouseRule, HouseRules, PresetName } from "./house-rules.ts";

/** One house rule in the three presets, in the file's own unit; null where a preset does not cap it. */
export interface RuleDefault {
  readonly cautious: number | null;
  readonly usual: number | null;
  readonly backcountry: number | null;
  readonly unit: string;
  readonly why: string;
  readonly source: SourceKey;
}

/**
 * The house-rule presets by the file's own field names: the second half of the table of defaults. They are our own
 * neutral figures, common practice without a source; the land manager's figure wins wherever it is given.
 */
export const RULE_DEFAULTS = {
  span_min_m: rule(3, 3, 3, "m", "Nearer trees leave no room for a hammock of usual length."),
  span_max_m: rule(4.3, 5, 5.5, "m", "Farther trees need the strap above reach, or above its height cap."),
  span_ideal_m: rule(3.8, 4, 4, "m", "Where straps come at head height and the tarp fits."),
  trunk_min_cm: rule(30, 20, 20, "cm", "Trunk at the strap; figures from 15 to 30 cm are in use."),
  strap_width_min_mm: rule(50, 25, 25, "mm", "Spares the bark; 25 and 50 mm are in use."),
  hammocks_per_tree: rule(1, 1, 2, "1", "Many places allow one attachment to a tree."),
  strap_height_max_m: rule(
    1.83,
    null,
    null,
    "m",
    "A cap that some land managers set; it makes hangs flatter.",
  ),
  low_point_max_m: rule(0.5, null, null, "m", "Never higher than you would fall."),
  design_factor: rule(5, 5, 5, "1", "Breaking strength over pull, common for textile slings."),
  angle_min_deg: rule(25, 25, 25, "deg", "Flatter straps pull much harder."),
  angle_max_deg: rule(35, 35, 35, "deg", "Steeper straps fold the sleeper up."),
  dead_tree_heights: rule(1.5, 1, 1, "1", "How far a dead tree keeps berths away, in its own heights."),
  doubtful_tree_heights: rule(1.5, 1, 1, "1", "The same for a tree somebody doubts."),
  footprint_half_width_m: rule(1.5, 1.5, 1.5, "m", "Room for a tarp and its lines each side."),
  spare_per: rule(
    null,
    null,
    null,
    "people",
    "One spare berth for each so many people, where a house asks for it.",
  ),
  adult_youth_m: rule(
    null,
    null,
    null,
    "m",
    "Between grown people and those under 18, where a house asks for it.",
  ),
  tree_pull_max_kn: rule(null, null, null, "kN", "All that pulls a trunk sideways, where a house caps it."),
  setback_fire_m: rule(5, 4, 5, "m", "Hammocks and tarps melt; sparks fly."),
  setback_path_m: rule(3, 2, 60, "m", "Room to pass; out of sight in the backcountry."),
  setback_water_m: rule(10, 5, 60, "m", "Banks are soft; 60 m is the common backcountry figure."),
  setback_building_m: rule(5, 3, 3, "m", "Room to pass, and slates fall."),
  setback_rock_m: rule(1, 0.5, 0.5, "m", "Nothing hard under or beside a hammock."),
  setback_other_m: rule(2, 1, 1, "m", "Whatever else was drawn."),
} as const satisfies Readonly<Record<string, RuleDefault>>;

export type RuleField = keyof typeof RULE_DEFAULTS;

/** The house rules of a preset in SI units. What a camp file says replaces single rules of it. */
export function presetRules(preset: PresetName): HouseRules {
  const of = (field: RuleField, factor = 1): HouseRule => {
    const value = RULE_DEFAULTS[field][preset];
    return { value: (value ?? Infinity) * factor, source: preset };
  };
  const where = (field: RuleField, factor?: number): HouseRule | undefined =>
    RULE_DEFAULTS[field][preset] === null ? undefined : of(field, factor);
  return {
    preset,
    spanMinM: of("span_min_m"),
    spanMaxM: of("span_max_m"),
    spanIdealM: of("span_ideal_m"),
    trunkMinM: of("trunk_min_cm", 0.01),
    strapWidthMinM: of("strap_width_min_mm", 0.001),
    hammocksPerTree: of("hammocks_per_tree"),
    ...cap("strapHeightMaxM", where("strap_height_max_m")),
    ...cap("lowPointMaxM", where("low_point_max_m")),
    designFactor: of("design_factor"),
    angleMinRad: of("angle_min_deg", degrees(1)),
    angleMaxRad: of("angle_max_deg", degrees(1)),
    deadTreeHeights: of("dead_tree_heights"),
    doubtfulTreeHeights: of("doubtful_tree_heights"),
    footprintHalfWidthM: of("footprint_half_width_m"),
    ...cap("sparePer", where("spare_per")),
    ...cap("adultYouthM", where("adult_youth_m")),
    ...cap("treePullMaxN", where("tree_pull_max_kn", 1000)),
    setbacksM: {
      fire: of("setback_fire_m"),
      path: of("setback_path_m"),
      water: of("setback_water_m"),
      building: of("setback_building_m"),
      rock: of("setback_rock_m"),
      other: of("setback_other_m"),
    },
  };
}

/** Nothing where the preset does not cap it. */
function cap<K extends string>(key: K, found: HouseRule | undefined): Partial<Record<K, HouseRule>> {
  const caps: Partial<Record<K, HouseRule>> = {};
  if (found !== undefined) caps[key] = found;
  return caps;
}

function rule<C extends number | null, U extends number | null, B extends number | null>(
  cautious: C,
  usual: U,
  backcountry: B,
  unit: string,
  why: string,
) {
  return { cautious, usual, backcountry, unit, why, source: "common-practice" as const };
}
