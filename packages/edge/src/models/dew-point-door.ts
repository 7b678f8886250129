import { dewPoint, succeed } from "@nightspan/core";
import * as z from "zod/mini";
import { number } from "../format/fields.ts";
import { kelvin } from "../format/kit-to-si.ts";
import { tidy } from "../format/tidy.ts";
import { inFileForm, read, type Door } from "./door.ts";

const humidity = () => {
  const need = "more than 0 and at most 1";
  return z.number({ error: need }).check(z.gt(0, need), z.lte(1, need));
};

const schema = z.strictObject({ air_c: number(-45, 60, "°C"), humidity: humidity() });

export const dewPointDoor: Door = {
  about: "the temperature at which air leaves dew",
  run(input) {
    const asked = read(schema, input);
    if (!asked.ok) return asked;
    const { air_c, humidity: humidityRatio } = asked.value;
    const found = dewPoint({ airK: kelvin(air_c), humidityRatio });
    if (!found.ok) return { ok: false, refusals: inFileForm(found.refusals, NAMES) };
    const { dewPointK, basis } = found.value;
    return succeed({ value: { dew_point_c: tidy(dewPointK - kelvin(0)) }, basis });
  },
};

const NAMES = { airK: "air_c", humidityRatio: "humidity" };
