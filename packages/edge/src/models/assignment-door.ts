import { assignment, succeed } from "@nightspan/core";
import * as z from "zod/mini";
import { list, number } from "../format/fields.ts";
import { inFileForm, read, type Door } from "./door.ts";

const schema = z.strictObject({
  cost: list(list(z.nullable(number(-1e12, 1e12)), "costs", 0, 2_000), "rows", 0, 2_000),
});

/** Who gets what, one each: most pairs, then the least total. */
export const assignmentDoor: Door = {
  about: "rows and columns in pairs: the most, then for the least total",
  run(input) {
    const asked = read(schema, input);
    if (!asked.ok) return asked;
    const found = assignment(asked.value);
    if (!found.ok) return { ok: false, refusals: inFileForm(found.refusals) };
    const { total, pairs, unmatched, basis } = found.value;
    return succeed({
      value: { total, pairs, unmatched: { rows: unmatched.rows, cols: unmatched.columns } },
      basis,
    });
  },
};
