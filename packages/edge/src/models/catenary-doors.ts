import { catenary, elasticCatenary, succeed, type Catenary } from "@nightspan/core";
import * as z from "zod/mini";
import { tidy } from "../format/tidy.ts";
import { inFileForm, read, type Door } from "./door.ts";

const finite = () => z.number({ error: "a finite number" });
const cable = {
  span_m: finite(),
  length_m: finite(),
  rise_m: finite(),
  weight_n_per_m: finite(),
};
const rigidSchema = z.strictObject(cable);
const elasticSchema = z.strictObject({ ...cable, ea_n: finite() });

export const catenaryDoor: Door = {
  about: "a heavy cable between two points",
  run(input) {
    const asked = read(rigidSchema, input);
    if (!asked.ok) return asked;
    const found = catenary(inSi(asked.value));
    if (!found.ok) return { ok: false, refusals: inFileForm(found.refusals) };
    return succeed({ value: figures(found.value), basis: found.value.basis });
  },
};

export const elasticCatenaryDoor: Door = {
  about: "the same for a cable that stretches",
  run(input) {
    const asked = read(elasticSchema, input);
    if (!asked.ok) return asked;
    const found = elasticCatenary({ ...inSi(asked.value), eaN: asked.value.ea_n });
    if (!found.ok) return { ok: false, refusals: inFileForm(found.refusals) };
    const { stretchedM, basis } = found.value;
    return succeed({ value: { ...figures(found.value), stretched_m: tidy(stretchedM) }, basis });
  },
};

function inSi(asked: z.infer<typeof rigidSchema>) {
  return {
    spanM: asked.span_m,
    lengthM: asked.length_m,
    riseM: asked.rise_m,
    weightNPerM: asked.weight_n_per_m,
  };
}

function figures({ sagM, lowM, horizontalN, leftN, rightN }: Omit<Catenary, "basis">) {
  return {
    sag_m: tidy(sagM),
    low_m: tidy(lowM),
    horizontal_n: tidy(horizontalN),
    left_n: tidy(leftN),
    right_n: tidy(rightN),
  };
}
