import * as z from "zod/mini";
import { alternativesSchema } from "./alternatives-schema.ts";
import { choice } from "./fields.ts";
import { amount, count, findingSchema, name } from "./plan-parts-schema.ts";

const trees = () => z.tuple([name(), name()]);

/** What one change alone would do to how many have a berth. Lengths in metres. */
export const counterfactualSchema = z.object({
  change: choice(
    "hammocks-per-tree",
    "strip-width",
    "span-window",
    "kit-more",
    "line-more",
    "kind-more",
    "reach",
    "setback",
    "spokes",
    "species",
    "trunk-least",
    "doubtful-sound",
    "dead-gone",
    "limb-down",
  ),
  about: z.optional(z.array(name())),
  from: z.optional(z.array(amount())),
  to: z.optional(z.array(amount())),
  unit: z.optional(choice("m", "1")),
  placed: count(),
  gained: count(),
  proven: z.boolean(),
  advice: z.boolean(),
});

/** What limits how many have a berth. */
export const bottleneckSchema = z.object({
  trees: z.array(name()),
  most: count(),
  knots: z.array(
    z.object({
      trees: z.array(name()),
      pairs: z.array(trees()),
      most: count(),
      why: choice("tree", "strips", "part"),
    }),
  ),
});

export const failedPairSchema = z.object({
  trees: trees(),
  span_m: amount(),
  because: z.array(findingSchema),
  alternatives: z.optional(alternativesSchema),
});

export const refusedPinSchema = z.object({
  sleeper: name(),
  trees: trees(),
  because: z.array(findingSchema),
  alternatives: z.optional(alternativesSchema),
});

/** Beside a plan that mends one before: who moves in it, and what planning anew would come to. */
export const repairSchema = z.object({
  moved: z.array(name()),
  fewest: z.boolean(),
  fresh: z.object({ moved: z.array(name()), placed: count(), cost: amount() }),
});
