import { findWood, succeed, trunk } from "@nightspan/core";
import * as z from "zod/mini";
import { number } from "../format/fields.ts";
import { tidy } from "../format/tidy.ts";
import { inFileForm, read, type Door } from "./door.ts";

const speciesNeed = "a listed species, by scientific or English name";

const schema = z.strictObject({
  species: z
    .string({ error: speciesNeed })
    .check(z.refine((species) => findWood(species) !== undefined, speciesNeed)),
  dbh_cm: number(1, 500, "cm"),
  pull_n: number(0, 1e6, "N"),
  height_m: number(0, 10, "m"),
  strap_width_mm: number(1, 1_000, "mm"),
});

/** It only ever speaks against a tree: roots, decay and lean are not known to it. */
export const trunkDoor: Door = {
  about: "how far a pull bends a trunk and presses its bark",
  run(input) {
    const asked = read(schema, input);
    if (!asked.ok) return asked;
    const { species, dbh_cm, pull_n: pullN, height_m: heightM, strap_width_mm } = asked.value;
    const found = trunk({ species, dbhM: dbh_cm / 100, pullN, heightM, strapWidthM: strap_width_mm / 1000 });
    if (!found.ok) return { ok: false, refusals: inFileForm(found.refusals, FIELDS) };
    const { bendingPa, strengthPa, useRatio, barkPa, barkPeakPa, basis } = found.value;
    return succeed({
      value: {
        bending_mpa: tidy(bendingPa / 1e6),
        strength_mpa: tidy(strengthPa / 1e6),
        use_ratio: tidy(useRatio),
        bark_kpa: tidy(barkPa / 1e3),
        bark_peak_kpa: tidy(barkPeakPa / 1e3),
      },
      basis,
    });
  },
};

const FIELDS = { dbhM: "dbh_cm", strapWidthM: "strap_width_mm" };
