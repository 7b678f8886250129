import type { Camp, Plan } from "@nightspan/core";
import { listed } from "../card/card-words.ts";
import { name, quantity, word } from "../scene/names.ts";
import type { TextItem } from "../scene/text-item.ts";
import { factsText } from "./sheet-facts.ts";
import type { SheetRow, SheetTable } from "./table-sheet.ts";

/**
 * A risk assessment to be finished by whoever answers for the night: hazards and what this plan already does about them
 * are filled in; every rating, what is still to be done and what has changed are left to write.
 */
export function riskTable(plan: Plan, camp: Camp): SheetTable {
  const rows = HAZARDS.map(({ hazard, who, control }): SheetRow => [
    word(`risk.h.${hazard}`),
    word(`risk.${who}`),
    control(plan, camp),
    "blank",
    "blank",
    "blank",
    "blank",
    "blank",
  ]);
  return {
    name: "risk-assessment",
    title: word("risk.title"),
    facts: factsText(camp),
    wide: true,
    columns: [
      { title: word("risk.hazard"), share: 58, strong: true },
      { title: word("risk.who"), share: 30 },
      { title: word("risk.controls"), share: 116 },
      { title: word("risk.before"), share: 17 },
      { title: word("risk.more"), share: 38 },
      { title: word("risk.by"), share: 24 },
      { title: word("risk.after"), share: 17 },
      { title: word("risk.changed"), share: 50 },
    ],
    rows,
    rowMm: 6.8,
    after: [word("risk.after-note")],
    toFill: [
      word("risk.fill-assessed"),
      word("risk.fill-agreed"),
      word("risk.fill-stops"),
      word("risk.fill-aider"),
      word("risk.fill-hospital"),
      word("risk.fill-kit"),
    ],
  };
}

type Hazard =
  | "limb"
  | "anchor"
  | "part"
  | "entry"
  | "tangle"
  | "thunder"
  | "wind"
  | "cold"
  | "wet"
  | "fire"
  | "trip"
  | "water"
  | "bites"
  | "alone";

interface Risk {
  readonly hazard: Hazard;
  readonly who: "all" | "others" | "young";
  readonly control: (plan: Plan, camp: Camp) => TextItem;
}

const count = (value: number): TextItem => quantity("count", value, 0);

const HAZARDS: readonly Risk[] = [
  {
    hazard: "limb",
    who: "others",
    control: limbControl,
  },
  {
    hazard: "anchor",
    who: "all",
    control: (_, { rules }) =>
      word("risk.c.anchor", {
        trunk: quantity("diameter", rules.trunkMinM.value, 0),
        count: count(rules.hammocksPerTree.value),
        strap: quantity("width", rules.strapWidthMinM.value, 0),
      }),
  },
  { hazard: "part", who: "all", control: () => word("risk.c.part") },
  {
    hazard: "entry",
    who: "all",
    control: ({ berths }) =>
      word("risk.c.entry", {
        low: quantity("short-length", Math.max(0, ...berths.map(({ hang }) => hang.lowPointM)), 0),
      }),
  },
  { hazard: "tangle", who: "young", control: () => word("risk.c.tangle") },
  { hazard: "thunder", who: "all", control: () => word("risk.c.thunder") },
  {
    hazard: "wind",
    who: "all",
    control: (_, { night }) =>
      night?.stopGustMS === undefined
        ? word("risk.c.wind-blank")
        : word("risk.c.wind", { speed: quantity("speed", night.stopGustMS, 0) }),
  },
  { hazard: "cold", who: "all", control: coldControl },
  {
    hazard: "wet",
    who: "all",
    control: ({ berths }) =>
      word("risk.c.wet", {
        count: count(berths.filter(({ tarp }) => tarp !== undefined).length),
        of: count(berths.length),
      }),
  },
  { hazard: "fire", who: "all", control: fireControl },
  { hazard: "trip", who: "others", control: () => word("risk.c.trip") },
  { hazard: "water", who: "all", control: () => word("risk.c.water") },
  { hazard: "bites", who: "all", control: () => word("risk.c.bites") },
  { hazard: "alone", who: "all", control: () => word("risk.c.alone") },
];

/** What the map says of what may fall; berths that are near it are named. */
function limbControl({ treesLookedAt: { done, of }, berths }: Plan, { ground }: Camp): TextItem {
  const looked = { done: count(done), of: count(of) };
  if ((ground?.trees.length ?? 0) === 0) return word("risk.c.limb-unmapped", looked);
  const near = berths.filter(({ findings }) =>
    findings.some(({ rule, verdict }) => verdict !== "clear" && FALLS.includes(rule)),
  );
  if (near.length === 0) return word("risk.c.limb", looked);
  return word("risk.c.limb-near", { ...looked, berths: listed(near.map(({ id }) => name(id))) });
}

const FALLS: readonly string[] = ["site.dead-tree-reach", "site.overhead-reach", "tree.height-estimated"];

function coldControl({ berths }: Plan): TextItem {
  const known = berths.flatMap(({ warmth }) => (warmth === undefined ? [] : [warmth]));
  if (known.length === 0) return word("risk.c.cold-unknown");
  return word("risk.c.cold", {
    under: count(known.filter(({ under }) => under.enough === "enough").length),
    over: count(known.filter(({ over }) => over.enough === "enough").length),
    of: count(berths.length),
  });
}

function fireControl(_: Plan, { ground }: Camp): TextItem {
  const fire = ground?.obstacles.find(({ kind }) => kind === "fire");
  if (fire === undefined) return word("risk.c.fire-none");
  return word("risk.c.fire", { setback: quantity("length", fire.setbackM, 1) });
}
