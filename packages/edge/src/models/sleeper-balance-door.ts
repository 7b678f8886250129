import { sleeperBalance, succeed, type SleeperBalanceInput } from "@nightspan/core";
import * as z from "zod/mini";
import { choice, number } from "../format/fields.ts";
import { kelvin } from "../format/kit-to-si.ts";
import { tidy } from "../format/tidy.ts";
import { inFileForm, read, type Door } from "./door.ts";

const air = () => number(-60, 30, "°C");
const insulation = () => number(0, 5, "m²K/W");
/** Litres through a square metre in a second. */
const permeability = () => z.optional(number(0, 10_000, "l/m²s"));

const schema = z.strictObject({
  night: z.strictObject({
    air_c: air(),
    wind_m_s: number(0, 30, "m/s"),
    humidity: z.optional(number(0, 1)),
    radiant_c: z.optional(number(-80, 30, "°C")),
  }),
  top: z.strictObject({ r_m2k_w: insulation(), permeability: permeability() }),
  bottom: z.strictObject({
    r_m2k_w: insulation(),
    covered: z.optional(number(0, 1)),
    permeability: permeability(),
  }),
  top_share: z.optional(number(0, 1)),
  person: z.optional(
    z.strictObject({
      mass_kg: number(20, 300, "kg"),
      stature_m: number(1, 2.5, "m"),
      age: number(16, 110, "years: no balance is valid for children"),
      sex: choice("f", "m"),
      sleeps: z.optional(choice("cold", "usual", "warm")),
    }),
  ),
});

export const sleeperBalanceDoor: Door = {
  about: "how cold it may be for a sleeper between two layers, and which half lets the heat out",
  run(input) {
    const asked = read(schema, input);
    if (!asked.ok) return asked;
    const found = sleeperBalance(inputOf(asked.value));
    if (!found.ok) return { ok: false, refusals: inFileForm(found.refusals) };
    const { comfortK, limitK, topWM2, bottomWM2, totalM2KPerW, bandK, residualWM2, basis } = found.value;
    return succeed({
      value: {
        comfort_c: tidy(comfortK - kelvin(0)),
        limit_c: tidy(limitK - kelvin(0)),
        top_w_m2: tidy(topWM2),
        bottom_w_m2: tidy(bottomWM2),
        rc_m2k_w: tidy(totalM2KPerW),
        band_k: tidy(bandK),
        residual_w_m2: tidy(residualWM2),
      },
      basis,
    });
  },
};

type Asked = z.infer<typeof schema>;

function inputOf({ night, top, bottom, top_share, person }: Asked): SleeperBalanceInput {
  return {
    night: {
      airK: kelvin(night.air_c),
      windMS: night.wind_m_s,
      humidityRatio: night.humidity ?? 0.5,
      radiantK: kelvin(night.radiant_c ?? night.air_c),
    },
    top: halfOf(top),
    bottom: { ...halfOf(bottom), coveredRatio: bottom.covered ?? 1 },
    topShareRatio: top_share ?? 0.7,
    ...(person === undefined ? {} : { person: personOf(person) }),
  };
}

function halfOf({ r_m2k_w, permeability: litres }: Asked["top"]): SleeperBalanceInput["top"] {
  return { insulationM2KPerW: r_m2k_w, permeabilityMS: (litres ?? WINDPROOF_L_M2S) / 1000 };
}

function personOf(person: NonNullable<Asked["person"]>): NonNullable<SleeperBalanceInput["person"]> {
  const { mass_kg: massKg, stature_m: statureM, age: ageYears, sex, sleeps = "usual" } = person;
  return { massKg, statureM, ageYears, sex, sleeps };
}

/** The cloth of most bags, where nobody says. Source: iso-11079. */
const WINDPROOF_L_M2S = 8;
