import type { Camp, PackingLine, Plan } from "@nightspan/core";
import { listed } from "../card/card-words.ts";
import { name, quantity, word } from "../scene/names.ts";
import type { TextItem } from "../scene/text-item.ts";
import { berthsBySleeper, factsText, namesById } from "./sheet-facts.ts";
import type { SheetRow, SheetTable } from "./table-sheet.ts";

/** What each carries and what goes with the group, to be ticked off when packed and when it comes back. */
export function kitListTable(plan: Plan, camp: Camp): SheetTable | undefined {
  const { packing } = plan;
  if (packing === undefined) return undefined;
  const names = namesById(camp);
  const berths = berthsBySleeper(plan);
  const byBerth = [...packing.sleepers].sort(
    (a, b) => placeOf(berths.get(a.sleeper)) - placeOf(berths.get(b.sleeper)),
  );
  const people = byBerth.flatMap(({ sleeper, lines }): SheetRow[] => {
    const berth = berths.get(sleeper);
    const said = name(names.get(sleeper) ?? sleeper);
    const heading =
      berth === undefined
        ? word("sheet.no-berth", { name: said })
        : word("sheet.berth-of", { berth: name(berth), name: said });
    return [{ heading }, ...lines.map(lineRow)];
  });
  const groups = packing.groups.flatMap(({ group, lines }): SheetRow[] => {
    if (lines.length === 0) return [];
    const heading =
      group === undefined
        ? word("kit-list.all")
        : word("kit-list.group", { group: word("sheet.group", { group: name(group) }) });
    return [{ heading }, ...lines.map(lineRow)];
  });
  const shared: SheetRow[] =
    packing.shared.length === 0 ? [] : [{ heading: word("kit-list.all") }, ...packing.shared.map(lineRow)];
  return {
    name: "kit-list",
    title: word("kit-list.title"),
    facts: factsText(camp),
    columns: [
      { title: word("kit-list.what"), share: 46, strong: true },
      { title: word("kit-list.item"), share: 40 },
      { title: word("kit-list.numbers"), share: 20 },
      { title: word("kit-list.count"), share: 14, anchor: "end" },
      { title: word("kit-list.packed"), share: 18, anchor: "middle" },
      { title: word("kit-list.returned"), share: 20, anchor: "middle" },
      { title: word("sheet.notes"), share: 34 },
    ],
    rows: [...people, ...groups, ...shared],
    rowMm: 6.4,
    after: [word("kit-list.after")],
  };
}

/** As the cards lie: by the berths' numbers, whoever has none last. */
function placeOf(berth: string | undefined): number {
  return berth === undefined ? Infinity : Number(berth) || 0;
}

/** Lengths that the cut list has. */
const CUT: readonly string[] = [
  "strap-webbing",
  "ridgeline",
  "tarp-ridgeline",
  "guy-line",
  "hitch-loop",
  "drip-line",
];

function lineRow({ what, item, numbers = [], count, carrier }: PackingLine): SheetRow {
  const thing: TextItem = word(`packed.${what}`);
  return [
    carrier === "spare" ? word("kit-list.spare", { what: thing }) : thing,
    item === undefined ? (CUT.includes(what) ? word("kit-list.cut") : { said: "" }) : name(item),
    numbers.length === 0 ? "blank" : listed(numbers.map(name)),
    quantity("count", count, 0),
    "tick",
    "tick",
    "blank",
  ];
}
