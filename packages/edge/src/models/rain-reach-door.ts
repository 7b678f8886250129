import { rainReach, succeed } from "@nightspan/core";
import * as z from "zod/mini";
import { number } from "../format/fields.ts";
import { tidy } from "../format/tidy.ts";
import { inFileForm, read, type Door } from "./door.ts";

const rain = () => {
  const need = "more than 0 and at most 400 mm/h";
  return z.number({ error: need }).check(z.gt(0, need), z.lte(400, need));
};

const schema = z.strictObject({
  wind_m_s: number(0, 100, "m/s"),
  rain_mm_h: rain(),
  gap_m: number(0, 100, "m"),
});

export const rainReachDoor: Door = {
  about: "how far rain drifts in under an edge",
  run(input) {
    const asked = read(schema, input);
    if (!asked.ok) return asked;
    const { wind_m_s, rain_mm_h, gap_m } = asked.value;
    const found = rainReach({ windMS: wind_m_s, rainMmH: rain_mm_h, gapM: gap_m });
    if (!found.ok) return { ok: false, refusals: inFileForm(found.refusals, NAMES) };
    const { reachM, reachP05M, reachP95M, basis } = found.value;
    const value = { reach_m: tidy(reachM), reach_p05_m: tidy(reachP05M), reach_p95_m: tidy(reachP95M) };
    return succeed({ value, basis });
  },
};

const NAMES = { windMS: "wind_m_s", rainMmH: "rain_mm_h", gapM: "gap_m" };
