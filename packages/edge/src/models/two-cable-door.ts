import { degrees, succeed, twoCable } from "@nightspan/core";
import * as z from "zod/mini";
import { number } from "../format/fields.ts";
import { tidy } from "../format/tidy.ts";
import { inFileForm, read, type Door } from "./door.ts";

const aboveLevel = () => {
  const need = "an angle above level of more than 0 and at most 90 degrees";
  return z.number({ error: need }).check(z.gt(0, need), z.lte(90, need));
};

const schema = z.strictObject({
  load_n: number(1e-9, 1e12, "N"),
  left_deg: aboveLevel(),
  right_deg: aboveLevel(),
});

export const twoCableDoor: Door = {
  about: "pulls of two straight cables that share a load",
  run(input) {
    const asked = read(schema, input);
    if (!asked.ok) return asked;
    const { load_n: loadN, left_deg, right_deg } = asked.value;
    const found = twoCable({ loadN, left: degrees(left_deg), right: degrees(right_deg) });
    if (!found.ok) return { ok: false, refusals: inFileForm(found.refusals, ANGLES) };
    const { leftN, rightN, basis } = found.value;
    return succeed({ value: { left_n: tidy(leftN), right_n: tidy(rightN) }, basis });
  },
};

const ANGLES = { left: "left_deg", right: "right_deg" };
