import * as z from "zod/mini";
import { choice } from "./fields.ts";
import { amount, count, findingSchema, name } from "./plan-parts-schema.ts";

export const dealtKind = () => choice("hammock", "suspension", "tarp", "under", "over");

const borrowSchema = z.object({
  kind: dealtKind(),
  count: count(),
  for: z.array(name()),
  max_user_kg: z.optional(amount()),
  length_m: z.optional(amount()),
  strap_width_mm: z.optional(amount()),
  air_c: z.optional(amount()),
});

const shortageSchema = z.object({
  kind: dealtKind(),
  lacking: z.array(name()),
  competing: z.array(name()),
  /** No fewer people compete for too few items; else the fewest found. */
  is_fewest: z.optional(z.boolean()),
  items: z.array(name()),
  pieces: count(),
  borrow: z.array(borrowSchema),
  because: z.array(findingSchema),
});

const dealtSchema = z.object({
  sleeper: name(),
  items: z.array(
    z.object({ kind: dealtKind(), item: name(), number: z.optional(name()), pinned: z.boolean() }),
  ),
  margin_k: z.optional(amount()),
});

/** Who got what of the store, and what there is too little of. */
export const dealingSchema = z.object({
  dealt: z.array(dealtSchema),
  shortages: z.array(shortageSchema),
  spare_under: z.array(z.object({ item: name(), count: count() })),
  spare_under_lacking: count(),
  ground_places: count(),
  least_margin_k: z.optional(amount()),
  mass_kg: amount(),
  proven: z.boolean(),
  proven_of: z.optional(z.object({ below: z.boolean(), least_margin: z.boolean(), order: z.boolean() })),
});

const material = () => choice("webbing", "ridge-cord", "guy-cord", "thin-cord");
const lengths = () => z.array(z.object({ length_m: amount(), count: count() }));

const pieceSchema = z.object({
  material: material(),
  purpose: choice("strap", "ridgeline", "tarp-ridge", "guy", "hitch-loop", "drip-line"),
  length_m: amount(),
  count: count(),
  allowance_m: amount(),
  berths: z.array(name()),
  width_mm: z.optional(amount()),
});

const patternSchema = z.object({
  item: z.optional(name()),
  stock_m: amount(),
  times: count(),
  cuts: lengths(),
  rest_m: amount(),
});

/** What is to be cut for the plan, and from which spools. */
export const cutsSchema = z.object({
  materials: z.array(
    z.object({
      material: material(),
      width_mm: z.optional(amount()),
      pieces: z.array(pieceSchema),
      patterns: z.array(patternSchema),
      to_buy: lengths(),
      used_m: amount(),
      bought_m: amount(),
      least_bought_m: amount(),
      least_spools: count(),
      pieces_m: amount(),
      proven: z.boolean(),
    }),
  ),
});

const lineSchema = z.object({
  carrier: choice("own", "berth", "group", "spare"),
  item: z.optional(name()),
  what: name(),
  count: count(),
  numbers: z.optional(z.array(name())),
  mass_kg: z.optional(amount()),
});

/** What to pack and who carries it. Masses are the planner's own and go onto no paper. */
export const packingSchema = z.object({
  sleepers: z.array(
    z.object({
      sleeper: name(),
      berth: z.optional(name()),
      lines: z.array(lineSchema),
      mass_kg: amount(),
      unweighed: count(),
      of_body: amount(),
    }),
  ),
  groups: z.array(
    z.object({
      group: z.optional(name()),
      lines: z.array(lineSchema),
      mass_kg: amount(),
      unweighed: count(),
    }),
  ),
  shared: z.array(lineSchema),
});
