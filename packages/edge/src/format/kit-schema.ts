import * as z from "zod/mini";
import { choice, day, flag, list, number, record, text, whole } from "./fields.ts";
import { id } from "./ground-schema.ts";

const pieceNumber = () => text("the number of a piece", 40);

export const inspectionSchema = record("an inspection", {
  by: text("a name"),
  on: day(),
  finding: text("what was found", 1_000),
  action: choice("pass", "quarantine", "retire"),
  number: z.optional(pieceNumber()),
});

const common = () => ({
  id: id(),
  count: z.optional(whole(0, 10_000)),
  mass_kg: z.optional(number(0, 100, "kg")),
  state: z.optional(choice("in-use", "quarantined", "retired")),
  numbers: z.optional(list(pieceNumber(), "numbers of pieces")),
  wear: z.optional(choice("new", "good", "worn")),
  in_service_on: z.optional(day()),
  inspections: z.optional(list(inspectionSchema, "inspections")),
});

/** Of an outer cloth at 100 Pa, per area: the same figure as in L/m²s. */
const permeability = () => z.optional(number(0, 1_000, "mm/s"));
const share = () => z.optional(number(0, 1));
const resistance = () => z.optional(number(0, 5, "m²K/W"));
const label = () => z.optional(text("what it is"));

const force = () => z.optional(number(1, 1_000_000, "N"));

const hammockSchema = record("a hammock", {
  ...common(),
  kind: z.literal("hammock"),
  length_m: number(1, 6, "m"),
  width_m: z.optional(number(0.5, 4, "m")),
  ridgeline_m: z.optional(number(0.5, 6, "m")),
  max_user_kg: z.optional(number(10, 1_000, "kg")),
  layers: z.optional(whole(1, 3)),
  net: z.optional(flag()),
  ea_n: z.optional(number(100, 10_000_000, "N")),
});

const suspensionSchema = record("a suspension", {
  ...common(),
  kind: z.literal("suspension"),
  type: choice("tied-webbing", "whoopie-sling"),
  min_m: z.optional(number(0, 10, "m")),
  max_m: z.optional(number(0, 20, "m")),
  strap_length_m: z.optional(number(0.2, 20, "m")),
  strap_width_mm: z.optional(number(2, 300, "mm")),
  ea_n: z.optional(number(100, 10_000_000, "N")),
  rated_load_n: force(),
  breaking_n: force(),
  through_own_eye: z.optional(flag()),
  wraps: z.optional(number(0.5, 10)),
  connector_m: z.optional(number(0, 0.5, "m")),
});

const tarpSchema = record("a tarp", {
  ...common(),
  kind: z.literal("tarp"),
  shape: choice("rectangle", "diamond", "hexagon", "asymmetric"),
  ridge_m: number(0.5, 12, "m"),
  width_m: number(0.5, 12, "m"),
  edge_m: z.optional(number(0, 12, "m")),
  skew_m: z.optional(number(0, 6, "m")),
  catenary_cut_m: z.optional(number(0, 2, "m")),
  tie_outs: z.optional(whole(0, 20)),
});

const underSchema = record("under insulation", {
  ...common(),
  kind: z.literal("under"),
  r_m2k_w: resistance(),
  limit_c: z.optional(number(-60, 30, "°C")),
  covered: share(),
  form: z.optional(choice("mat", "underblanket")),
  placement: z.optional(choice("on-cloth", "between-layers", "hung-below")),
  gap: share(),
  permeability_mm_s: permeability(),
  loft_left: share(),
  length_m: z.optional(number(0.2, 3, "m")),
  width_m: z.optional(number(0.2, 3, "m")),
  fits_net: z.optional(flag()),
});

const overSchema = record("over insulation", {
  ...common(),
  kind: z.literal("over"),
  comfort_c: z.optional(number(-60, 30, "°C")),
  limit_c: z.optional(number(-60, 30, "°C")),
  r_m2k_w: resistance(),
  form: z.optional(choice("bag", "quilt")),
  loft_mm: z.optional(number(0, 300, "mm")),
  fill: z.optional(choice("down", "polyester", "foam")),
  permeability_mm_s: permeability(),
  loft_left: share(),
  length_m: z.optional(number(0.2, 3, "m")),
});

const cordSchema = record("cord or webbing", {
  ...common(),
  kind: z.literal("cord"),
  label: label(),
  material: z.optional(choice("webbing", "ridge-cord", "guy-cord", "thin-cord")),
  length_m: z.optional(number(0.05, 10_000, "m")),
  width_mm: z.optional(number(1, 300, "mm")),
});

const pegSchema = record("a peg", {
  ...common(),
  kind: z.literal("peg"),
  label: label(),
  holds_n: force(),
});

const OTHER_KINDS = ["connector", "light", "other"] as const;

const otherSchema = record("other kit", {
  ...common(),
  kind: z.enum(OTHER_KINDS),
  label: label(),
});

/** The kinds of kit that can be kept for a sleeper. */
export const DEALT_KINDS = ["hammock", "suspension", "tarp", "under", "over"] as const;

/** Every kind of kit. */
export const KIT_KINDS = [...DEALT_KINDS, "cord", "peg", ...OTHER_KINDS] as const;

export const kitSchema = z.discriminatedUnion(
  "kind",
  [hammockSchema, suspensionSchema, tarpSchema, underSchema, overSchema, cordSchema, pegSchema, otherSchema],
  { error: `one of ${KIT_KINDS.map((kind) => `"${kind}"`).join(", ")}` },
);
