import * as z from "zod/mini";
import { alternativesSchema } from "./alternatives-schema.ts";
import {
  bottleneckSchema,
  counterfactualSchema,
  failedPairSchema,
  refusedPinSchema,
  repairSchema,
} from "./explanation-schema.ts";
import { choice, flag } from "./fields.ts";
import { fitSchema } from "./fit-schema.ts";
import { nightClockSchema, timelineSchema } from "./night-clock-schema.ts";
import { amount, count, findingSchema, name, verdict } from "./plan-parts-schema.ts";
import { buddySchema, spareSchema } from "./spare-schema.ts";
import { cutsSchema, dealingSchema, packingSchema } from "./store-schema.ts";
import { tarpSchema } from "./tarp-schema.ts";
import { warmthSchema } from "./warmth-schema.ts";

export const PLAN_FORMAT = "nightspan-plan/1";

const part = () =>
  choice("site", "hang", "strength", "trunk", "tarp", "rain", "warmth", "night", "cuts", "packing");

const strapSchema = z.object({
  strap_height_m: amount(),
  above_level_m: amount(),
  strap_length_m: amount(),
  webbing_m: amount(),
  angle_deg: amount(),
  pull_n: amount(),
  sideways_n: amount(),
  down_n: amount(),
  parts: z.optional(
    z.object({
      round_trunk_m: amount(),
      tie_m: amount(),
      off_bark_m: amount(),
      connector_m: amount(),
      sling_m: amount(),
    }),
  ),
});

/** Where nobody knows the ground between the trees, the foot strap is told from level alone. */
const footSchema = z.extend(strapSchema, { strap_height_m: z.optional(amount()) });

const okSchema = z.object({ low: amount(), high: amount(), binds_low: name(), binds_high: name() });

export const hangSchema = z.object({
  head: strapSchema,
  foot: footSchema,
  ridgeline_m: z.optional(amount()),
  ridgeline_pull_n: z.optional(amount()),
  seat_height_m: amount(),
  low_point_m: amount(),
  foot_raise_m: amount(),
  level_foot_over_head_m: amount(),
  settle_m: z.optional(amount()),
  settling: z.optional(
    z.object({
      head_stretch_m: amount(),
      foot_stretch_m: amount(),
      ten_minutes_m: amount(),
      overnight_m: amount(),
      wet_nylon_m: z.optional(amount()),
    }),
  ),
  ok: z.record(name(), okSchema),
  band: z.record(name(), z.tuple([amount(), amount()])),
  notes: z.optional(z.array(name())),
});

const treeSchema = z.object({ dbh_cm: amount(), elevation_m: amount() });

/** What a hang was asked for: all that the as-hung check needs beside the span. */
export const requestSchema = z.object({
  span_error_m: z.optional(amount()),
  head: treeSchema,
  foot: treeSchema,
  hammock: z.object({
    length_m: amount(),
    ridgeline_m: z.optional(amount()),
    mass_kg: amount(),
    ea_n: z.optional(amount()),
  }),
  suspension: z.object({
    type: choice("tied-webbing", "whoopie-sling"),
    min_m: amount(),
    max_m: z.optional(amount()),
    ea_n: z.optional(amount()),
    wraps: z.optional(amount()),
    through_own_eye: z.optional(flag()),
    connector_m: z.optional(amount()),
    owned_m: z.optional(amount()),
  }),
  sleeper: z.object({ mass_kg: amount(), stature_m: amount() }),
  targets: z.object({
    angle_deg: amount(),
    seat_height_m: z.optional(amount()),
    foot_raise_m: amount(),
  }),
  limits: z.object({
    angle_min_deg: amount(),
    angle_max_deg: amount(),
    reach_m: z.optional(amount()),
    strap_height_max_m: z.optional(amount()),
    low_point_max_m: z.optional(amount()),
    low_point_min_m: amount(),
    seat_height_min_m: amount(),
    seat_height_max_m: amount(),
    foot_raise_min_m: amount(),
    foot_raise_max_m: amount(),
  }),
});

