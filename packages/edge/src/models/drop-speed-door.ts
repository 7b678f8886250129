import { dropSpeed, succeed } from "@nightspan/core";
import * as z from "zod/mini";
import { number } from "../format/fields.ts";
import { tidy } from "../format/tidy.ts";
import { inFileForm, read, type Door } from "./door.ts";

const schema = z.strictObject({ diameter_mm: number(0.1, 6.5, "mm") });

export const dropSpeedDoor: Door = {
  about: "how fast a rain drop falls",
  run(input) {
    const asked = read(schema, input);
    if (!asked.ok) return asked;
    const found = dropSpeed({ diameterM: asked.value.diameter_mm / 1000 });
    if (!found.ok) return { ok: false, refusals: inFileForm(found.refusals, { diameterM: "diameter_mm" }) };
    return succeed({ value: { speed_m_s: tidy(found.value.speedMS) }, basis: found.value.basis });
  },
};
