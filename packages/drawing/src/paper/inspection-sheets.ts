import type { Camp, KitItem, Plan, Tree } from "@nightspan/core";
import { listed } from "../card/card-words.ts";
import { name, quantity, word } from "../scene/names.ts";
import type { TextItem } from "../scene/text-item.ts";
import { factsText, namesById } from "./sheet-facts.ts";
import type { SheetRow, SheetTable } from "./table-sheet.ts";

/** Every tree that carries a berth or is kept for one: what to look at before anybody ties to it. */
export function treeInspectionTable(plan: Plan, camp: Camp): SheetTable | undefined {
  const users = new Map<string, string[]>();
  for (const { id, headTree, footTree } of [...plan.berths, ...(plan.spares ?? [])]) {
    for (const tree of [headTree, footTree]) users.set(tree, [...(users.get(tree) ?? []), id]);
  }
  if (users.size === 0) return undefined;
  return {
    name: "tree-inspection",
    title: word("trees.title"),
    facts: factsText(camp),
    wide: true,
    columns: [
      { title: word("trees.tag"), share: 30, strong: true },
      { title: word("trees.trunk"), share: 18 },
      { title: word("trees.berth"), share: 16 },
      { title: word("trees.known"), share: 32 },
      { title: word("trees.above"), share: 36, anchor: "middle" },
      { title: word("trees.stem"), share: 34, anchor: "middle" },
      { title: word("trees.roots"), share: 34, anchor: "middle" },
      { title: word("trees.moves"), share: 26, anchor: "middle" },
      { title: word("trees.use"), share: 13, anchor: "middle" },
      { title: word("sheet.who"), share: 28 },
      { title: word("sheet.when"), share: 18 },
    ],
    rows: [...users].map(([id, berths]): SheetRow => treeRow(id, berths, camp)),
    rowMm: 7.4,
    after: [word("trees.after"), word("sheet.first-word")],
  };
}

function treeRow(id: string, berths: readonly string[], camp: Camp): SheetRow {
  const tree = camp.ground?.trees.find((one) => one.id === id);
  const trunk = tree === undefined ? { said: "" } : quantity("diameter", tree.dbhM, 0);
  const tag = name(tree?.tag ?? id);
  const who: TextItem[] = tree?.species === undefined ? [tag] : [tag, name(tree.species)];
  return [
    listed(who),
    trunk,
    listed(berths.map(name)),
    knownText(tree, camp),
    "tick",
    "tick",
    "tick",
    "tick",
    "tick",
    "blank",
    "blank",
  ];
}

/** Who looked last and when, with what is known against the tree; else that nobody did. */
function knownText(tree: Tree | undefined, camp: Camp): TextItem {
  if (tree !== undefined && tree.condition !== "healthy" && tree.condition !== "not-looked-at")
    return word(`trees.${tree.condition}`);
  const look = tree?.lookedAt;
  if (look === undefined) return word("trees.nobody");
  const by = name(namesById(camp).get(look.by) ?? look.by);
  return word("straps.last-by", { day: { day: look.on, style: "short" }, by });
}

/** Every strap, sling and hammock of the store, piece by piece where they are numbered. */
export function strapInspectionTable(camp: Camp): SheetTable | undefined {
  const items = camp.kit.filter(
    ({ kind, state }) => (kind === "suspension" || kind === "hammock") && state !== "retired",
  );
  if (items.length === 0) return undefined;
  return {
    name: "strap-inspection",
    title: word("straps.title"),
    facts: factsText(camp),
    wide: true,
    columns: [
      { title: word("straps.item"), share: 40, strong: true },
      { title: word("straps.number"), share: 14 },
      { title: word("straps.last"), share: 40 },
      { title: word("straps.cuts"), share: 24, anchor: "middle" },
      { title: word("straps.seams"), share: 24, anchor: "middle" },
      { title: word("straps.fade"), share: 24, anchor: "middle" },
      { title: word("straps.metal"), share: 24, anchor: "middle" },
      { title: word("straps.pass"), share: 14, anchor: "middle" },
      { title: word("straps.quarantine"), share: 22, anchor: "middle" },
      { title: word("straps.retire"), share: 16, anchor: "middle" },
      { title: word("sheet.who"), share: 32 },
    ],
    rows: items.flatMap(pieceRows),
    rowMm: 7.2,
    after: [word("straps.after")],
  };
}

/** A row a piece: by its number where it has one, else one a count. */
function pieceRows(item: KitItem): SheetRow[] {
  const pieces: readonly (string | undefined)[] = Array.from(
    { length: Math.max(item.count, item.numbers?.length ?? 0) },
    (_, index) => item.numbers?.[index],
  );
  return pieces.map((number): SheetRow => [
    name(item.id),
    number === undefined ? "blank" : name(number),
    lastText(item, number),
    ...(["tick", "tick", "tick", "tick", "tick", "tick", "tick", "blank"] as const),
  ]);
}

function lastText({ inspections = [] }: KitItem, number: string | undefined): TextItem {
  const last = inspections.findLast((one) => one.number === undefined || one.number === number);
  if (last === undefined) return word("straps.never");
  const told = word("straps.last-by", { day: { day: last.on, style: "short" }, by: name(last.by) });
  return last.action === "pass" ? told : word(`straps.last-${last.action}`, { told });
}
