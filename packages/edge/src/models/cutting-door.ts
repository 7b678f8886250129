import { cutting, succeed, type CuttingPattern } from "@nightspan/core";
import * as z from "zod/mini";
import { list, whole } from "../format/fields.ts";
import { present } from "../format/optional.ts";
import { inFileForm, read, type Door } from "./door.ts";

const length = () => whole(1, 100_000_000);
const count = () => whole(0, 1_000_000);

const schema = z.strictObject({
  stock: list(z.strictObject({ length_mm: length(), count: z.optional(count()) }), "stock lengths", 1, 100),
  pieces: list(z.strictObject({ length_mm: length(), count: count() }), "pieces", 0, 1_000),
  kerf_mm: whole(0, 1_000_000),
});

/** Pieces from spools, with the fewest begun and the proof of it. */
export const cuttingDoor: Door = {
  about: "pieces cut from stock lengths with the least stock begun",
  run(input) {
    const asked = read(schema, input);
    if (!asked.ok) return asked;
    const { stock, pieces, kerf_mm } = asked.value;
    const found = cutting({
      stock: stock.map((line) => present({ lengthMm: line.length_mm, count: line.count })),
      pieces: pieces.map((line) => ({ lengthMm: line.length_mm, count: line.count })),
      kerfMm: kerf_mm,
    });
    if (!found.ok) return { ok: false, refusals: inFileForm(found.refusals) };
    const { stocksUsed, objective, bound, proven, patterns, basis } = found.value;
    return succeed({
      value: { stocks_used: stocksUsed, objective, bound, proven, patterns: patterns.map(patternInFile) },
      basis,
    });
  },
};

function patternInFile({ stockMm, times, cuts }: CuttingPattern) {
  return {
    stock_mm: stockMm,
    times,
    cuts: cuts.map((cut) => ({ length_mm: cut.lengthMm, count: cut.count })),
  };
}
