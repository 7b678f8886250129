// Long because: one table of data, a line or two for each default.
import type { SourceKey } from "../outcome/source-key.ts";
import { STEPPED_SPAN_ERROR_RATIO } from "../statics/hang-errors.ts";

/** One line of the table: what is taken where the camp file is silent, in the file's own unit, and why. */
export interface DefaultEntry {
  readonly value: number | string | boolean;
  /** Unit as the camp file writes it; "x stature" for a share of the sleeper's own stature; "" for none. */
  readonly unit: string;
  readonly why: string;
  readonly source: SourceKey;
}

/**
 * All that is taken for granted where the camp file is silent, by key. Keys are paths of the camp file; those
 * under `hang` and `kit.default` are no fields of it and can only be changed here.
 *
 * The house-rule presets are the second half of the table: `RULE_DEFAULTS` in `rule-defaults.ts`.
 */
export const DEFAULTS = {
  "ground.trees[].condition": {
    value: "not-looked-at",
    unit: "",
    why: "A tree nobody speaks of was not looked at.",
    source: "house-convention",
  },
  "ground.trees[].use": {
    value: true,
    unit: "",
    why: "A listed tree may be used unless somebody says otherwise.",
    source: "house-convention",
  },
  "ground.trees[].height_m": {
    value: "4 m + 0.5 m per cm of trunk diameter",
    unit: "",
    why: "A generous height for forest trees, for how far a dead one may fall; measure it where it matters.",
    source: "house-convention",
  },
  "ground.pairs[].dbh_cm": {
    value: 30,
    unit: "cm",
    why: "A middling trunk, so that lengths come out; the trunk itself stays unmeasured and is told so.",
    source: "house-convention",
  },
  "ground.pairs[].steps": {
    value: STEPPED_SPAN_ERROR_RATIO,
    unit: "x span",
    why: "How far a span counted in one's own calibrated steps is usually off.",
    source: "common-practice",
  },
  "ground.source": {
    value: "taped",
    unit: "",
    why: "A list of coordinates is taken as measured unless it says stepped or GPS.",
    source: "house-convention",
  },
  "ground.position_error_m": {
    value: 0.1,
    unit: "m",
    why: "Tape and compass among trees.",
    source: "common-practice",
  },
  "ground.obstacles[].setback_m": {
    value: 5,
    unit: "m",
    why: "Reach of a dead or hung-up limb where nobody measured it; other kinds take the house rule of their kind.",
    source: "common-practice",
  },
  "rules.preset": {
    value: "usual",
    unit: "",
    why: "Our own neutral middle; the land manager's figures win wherever they are given.",
    source: "common-practice",
  },
  "sleepers[].mass_kg": {
    value: 80,
    unit: "kg",
    why: "A grown person with night things on.",
    source: "house-convention",
  },
  "sleepers[].hand": {
    value: "right",
    unit: "",
    why: "One hand for the whole group, so that tarps can be pitched alike.",
    source: "common-practice",
  },
  "sleepers[].reach_m": {
    value: 1.2,
    unit: "x stature",
    why: "Where two hands can still work a strap overhead: below the fingertips of a raised arm.",
    source: "common-practice",
  },
  "sleepers[].step_m": {
    value: 0.41,
    unit: "x stature",
    why: "One easy step; everybody should calibrate their own once.",
    source: "common-practice",
  },
  "sleepers[].sleeps": {
    value: "usual",
    unit: "",
    why: "Neither a cold nor a warm sleeper.",
    source: "house-convention",
  },
  "sleepers[].leads": {
    value: false,
    unit: "",
    why: "Somebody is a leader only where the file says so.",
    source: "house-convention",
  },
  "people.near_m": {
    value: 12,
    unit: "m",
    why: "Calling distance by night: who wishes to be near somebody lies no farther off, berth middle to middle.",
    source: "common-practice",
  },
  "people.apart_m": {
    value: 8,
    unit: "m",
    why: "Not next to each other: who is to be apart, and different zones, lie no nearer, berth middle to middle.",
    source: "common-practice",
  },
  "rules.weights.span": {
    value: 1,
    unit: "m",
    why: "The measure of the cost: one metre of span off the ideal. The other weights are told in it.",
    source: "house-convention",
  },
  "rules.weights.wind": {
    value: 0,
    unit: "m",
    why: "A berth along the wind instead of across it; counted only where the file says so.",
    source: "house-convention",
  },
  "rules.weights.slope": {
    value: 0,
    unit: "m",
    why: "A metre of rise for each metre; counted only where the file says so.",
    source: "house-convention",
  },
  "rules.weights.walk": {
    value: 0,
    unit: "m",
    why: "Each metre from the meeting point; counted only where the file says so.",
    source: "house-convention",
  },
  "rules.weights.spread": {
    value: 0,
    unit: "m",
    why: "Each metre between a sleeper and the hub of the group; counted only where the file says so.",
    source: "house-convention",
  },
  "rules.weights.far": {
    value: 10,
    unit: "m",
    why: "Each sleeper beyond the radius of the group: more than any span can be off. Where many others save more by it, a group is torn on purpose.",
    source: "house-convention",
  },
  "rules.weights.wish": {
    value: 2,
    unit: "m",
    why: "Each wish that is not met, and each pair of different zones too near each other.",
    source: "house-convention",
  },
  "kit[].state": {
    value: "in-use",
    unit: "",
    why: "Listed kit is in use unless it is quarantined or retired.",
    source: "house-convention",
  },
  "kit[].count": {
    value: 1,
    unit: "",
    why: "One line is one thing unless a count is given.",
    source: "house-convention",
  },
  "kit[].layers": { value: 1, unit: "", why: "Single cloth.", source: "common-practice" },
  "kit[].net": { value: false, unit: "", why: "No net unless it is listed.", source: "house-convention" },
  "kit[].min_m": {
    value: 0,
    unit: "m",
    why: "Webbing can be tied off right at the bark; a sling's shortest length should be given.",
    source: "common-practice",
  },
  "kit[].strap_width_mm": {
    value: 25,
    unit: "mm",
    why: "The narrowest strap that land managers commonly allow.",
    source: "common-practice",
  },
  "kit[].width_m": { value: 1.5, unit: "m", why: "A usual single hammock.", source: "common-practice" },
  "kit.hammock.mass_kg": {
    value: 0.6,
    unit: "kg",
    why: "A single gathered-end hammock with its end loops.",
    source: "common-practice",
  },
  "kit.default.hammock.length_m": {
    value: 3,
    unit: "m",
    why: "A usual gathered-end hammock, where the store lists no hammock at all.",
    source: "common-practice",
  },
  "kit.default.hammock.ridgeline_ratio": {
    value: 0.83,
    unit: "1",
    why: "A ridgeline of 0.83 of the cloth is where most people start; where the store lists no hammock at all.",
    source: "common-practice",
  },
  "kit.default.suspension.type": {
    value: "tied-webbing",
    unit: "",
    why: "It fits every length, where the store lists no suspension at all.",
    source: "common-practice",
  },
  "night.wind_height_m": {
    value: 10,
    unit: "m",
    why: "The height of weather services' wind.",
    source: "common-practice",
  },
  "night.humidity": { value: 0.8, unit: "1", why: "A usual night in a wood.", source: "common-practice" },
  "night.cloud": {
    value: 0,
    unit: "1",
    why: "A clear sky is the colder night.",
    source: "common-practice",
  },
  "night.rain_mm_h": { value: 0, unit: "mm/h", why: "No rain unless forecast.", source: "house-convention" },
  "sleepers[].age": {
    value: 45,
    unit: "years",
    why: "For warmth alone: a middling grown person. Somebody whose age is not given is taken as 16 or over; state it.",
    source: "house-convention",
  },
  "warmth.margin_k": {
    value: 2,
    unit: "K",
    why: "Comfort to spare of each half for what no balance knows: tired, hungry, a layer that slipped. Wind, sky, cold pool and person are reckoned.",
    source: "house-convention",
  },
  "warmth.band_share": {
    value: 0.78,
    unit: "1",
    why: "So much of the band above the limit makes nine in ten who do not wake of cold; all of it, nineteen in twenty.",
    source: "house-convention",
  },
  "warmth.label_below_k": {
    value: 5,
    unit: "K",
    why: "What is borrowed or bought is to be rated so much below the coldest air: 3 to 5 K are usual.",
    source: "common-practice",
  },
  "warmth.youth_margin_k": {
    value: 5,
    unit: "K",
    why: "The same under 16, where no balance of heat is valid and the kit alone is judged.",
    source: "common-practice",
  },
  "warmth.youth_warmer_k": {
    value: 4,
    unit: "K",
    why: "More than that of a half under 16 that was cold or cool on a night before.",
    source: "house-convention",
  },
  "warmth.top_share": {
    value: 0.65,
    unit: "1",
    why: "Share of the heat that goes up: 0.7 on flat ground, 0.6 where a body lies deep in cloth. An estimate.",
    source: "sleeper-balance",
  },
  "warmth.cold_back_w_m2": {
    value: 60,
    unit: "W/m²",
    why: "A half that loses more is cold by itself, however warm the other is. A judgement.",
    source: "sleeper-balance",
  },
  "warmth.sleepers_per_spare": {
    value: 6,
    unit: "1",
    why: "One spare under layer and one place on the ground for so many sleepers.",
    source: "common-practice",
  },
  "kit[].covered_underblanket": {
    value: 1,
    unit: "1",
    why: "A full underblanket wraps the whole back; give a short one its share.",
    source: "common-practice",
  },
  "kit[].covered_mat": {
    value: 0.75,
    unit: "1",
    why: "Share of the back on a mat; shoulders look out at both sides.",
    source: "sleeper-balance",
  },
  "kit[].gap": {
    value: 0,
    unit: "1",
    why: "Hung snug along the whole back; feel it with the sleeper in.",
    source: "house-convention",
  },
  "kit[].permeability_over": {
    value: 8,
    unit: "l/m²s",
    why: "A windproof shell, as most bags and quilts have.",
    source: "iso-11079",
  },
  "kit[].permeability_under": {
    value: 50,
    unit: "l/m²s",
    why: "A middling cloth, as the outer side of an underblanket is seldom told.",
    source: "iso-11079",
  },
  "hang.angle_deg": {
    value: 30,
    unit: "deg",
    why: "The common aim for the strap below level: a compromise of comfort and pull, not a safety line.",
    source: "common-practice",
  },
  "hang.foot_raise_m": {
    value: 0.2,
    unit: "m",
    why: "Foot end higher than the head end, against sliding down.",
    source: "common-practice",
  },
  "hang.foot_raise_least_m": {
    value: 0.15,
    unit: "m",
    why: "Below this, about 3° over the lie, people tell of sliding to the foot end.",
    source: "common-practice",
  },
  "hang.foot_raise_most_m": {
    value: 0.25,
    unit: "m",
    why: "Above this, about 5° over the lie, the head lies low.",
    source: "common-practice",
  },
  "hang.seat_least": {
    value: 0.2,
    unit: "x stature",
    why: "Lower and it is hard to get up; a seat is about knee height, 0.24 of stature and a shoe.",
    source: "ansur-ii",
  },
  "hang.seat_most": {
    value: 0.32,
    unit: "x stature",
    why: "Higher and the feet leave the ground: people tip on entry.",
    source: "ansur-ii",
  },
  "hang.lean_deg": {
    value: 10,
    unit: "deg",
    why: "A tree that leans more than this is looked at again: roots, ground, which way it would fall.",
    source: "house-convention",
  },
  "hang.age_least_years": {
    value: 6,
    unit: "years",
    why: "A health authority wants nobody younger in any hammock; whoever answers for the child looks again.",
    source: "health-canada-2010",
  },
  "hang.low_point_least_m": {
    value: 0.2,
    unit: "m",
    why: "Lowest cloth above the ground, lying: room for an underblanket and a night's settling.",
    source: "common-practice",
  },
  "ground.canopy": {
    value: "wood",
    unit: "",
    why: "A map of stems is a wood: a fifth of the open wind comes to the hammocks.",
    source: "forest-wind",
  },
  "kit[].edge_m": {
    value: 0.65,
    unit: "x ridge",
    why: "Lower edges of a hexagonal tarp, where nobody measured them.",
    source: "common-practice",
  },
  "kit[].skew_m": {
    value: 0.2,
    unit: "x ridge",
    why: "Shift of the side corners of an asymmetric tarp, where nobody measured it.",
    source: "common-practice",
  },
  "kit.tarp.mass_kg": {
    value: 0.6,
    unit: "kg",
    why: "A usual tarp for one hammock.",
    source: "common-practice",
  },
  "tarp.overhang_m": {
    value: 0.15,
    unit: "m",
    why: "Tarp beyond the hammock's end, at least; 15 to 30 cm are told.",
    source: "common-practice",
  },
  "tarp.headroom_m": {
    value: 0.1,
    unit: "m",
    why: "Cloth over the hammock, at least, so that it stays dry where they would touch.",
    source: "common-practice",
  },
  "tarp.ridge_pull_n": {
    value: 80,
    unit: "N",
    why: "How tight the ridge cord is set, calm: a good hand's pull on a hitch.",
    source: "common-practice",
  },
  "tarp.ridge_ea_n": {
    value: 20_000,
    unit: "N",
    why: "Force per strain of a ridge cord of 3 to 4 mm.",
    source: "common-practice",
  },
  "night.high_c": {
    value: "8 K above the low",
    unit: "",
    why: "For the run of temperature through the night; it does not move the low.",
    source: "house-convention",
  },
  "night.thunder_rule": {
    value: "30 s, 30 min",
    unit: "",
    why: "Leave the trees where thunder follows within 30 s, come back 30 min after the last.",
    source: "thunder-30-30",
  },
  "set_up.per_berth_min": {
    value: 20,
    unit: "min",
    why: "Straps, hammock, sit test, layers, tarp: one berth by one who knows how.",
    source: "common-practice",
  },
  "set_up.helpers": {
    value: "those who lead, at least one",
    unit: "",
    why: "Nobody else is taken to set up a berth alone.",
    source: "house-convention",
  },
  "set_up.tree_check_min": {
    value: 20,
    unit: "min",
    why: "Looking up, at trunks and roots, round the whole camp before anybody ties.",
    source: "common-practice",
  },
  "set_up.margin_min": {
    value: 30,
    unit: "min",
    why: "Something always takes longer.",
    source: "common-practice",
  },
} as const satisfies Readonly<Record<string, DefaultEntry>>;

export type DefaultKey = keyof typeof DEFAULTS;

/** One line of the table by its key; the keys in order with `Object.keys(DEFAULTS)`. */
export function defaultEntry(key: DefaultKey): DefaultEntry {
  return DEFAULTS[key];
}