const berthSchema = z.object({
  id: name(),
  sleeper: name(),
  head_tree: name(),
  foot_tree: name(),
  span_m: amount(),
  bearing_deg: z.optional(amount()),
  pair: z.optional(name()),
  ground_known: z.boolean(),
  step_it_out: z.boolean(),
  hang: hangSchema,
  request: z.optional(requestSchema),
  span_window: z.optional(okSchema),
  kit: z.optional(
    z.object({
      hammock: z.optional(name()),
      suspension: z.optional(name()),
      tarp: z.optional(name()),
      under: z.optional(name()),
      over: z.optional(name()),
    }),
  ),
  set_by: name(),
  buddy: z.optional(buddySchema),
  tarp: z.optional(tarpSchema),
  warmth: z.optional(warmthSchema),
  alternatives: z.optional(alternativesSchema),
  verdict: verdict(),
  findings: z.array(findingSchema),
});

const supplySchema = z.object({
  trees: count(),
  usable: count(),
  pairs: count(),
  blocked_by: z.object({
    stem: count(),
    "dead-tree": count(),
    overhead: count(),
    obstacle: count(),
    hang: count(),
  }),
  berths: count(),
});

/** The plan file, also what `plan --json` prints. A part that was not computed is left out. */
export const planSchema = z.object({
  format: z.literal(PLAN_FORMAT, { error: `"${PLAN_FORMAT}"` }),
  camp: name(),
  engine: name(),
  verdict: verdict(),
  trees_looked_at: z.object({
    done: count(),
    of: count(),
    by: z.array(name()),
    on: z.optional(name()),
  }),
  checked: z.array(part()),
  not_checked: z.array(part()),
  asked: count(),
  placed: count(),
  bound: count(),
  cost: amount(),
  lower_bound: amount(),
  gap: amount(),
  method: name(),
  cost_terms: z.optional(
    z.array(z.object({ name: name(), weight: amount(), measure: amount(), cost: amount() })),
  ),
  dealt_anew: z.optional(
    z.object({
      placed_before: count(),
      changes: z.array(
        z.object({
          sleeper: name(),
          kind: z.enum(["hammock", "suspension"]),
          from: z.optional(name()),
          to: name(),
        }),
      ),
    }),
  ),
  robust: z.optional(
    z.object({ error_m: amount(), placed: count(), most: count(), as_surveyed: z.optional(count()) }),
  ),
  kept_half_width_m: z.optional(amount()),
  berths: z.array(berthSchema),
  unplaced: z.array(
    z.object({
      sleeper: name(),
      because: z.array(findingSchema),
      pairs: z.optional(z.array(failedPairSchema)),
      pairs_left: z.optional(count()),
      alternatives: z.optional(z.array(alternativesSchema)),
    }),
  ),
  counterfactuals: z.optional(z.array(counterfactualSchema)),
  bottleneck: z.optional(bottleneckSchema),
  pins_refused: z.optional(z.array(refusedPinSchema)),
  repair: z.optional(repairSchema),
  spares: z.optional(z.array(spareSchema)),
  dealing: z.optional(dealingSchema),
  cuts: z.optional(cutsSchema),
  packing: z.optional(packingSchema),
  fit: z.optional(fitSchema),
  night_clock: z.optional(nightClockSchema),
  timeline: z.optional(timelineSchema),
  supply: supplySchema,
  defaults_used: z.array(
    z.object({
      field: name(),
      value: z.union([z.number(), z.string(), z.boolean()]),
      for: z.optional(z.array(name())),
    }),
  ),
  findings: z.array(findingSchema),
});

export type PlanFile = z.infer<typeof planSchema>;
export type RequestFile = z.infer<typeof requestSchema>;
export type HangFile = z.infer<typeof hangSchema>;
export type FindingFile = z.infer<typeof findingSchema>;
