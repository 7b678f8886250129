import { succeed, sun } from "@nightspan/core";
import * as z from "zod/mini";
import { number, text } from "../format/fields.ts";
import { inFileForm, read, type Door } from "./door.ts";

const schema = z.strictObject({
  lat_deg: number(-90, 90, "degrees"),
  lon_deg: number(-180, 180, "degrees"),
  date: text("a date like 2027-05-14", 10),
  elevation_m: number(-500, 9000, "m"),
});

export const sunDoor: Door = {
  about: "sunrise, sunset and dusk of a day",
  run(input) {
    const asked = read(schema, input);
    if (!asked.ok) return asked;
    const { lat_deg, lon_deg, date, elevation_m } = asked.value;
    const found = sun({ latDeg: lat_deg, lonDeg: lon_deg, date, elevationM: elevation_m });
    if (!found.ok) return { ok: false, refusals: inFileForm(found.refusals) };
    const { sunrise, sunset, dusk, basis } = found.value;
    return succeed({ value: { sunrise, sunset, dusk }, basis });
  },
};
