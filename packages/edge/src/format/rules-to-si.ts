import {
  COST_WEIGHTS,
  degrees,
  presetRules,
  RULE_DEFAULTS,
  type CostWeights,
  type HouseRule,
  type HouseRules,
  type RuleField,
} from "@nightspan/core";
import type { RulesDocument } from "./camp-document.ts";
import type { DefaultsLedger } from "./defaults-ledger.ts";
import { present } from "./optional.ts";

/** The preset with what the camp file says put over it; each rule taken from the preset is noted. */
export function rulesToSi(rules: RulesDocument | undefined, defaults: DefaultsLedger): HouseRules {
  const preset = rules?.preset ?? defaults.take("rules.preset");
  const base = presetRules(preset);
  noteSilent(rules, preset, defaults);
  const own = (field: RuleField, factor = 1) => stated(rules?.[field], factor);
  return {
    preset,
    ...idealWithin({
      spanMinM: own("span_min_m") ?? base.spanMinM,
      spanMaxM: own("span_max_m") ?? base.spanMaxM,
      spanIdealM: own("span_ideal_m") ?? base.spanIdealM,
    }),
    trunkMinM: own("trunk_min_cm", 0.01) ?? base.trunkMinM,
    strapWidthMinM: own("strap_width_min_mm", 0.001) ?? base.strapWidthMinM,
    hammocksPerTree: own("hammocks_per_tree") ?? base.hammocksPerTree,
    ...cap("strapHeightMaxM", own("strap_height_max_m") ?? base.strapHeightMaxM),
    ...cap("lowPointMaxM", own("low_point_max_m") ?? base.lowPointMaxM),
    designFactor: own("design_factor") ?? base.designFactor,
    angleMinRad: own("angle_min_deg", degrees(1)) ?? base.angleMinRad,
    angleMaxRad: own("angle_max_deg", degrees(1)) ?? base.angleMaxRad,
    deadTreeHeights: own("dead_tree_heights") ?? base.deadTreeHeights,
    ...cap("doubtfulTreeHeights", own("doubtful_tree_heights") ?? base.doubtfulTreeHeights),
    footprintHalfWidthM: own("footprint_half_width_m") ?? base.footprintHalfWidthM,
    ...cap("sparePer", own("spare_per") ?? base.sparePer),
    ...cap("adultYouthM", own("adult_youth_m") ?? base.adultYouthM),
    ...cap("treePullMaxN", own("tree_pull_max_kn", 1000) ?? base.treePullMaxN),
    setbacksM: {
      fire: own("setback_fire_m") ?? base.setbacksM.fire,
      path: own("setback_path_m") ?? base.setbacksM.path,
      water: own("setback_water_m") ?? base.setbacksM.water,
      building: own("setback_building_m") ?? base.setbacksM.building,
      rock: own("setback_rock_m") ?? base.setbacksM.rock,
      other: own("setback_other_m") ?? base.setbacksM.other,
    },
    ...present({
      noSpokes: statedOf<boolean>(rules?.no_spokes),
      surveyRoom: statedOf<boolean>(rules?.survey_room),
      speciesNot: statedOf<readonly string[]>(rules?.species_not),
      weights: rules?.weights === undefined ? undefined : weightsOf(rules.weights),
    }),
  };
}

type Spans = Pick<HouseRules, "spanMinM" | "spanMaxM" | "spanIdealM">;

/** An ideal from the preset gives way to stated bounds; stated against stated was refused before. */
function idealWithin({ spanMinM, spanMaxM, spanIdealM }: Spans): Spans {
  const value = Math.min(Math.max(spanIdealM.value, spanMinM.value), spanMaxM.value);
  return { spanMinM, spanMaxM, spanIdealM: { ...spanIdealM, value } };
}

function cap<K extends string>(key: K, rule: HouseRule | undefined): Partial<Record<K, HouseRule>> {
  const caps: Partial<Record<K, HouseRule>> = {};
  if (rule !== undefined) caps[key] = rule;
  return caps;
}

function stated(rule: RulesDocument[RuleField], factor: number): HouseRule | undefined {
  if (rule === undefined) return undefined;
  if (typeof rule === "number") return { value: rule * factor, source: "camp file" };
  const { value, source, read_on: readOn } = rule;
  return { value: value * factor, source, ...(readOn === undefined ? {} : { readOn }) };
}

/** A rule that is no number, as the file states it. */
function statedOf<T extends boolean | readonly string[]>(
  rule: T | { readonly value: T; readonly source: string; readonly read_on?: string | undefined } | undefined,
): HouseRule<T> | undefined {
  if (rule === undefined) return undefined;
  if (typeof rule !== "object" || !("value" in rule)) return { value: rule, source: "camp file" };
  const { value, source, read_on: readOn } = rule;
  return { value, source, ...(readOn === undefined ? {} : { readOn }) };
}

function weightsOf(stated: NonNullable<RulesDocument["weights"]>): CostWeights {
  const own = Object.entries(stated).filter(([, weight]) => weight !== undefined);
  return { ...COST_WEIGHTS, ...Object.fromEntries(own) };
}

function noteSilent(
  rules: RulesDocument | undefined,
  preset: HouseRules["preset"],
  defaults: DefaultsLedger,
): void {
  for (const [field, { [preset]: value }] of Object.entries(RULE_DEFAULTS)) {
    const given = Object.entries(rules ?? {}).some(([key, rule]) => key === field && rule !== undefined);
    if (!given && value !== null) defaults.note(`rules.${field}`, value);
  }
}
