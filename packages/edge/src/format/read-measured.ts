import { degrees, succeed, SYMPTOMS, type AsHung, type FoundOnTheSpot, type Outcome } from "@nightspan/core";
import * as z from "zod/mini";
import { choice, list, number, whole } from "./fields.ts";
import { parseJson } from "./json-text.ts";
import { present } from "./optional.ts";
import { schemaRefusals } from "./schema-refusals.ts";

const strap = () =>
  z.strictObject({
    strap_height_m: z.optional(number(0.1, 5, "m")),
    angle_deg: z.optional(number(-20, 85, "degrees")),
  });

const FOUND = {
  span_m: z.optional(number(0.5, 30, "m")),
  head: z.optional(strap()),
  foot: z.optional(strap()),
  ridgeline: z.optional(choice("slack", "bends", "tight")),
  seat_height_m: z.optional(number(-0.2, 3, "m")),
  foot_raise_m: z.optional(number(-1, 1, "m")),
  slides: z.optional(choice("to-foot", "to-head", "no")),
  knees: z.optional(choice("strained", "easy")),
  shoulders: z.optional(choice("squeezed", "easy")),
  sits: z.optional(choice("too-low", "too-high", "well")),
};

const foundSchema = z.strictObject(FOUND);

const MOVE = {
  end: choice("head", "foot"),
  action: choice("let-out", "take-in", "raise", "lower"),
};

const followedSchema = z.strictObject({
  ...MOVE,
  cm: whole(1, 300),
  measured: z.optional(foundSchema),
});

const measuredSchema = z.strictObject(
  {
    ...FOUND,
    symptom: z.optional(choice(...SYMPTOMS)),
    followed: z.optional(list(followedSchema, "steps followed", 0, 100)),
    cannot: z.optional(list(z.strictObject(MOVE), "moves that will not go", 0, 8)),
  },
  { error: "an object: what was found" },
);

/** What was found on the spot, or every reason at once why the file cannot be used. Metres and degrees only. */
export function readMeasured(text: string): Outcome<FoundOnTheSpot> {
  const parsed = parseJson(text);
  if (!parsed.ok) return parsed;
  const checked = measuredSchema.safeParse(parsed.value);
  if (!checked.success) return { ok: false, refusals: schemaRefusals(checked.error.issues, parsed.value) };
  const { symptom, followed = [], cannot, ...found } = checked.data;
  return succeed(
    present({
      measured: asHung(found),
      followed: followed.map(({ measured, ...one }) =>
        present({ ...one, measured: measured === undefined ? undefined : asHung(measured) }),
      ),
      symptom,
      cannot,
    }),
  );
}

type Found = z.infer<typeof foundSchema>;

function asHung(found: Found): AsHung {
  return present({
    spanM: found.span_m,
    head: strapInSi(found.head),
    foot: strapInSi(found.foot),
    ridgeline: found.ridgeline,
    seatHeightM: found.seat_height_m,
    footRaiseM: found.foot_raise_m,
    slides: found.slides,
    knees: found.knees,
    shoulders: found.shoulders,
    sits: found.sits,
  });
}

function strapInSi(found: Found["head"]): AsHung["head"] {
  if (found === undefined) return undefined;
  const { strap_height_m, angle_deg } = found;
  return present({
    strapHeightM: strap_height_m,
    angle: angle_deg === undefined ? undefined : degrees(angle_deg),
  });
}
