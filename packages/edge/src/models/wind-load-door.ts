import { degrees, succeed, windLoad } from "@nightspan/core";
import * as z from "zod/mini";
import { choice, number } from "../format/fields.ts";
import { tidy } from "../format/tidy.ts";
import { inFileForm, read, type Door } from "./door.ts";

const schema = z.strictObject({
  wind_m_s: number(0, 100, "m/s"),
  area_m2: number(0, 1000, "m²"),
  pitch_deg: number(-20, 30, "degrees"),
  blockage: number(0, 1),
  roof: z.optional(choice("mono", "duo")),
});

export const windLoadDoor: Door = {
  about: "wind on an open roof",
  run(input) {
    const asked = read(schema, input);
    if (!asked.ok) return asked;
    const { wind_m_s, area_m2, pitch_deg, blockage, roof = "mono" } = asked.value;
    const found = windLoad({
      windMS: wind_m_s,
      areaM2: area_m2,
      pitch: degrees(pitch_deg),
      blockageRatio: blockage,
      roof,
    });
    if (!found.ok) return { ok: false, refusals: inFileForm(found.refusals, NAMES) };
    const { pressurePa, downN, upN, basis } = found.value;
    return succeed({
      value: { pressure_pa: tidy(pressurePa), down_n: tidy(downN), up_n: tidy(upN) },
      basis,
    });
  },
};

const NAMES = { windMS: "wind_m_s", areaM2: "area_m2", pitch: "pitch_deg", blockageRatio: "blockage" };
