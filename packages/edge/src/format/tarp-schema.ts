import * as z from "zod/mini";
import { choice } from "./fields.ts";
import { amount, count, findingSchema, name } from "./plan-parts-schema.ts";

const side = () => choice("left", "right");
const end = () => choice("head", "foot");
const point = () => z.tuple([amount(), amount(), amount()]);
const ends = <T extends z.core.$ZodType>(each: T) => z.object({ head: each, foot: each });

const pitchSchema = z.object({
  head_tie_m: amount(),
  foot_tie_m: amount(),
  shift_m: amount(),
  left_angle_deg: amount(),
  right_angle_deg: amount(),
  porch: z.optional(side()),
  closed_ends: z.array(end()),
  pegged: z.array(side()),
});

const conflictSchema = z.object({
  with: choice("stem", "path", "berth", "obstacle"),
  id: name(),
  gap_m: amount(),
});

const guySchema = z.object({
  name: name(),
  from_m: point(),
  peg_m: point(),
  length_m: amount(),
  angle_deg: amount(),
  aside_m: amount(),
  along_m: amount(),
  pull_n: amount(),
  conflicts: z.array(conflictSchema),
});

const ridgeSchema = z.object({
  span_m: amount(),
  head_tie_m: amount(),
  foot_tie_m: amount(),
  sag_m: amount(),
  gust_sag_m: amount(),
  pull_n: amount(),
  gust_pull_n: amount(),
  on_trees: ends(z.object({ sideways_n: amount(), height_m: amount(), towards_deg: z.optional(amount()) })),
});

const dripSchema = z.object({
  from_gather_m: amount(),
  inside_m: amount(),
  strap_clear_m: amount(),
  strap: choice("clear", "rubs", "above-tarp"),
});

const wetSchema = z.object({ hammock_ml_h: amount(), sleeper_ml_h: amount(), under_ml_h: amount() });

const wetMapSchema = z.object({
  from_x_m: amount(),
  from_y_m: amount(),
  z_m: amount(),
  cell_m: amount(),
  columns: count(),
  rows: count(),
  shares: z.array(amount()),
});

const optionSchema = z.object({
  item: name(),
  pitch: pitchSchema,
  wet_ml_h: amount(),
  headroom_m: amount(),
  vent_m2: amount(),
  side_load_n: amount(),
  chosen: z.boolean(),
});

/** How one berth's tarp is pitched, what it keeps off, and what pulls on it. */
export const tarpSchema = z.object({
  item: name(),
  shape: choice("rectangle", "diamond", "hexagon", "asymmetric"),
  pitch: pitchSchema,
  panels: z.array(
    z.object({ name: choice("left", "right", "head-door", "foot-door"), corners_m: z.array(point()) }),
  ),
  guys: z.array(guySchema),
  ridge: ridgeSchema,
  overhang_m: ends(amount()),
  diagonal_m: ends(amount()),
  headroom_m: amount(),
  vent_m2: amount(),
  drip: ends(dripSchema),
  wet_verdicts: z.array(
    z.object({
      part: choice("left", "right", "head", "foot"),
      covered: z.boolean(),
      share: amount(),
      lower_by_m: z.optional(amount()),
    }),
  ),
  wet: wetSchema,
  canopy_drip: wetSchema,
  wet_map: z.optional(wetMapSchema),
  rose: z.optional(z.array(z.object({ wind_from_deg: amount(), wet: wetSchema }))),
  options: z.optional(z.array(optionSchema)),
  wind_m_s: amount(),
  gust_m_s: amount(),
  findings: z.array(findingSchema),
});
