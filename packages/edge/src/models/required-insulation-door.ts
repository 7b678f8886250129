import { CLO_M2K_PER_W, requiredInsulation, succeed } from "@nightspan/core";
import * as z from "zod/mini";
import { number } from "../format/fields.ts";
import { kelvin } from "../format/kit-to-si.ts";
import { tidy } from "../format/tidy.ts";
import { inFileForm, read, type Door } from "./door.ts";

const schema = z.strictObject({
  metabolic_w_m2: number(20, 500, "W/m²"),
  skin_c: number(15, 40, "°C"),
  air_c: number(-60, 40, "°C"),
  humidity: number(0, 1),
  wetness: number(0, 1),
});

export const requiredInsulationDoor: Door = {
  about: "the insulation, skin to air, that keeps a body in balance",
  run(input) {
    const asked = read(schema, input);
    if (!asked.ok) return asked;
    const { metabolic_w_m2: metabolicWM2, skin_c, air_c, humidity, wetness } = asked.value;
    const found = requiredInsulation({
      metabolicWM2,
      skinK: kelvin(skin_c),
      airK: kelvin(air_c),
      humidityRatio: humidity,
      wetnessRatio: wetness,
    });
    if (!found.ok) return { ok: false, refusals: inFileForm(found.refusals, FIELDS) };
    const { totalM2KPerW, breathWM2, sweatWM2, dryWM2, basis } = found.value;
    return succeed({
      value: {
        rc_m2k_w: tidy(totalM2KPerW),
        clo: tidy(totalM2KPerW / CLO_M2K_PER_W),
        breath_w_m2: tidy(breathWM2),
        sweat_w_m2: tidy(sweatWM2),
        dry_w_m2: tidy(dryWM2),
      },
      basis,
    });
  },
};

const FIELDS = { airK: "air_c" };
