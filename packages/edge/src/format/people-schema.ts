import * as z from "zod/mini";
import { choice, flag, list, number, record, text } from "./fields.ts";
import { id } from "./ground-schema.ts";

const MASS_BAND = /^\s*(\d+(?:\.\d+)?)\s*[-\u2013]\s*(\d+(?:\.\d+)?)\s*(?:kg)?\s*$/;

/** The two ends of a mass band such as "60-80" [kg]; nothing where it is not one. */
export function findMassBand(band: string): readonly [number, number] | undefined {
  const match = MASS_BAND.exec(band);
  if (match === null) return undefined;
  const [low, high] = [Number(match[1]), Number(match[2])];
  return low >= 10 && high <= 300 && low <= high ? [low, high] : undefined;
}

const bandNeed = 'two masses in kg from 10 to 300, lower first, such as "60-80"';

const pins = z.union(
  [
    list(id(), "kit ids"),
    record("kit ids by kind", {
      hammock: z.optional(id()),
      suspension: z.optional(id()),
      tarp: z.optional(id()),
      under: z.optional(id()),
      over: z.optional(id()),
    }),
  ],
  { error: 'kit ids by kind, such as {"hammock": "h-long"}, or a list of kit ids' },
);

export const sleeperSchema = record("a sleeper", {
  id: id(),
  name: text("a name"),
  mass_kg: z.optional(number(10, 300, "kg")),
  mass_band: z.optional(
    z.string({ error: bandNeed }).check(
      z.refine((band) => findMassBand(band) !== undefined, bandNeed),
      z.describe(bandNeed),
    ),
  ),
  stature_m: number(0.6, 2.5, "m"),
  age: z.optional(number(0, 120, "years")),
  sex: z.optional(choice("f", "m")),
  hand: z.optional(choice("left", "right")),
  reach_m: z.optional(number(0.5, 3.5, "m")),
  step_m: z.optional(number(0.2, 1.5, "m")),
  sleeps: z.optional(choice("cold", "usual", "warm")),
  hat: z.optional(flag()),
  group: z.optional(id()),
  leads: z.optional(flag()),
  beginner: z.optional(flag()),
  near: z.optional(list(id(), "sleeper ids")),
  apart: z.optional(list(id(), "sleeper ids")),
  kit: z.optional(pins),
});
