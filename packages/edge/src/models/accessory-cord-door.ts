import { accessoryCord, succeed } from "@nightspan/core";
import * as z from "zod/mini";
import { number } from "../format/fields.ts";
import { tidy } from "../format/tidy.ts";
import { inFileForm, read, type Door } from "./door.ts";

const MM = 1e-3;

const schema = z.strictObject({ diameter_mm: number(4, 8, "mm") });

export const accessoryCordDoor: Door = {
  about: "least breaking strength of accessory cord by its diameter",
  run(input) {
    const asked = read(schema, input);
    if (!asked.ok) return asked;
    const found = accessoryCord({ diameterM: asked.value.diameter_mm * MM });
    if (!found.ok) return { ok: false, refusals: inFileForm(found.refusals, { diameterM: "diameter_mm" }) };
    const { breakingN, basis } = found.value;
    return succeed({ value: { breaking_n: tidy(breakingN) }, basis });
  },
};
