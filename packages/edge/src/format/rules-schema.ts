import * as z from "zod/mini";
import { choice, day, flag, list, number, record, text, whole } from "./fields.ts";
import { hammocksPerTree } from "./ground-schema.ts";

/** A house rule: its value alone, or with who says so and the day it was read. */
function rule<T extends z.core.$ZodType>(value: T, need: string) {
  return z.optional(
    z.union([value, record(need, { value, source: text("who says so"), read_on: z.optional(day()) })], {
      error: `${need}, or {"value", "source", "read_on"}`,
    }),
  );
}

function between(low: number, high: number, unit = "") {
  const need = `a number from ${low} to ${high}${unit === "" ? "" : ` ${unit}`}`;
  return rule(number(low, high, unit), need);
}

/** Of one term of the cost, in metres of span. */
const weight = () => z.optional(number(0, 1000, "m"));
const setback = () => between(0, 200, "m");
const heights = () => between(0, 3, "tree heights");

export const rulesSchema = record("the house rules", {
  preset: z.optional(choice("cautious", "usual", "backcountry")),
  span_min_m: between(0.5, 30, "m"),
  span_max_m: between(0.5, 30, "m"),
  span_ideal_m: between(0.5, 30, "m"),
  trunk_min_cm: between(5, 200, "cm"),
  strap_width_min_mm: between(5, 200, "mm"),
  hammocks_per_tree: rule(hammocksPerTree(), "a whole number from 1 to 8"),
  strap_height_max_m: between(0.3, 5, "m"),
  low_point_max_m: between(0.1, 3, "m"),
  design_factor: between(1, 20),
  angle_min_deg: between(5, 60, "degrees"),
  angle_max_deg: between(5, 60, "degrees"),
  dead_tree_heights: heights(),
  doubtful_tree_heights: heights(),
  footprint_half_width_m: between(0, 5, "m"),
  spare_per: rule(whole(1, 1000), "a whole number of people from 1 to 1000"),
  adult_youth_m: between(0, 1000, "m"),
  tree_pull_max_kn: between(0.05, 100, "kN"),
  setback_fire_m: setback(),
  setback_path_m: setback(),
  setback_water_m: setback(),
  setback_building_m: setback(),
  setback_rock_m: setback(),
  setback_other_m: setback(),
  survey_room: rule(flag(), "true or false"),
  no_spokes: rule(flag(), "true or false"),
  species_not: rule(list(text("a species"), "species", 0, 200), "a list of species"),
  weights: z.optional(
    record("weights of the cost", {
      span: weight(),
      wind: weight(),
      slope: weight(),
      walk: weight(),
      spread: weight(),
      far: weight(),
      wish: weight(),
    }),
  ),
});
