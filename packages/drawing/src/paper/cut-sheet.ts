import type { Camp, CutPiece, Plan } from "@nightspan/core";
import { listed } from "../card/card-words.ts";
import { name, quantity, word } from "../scene/names.ts";
import { materialText } from "../store/cut-list-scene.ts";
import { factsText } from "./sheet-facts.ts";
import type { SheetRow, SheetTable } from "./table-sheet.ts";

/** Every length to cut, by material, with what of it knots and tails take up and whose it is. */
export function cutTable({ cuts }: Plan, camp: Camp): SheetTable | undefined {
  if (cuts === undefined || cuts.materials.length === 0) return undefined;
  return {
    name: "cord-cut-list",
    title: word("cut-sheet.title"),
    facts: factsText(camp),
    columns: [
      { title: word("cut-sheet.purpose"), share: 44 },
      { title: word("cut-sheet.length"), share: 24, anchor: "end", strong: true },
      { title: word("cut-sheet.count"), share: 16, anchor: "end", strong: true },
      { title: word("cut-sheet.allowance"), share: 32, anchor: "end" },
      { title: word("cut-sheet.berths"), share: 52 },
      { title: word("cut-sheet.cut"), share: 14, anchor: "middle" },
    ],
    rows: cuts.materials.flatMap((material): SheetRow[] => [
      { heading: materialText(material) },
      ...material.pieces.map(pieceRow),
    ]),
    rowMm: 6.8,
    after: [word("cut-sheet.after")],
  };
}

function pieceRow({ purpose, lengthM, count, allowanceM, berths }: CutPiece): SheetRow {
  return [
    word(`cut-sheet.${purpose}`),
    quantity("length", lengthM, 2),
    quantity("count", count, 0),
    quantity("length", allowanceM, 2),
    listed([...new Set(berths)].map(name)),
    "tick",
  ];
}
