import type { Camp, PackingLine, Plan } from "@nightspan/core";
import { ENGLISH } from "@nightspan/drawing";
import { writeCsv } from "../import/write-csv.ts";
import { namesOf } from "../words/names.ts";

const PACKING = {
  who: "text",
  berth: "text",
  carrier: "text",
  what: "text",
  item: "text",
  numbers: "list",
  count: "number",
  packed: "text",
  returned: "text",
} as const;

/** What to pack and who carries it, with a column to tick when it is packed and one when it is back. No mass is in it. */
export function packingCsv({ packing }: Plan, camp: Camp): string | undefined {
  if (packing === undefined) return undefined;
  const names = namesOf(camp);
  const rows = [
    ...packing.sleepers.flatMap(({ sleeper, berth, lines }) =>
      lines.map((line) => row(line, names.sleeper(sleeper), berth)),
    ),
    ...packing.groups.flatMap(({ group, lines }) => lines.map((line) => row(line, group ?? "no group"))),
    ...packing.shared.map((line) => row(line, "everybody")),
  ];
  return writeCsv(PACKING, rows);
}

function row({ carrier, what, item, numbers, count }: PackingLine, who: string, berth?: string): object {
  return {
    who,
    berth,
    carrier,
    what: ENGLISH[`packed.${what}`],
    item,
    numbers,
    count,
    packed: "",
    returned: "",
  };
}

const RETURNS = {
  item: "text",
  number: "text",
  what: "text",
  who: "text",
  returned: "text",
  by: "text",
  on: "text",
  action: "text",
  finding: "text",
} as const;

/** Every piece that was dealt and who has it; its last columns are those of a list of inspections, to be filled in. */
export function returnsCsv({ dealing }: Plan, camp: Camp): string | undefined {
  if (dealing === undefined) return undefined;
  const names = namesOf(camp);
  const blank = { returned: "", by: "", on: "", action: "", finding: "" };
  const rows = dealing.dealt.flatMap(({ sleeper, items }) =>
    items.map(({ kind, item, number }) => {
      return { item, number, what: ENGLISH[`packed.${kind}`], who: names.sleeper(sleeper), ...blank };
    }),
  );
  return writeCsv(RETURNS, rows);
}

const CUTS = {
  material: "text",
  width_mm: "number",
  purpose: "text",
  length_m: "number",
  of_it_for_knots_m: "number",
  count: "number",
  berths: "list",
} as const;

/** What is to be cut, a line for each length. */
export function cutsCsv({ cuts }: Plan): string | undefined {
  const pieces = (cuts?.materials ?? []).flatMap((material) => material.pieces);
  if (pieces.length === 0) return undefined;
  const rows = pieces.map(({ material, widthM, purpose, lengthM, allowanceM, count, berths }) => ({
    material: ENGLISH[`cuts.${material}`],
    width_mm: widthM === undefined ? undefined : hundredths(widthM * 1000),
    purpose: ENGLISH[`cut-sheet.${purpose}`],
    length_m: hundredths(lengthM),
    of_it_for_knots_m: hundredths(allowanceM),
    count,
    berths,
  }));
  return writeCsv(CUTS, rows);
}

const SPOOLS = {
  material: "text",
  spool: "text",
  spool_m: "number",
  spools: "number",
  cuts: "list",
  left_m: "number",
} as const;

/** From which spool each length is cut, a line for each way of cutting one. */
export function spoolsCsv({ cuts }: Plan): string | undefined {
  const rows = (cuts?.materials ?? []).flatMap(({ material, patterns }) =>
    patterns.map(({ item, stockM, times, cuts: lengths, restM }) => ({
      material: ENGLISH[`cuts.${material}`],
      spool: item ?? ENGLISH["cuts.to-buy"],
      spool_m: hundredths(stockM),
      spools: times,
      cuts: lengths.map(({ lengthM, count }) => `${count} × ${hundredths(lengthM)}`),
      left_m: hundredths(restM),
    })),
  );
  return rows.length === 0 ? undefined : writeCsv(SPOOLS, rows);
}

function hundredths(value: number): number {
  return Math.round(value * 100) / 100;
}
