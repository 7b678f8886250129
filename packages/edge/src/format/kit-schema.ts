import * as z from "zod/mini";
import { choice, flag, number, record, text, whole } from "./fields.ts";
import { id } from "./ground-schema.ts";

const common = () => ({
  id: id(),
  count: z.optional(whole(0, 10_000)),
  mass_kg: z.optional(number(0, 100, "kg")),
  state: z.optional(choice("in-use", "quarantined", "retired")),
});

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
});

const tarpSchema = record("a tarp", {
  ...common(),
  kind: z.literal("tarp"),
  shape: choice("rectangle", "diamond", "hexagon", "asymmetric"),
  ridge_m: number(0.5, 12, "m"),
  width_m: number(0.5, 12, "m"),
});

const underSchema = record("under insulation", {
  ...common(),
  kind: z.literal("under"),
  r_m2k_w: z.optional(number(0, 5, "m²K/W")),
  limit_c: z.optional(number(-60, 30, "°C")),
  covered: z.optional(number(0, 1)),
});

const overSchema = record("over insulation", {
  ...common(),
  kind: z.literal("over"),
  comfort_c: z.optional(number(-60, 30, "°C")),
  r_m2k_w: z.optional(number(0, 5, "m²K/W")),
});

const OTHER_KINDS = ["cord", "peg", "connector", "light", "other"] as const;

const otherSchema = record("other kit", {
  ...common(),
  kind: z.enum(OTHER_KINDS),
  label: z.optional(text("what it is")),
});

/** The kinds of kit that can be kept for a sleeper. */
export const DEALT_KINDS = ["hammock", "suspension", "tarp", "under", "over"] as const;

export const kitSchema = z.discriminatedUnion(
  "kind",
  [hammockSchema, suspensionSchema, tarpSchema, underSchema, overSchema, otherSchema],
  { error: `one of ${[...DEALT_KINDS, ...OTHER_KINDS].map((kind) => `"${kind}"`).join(", ")}` },
);
