import type { Plan, PlannedBerth } from "@nightspan/core";
import * as z from "zod/mini";
import { fileForm } from "./file-form.ts";
import { fitSchema } from "./fit-schema.ts";
import { nightClockSchema, timelineSchema } from "./night-clock-schema.ts";
import { present } from "./optional.ts";
import { buddySchema, spareSchema } from "./spare-schema.ts";
import { cutsSchema, dealingSchema, packingSchema } from "./store-schema.ts";
import { tarpSchema } from "./tarp-schema.ts";
import { warmthSchema } from "./warmth-schema.ts";

/** The parts of the plan file that are about the night and the store, where they were worked out. */
export function planParts(plan: Plan) {
  return present({
    spares: written(z.array(spareSchema), plan.spares),
    dealing: written(dealingSchema, plan.dealing),
    cuts: written(cutsSchema, plan.cuts),
    packing: written(packingSchema, plan.packing),
    fit: written(fitSchema, plan.fit),
    night_clock: written(nightClockSchema, plan.nightClock),
    timeline: written(timelineSchema, plan.timeline),
  });
}

/** The same of one berth. */
export function berthParts(berth: PlannedBerth) {
  return present({
    buddy: written(buddySchema, berth.buddy),
    tarp: written(tarpSchema, berth.tarp),
    warmth: written(warmthSchema, berth.warmth),
  });
}

/** A part in the form that its schema says; one that does not fit is a mistake of ours. */
function written<T>(schema: z.ZodMiniType<T>, part: object | undefined): T | undefined {
  return part === undefined ? undefined : schema.parse(fileForm(part));
}
