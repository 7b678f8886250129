import type { Camp, Plan, PlannedBerth, Sleeper } from "@nightspan/core";
import { name, quantity, word } from "../scene/names.ts";
import type { TextItem } from "../scene/text-item.ts";
import { berthsBySleeper, factsText, namesById, tagsById } from "./sheet-facts.ts";
import type { SheetRow, SheetTable } from "./table-sheet.ts";

/** Who lies where, whose buddy, which leader is nearest, and what was set; no ages. */
export function sleepingPlanTable(plan: Plan, camp: Camp): SheetTable | undefined {
  if (plan.berths.length === 0) return undefined;
  const list: List = {
    plan,
    camp,
    people: new Map(camp.sleepers.map((one) => [one.id, one])),
    pair: pairsOf(camp),
  };
  return {
    name: "sleeping-plan",
    title: word("sleeping.title"),
    facts: factsText(camp),
    wide: true,
    columns: [
      { title: word("sleeping.no"), share: 12, strong: true },
      { title: word("sleeping.name"), share: 48, strong: true },
      { title: word("sleeping.group"), share: 26 },
      { title: word("sleeping.trees"), share: 34 },
      { title: word("sleeping.where"), share: 40 },
      { title: word("sleeping.buddy"), share: 42 },
      { title: word("sleeping.leader"), share: 42 },
      { title: word("sleeping.head-set"), share: 24 },
      { title: word("sleeping.angle-set"), share: 24 },
      { title: word("sleeping.in"), share: 16, anchor: "middle" },
    ],
    rows: [...lyingRows(list), ...groundRows(list), ...spareRows(list)],
    rowMm: 8.2,
    after: [...groundKept(plan), word("sheet.look")],
  };
}

interface List {
  readonly plan: Plan;
  readonly camp: Camp;
  readonly people: ReadonlyMap<string, Sleeper>;
  /** Two trees by their tags. */
  readonly pair: (head: string, foot: string) => TextItem;
}

function pairsOf(camp: Camp): List["pair"] {
  const tags = tagsById(camp);
  const tag = (id: string): TextItem => name(tags.get(id) ?? id);
  return (head, foot) => word("leaders.tags", { head: tag(head), foot: tag(foot) });
}

const EMPTY: TextItem = { said: "" };

function groupText(sleeper: Sleeper | undefined): TextItem {
  return sleeper?.group === undefined ? EMPTY : name(sleeper.group);
}

function lyingRows({ plan, camp, people, pair }: List): SheetRow[] {
  return plan.berths.map((berth) => {
    const sleeper = people.get(berth.sleeper);
    const trees = pair(berth.headTree, berth.footTree);
    return [
      name(berth.id),
      name(sleeper?.name ?? berth.sleeper),
      groupText(sleeper),
      berth.verdict === "do-not-hang" ? word("sleeping.refused", { trees }) : trees,
      wayText(berth, sleeper, camp),
      buddyText(berth, plan, camp),
      leaderText(berth, plan, camp),
      "blank",
      "blank",
      "tick",
    ];
  });
}

/** Who has no berth, and where they lie instead. */
function groundRows({ plan, camp, people }: List): SheetRow[] {
  const where = camp.ground?.fallback?.note;
  return plan.unplaced.map(({ sleeper }) => {
    const person = people.get(sleeper);
    const place = where === undefined ? EMPTY : name(where);
    const before = [
      EMPTY,
      name(person?.name ?? sleeper),
      groupText(person),
      word("sleeping.on-the-ground"),
      place,
    ];
    return [...before, EMPTY, EMPTY, EMPTY, EMPTY, "tick"];
  });
}

function spareRows({ plan, pair }: List): SheetRow[] {
  return (plan.spares ?? []).map(({ id, headTree, footTree }) => {
    const before = [name(id), word("sleeping.spare"), EMPTY, pair(headTree, footTree)];
    return [...before, EMPTY, EMPTY, EMPTY, "blank", "blank", EMPTY];
  });
}

/** Places for whoever does not stay in a hammock. */
function groundKept({ dealing }: Plan): TextItem[] {
  const places = dealing?.groundPlaces ?? 0;
  return places === 0 ? [] : [word("sheet.ground-kept", { places: quantity("count", places, 0) })];
}

/** In the sleeper's own steps, where both places are known. */
function wayText(berth: PlannedBerth, sleeper: Sleeper | undefined, camp: Camp): TextItem {
  const from = camp.ground?.meetingPoint?.at;
  const head = camp.ground?.trees.find(({ id }) => id === berth.headTree);
  if (from === undefined || head === undefined || sleeper === undefined) return { said: "" };
  const [east, north] = [head.xM - from[0], head.yM - from[1]];
  return word("sleeping.steps", {
    steps: quantity("steps", Math.round(Math.hypot(east, north) / sleeper.stepM), 0),
    bearing: quantity("bearing", (Math.atan2(east, north) + 2 * Math.PI) % (2 * Math.PI), 0),
  });
}

function buddyText({ buddy }: PlannedBerth, plan: Plan, camp: Camp): TextItem {
  if (buddy === undefined) return { said: "" };
  const berth = berthsBySleeper(plan).get(buddy.sleeper);
  const who = name(namesById(camp).get(buddy.sleeper) ?? buddy.sleeper);
  return berth === undefined ? who : word("sleeping.berth-name", { berth: name(berth), name: who });
}

/** The leader whose berth is nearest; who leads needs none. */
function leaderText(berth: PlannedBerth, plan: Plan, camp: Camp): TextItem {
  const leads = new Set(camp.sleepers.filter((one) => one.leads).map(({ id }) => id));
  if (leads.has(berth.sleeper)) return word("sleeping.leads");
  const here = middleOf(berth, camp);
  const near = plan.berths
    .filter(({ sleeper }) => leads.has(sleeper))
    .map((other) => ({ other, far: apart(here, middleOf(other, camp)) }))
    .sort((a, b) => a.far - b.far)[0]?.other;
  if (near === undefined) return { said: "" };
  const who = name(namesById(camp).get(near.sleeper) ?? near.sleeper);
  return word("sleeping.berth-name", { berth: name(near.id), name: who });
}

type Place = readonly [number, number] | undefined;

function middleOf({ headTree, footTree }: PlannedBerth, { ground }: Camp): Place {
  const [a, b] = [headTree, footTree].map((id) => ground?.trees.find((tree) => tree.id === id));
  return a === undefined || b === undefined ? undefined : [(a.xM + b.xM) / 2, (a.yM + b.yM) / 2];
}

/** 0 where either place is not known: then the first leader is told. */
function apart(a: Place, b: Place): number {
  return a === undefined || b === undefined ? 0 : Math.hypot(a[0] - b[0], a[1] - b[1]);
}
