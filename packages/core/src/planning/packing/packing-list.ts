import type { Camp, Sleeper } from "../../plan/camp.ts";
import type { KitItem, OtherKit } from "../../plan/kit.ts";
import type {
  CutList,
  CutPurpose,
  Dealing,
  GroupPacking,
  PackedThing,
  PackingLine,
  PackingList,
  SleeperDeal,
  SleeperPacking,
} from "../../plan/store-types.ts";
import { piecesInUse } from "../store/pieces-in-use.ts";

export interface PackingInput {
  readonly camp: Pick<Camp, "sleepers" | "groups" | "kit">;
  readonly dealing: Dealing;
  readonly cuts: CutList;
  /** By sleeper, the id of the berth. */
  readonly berthOf: ReadonlyMap<string, string>;
}

/**
 * What to pack, by who carries it: what is one's own in the night, what belongs to one's berth, what a group carries between its
 * members, and what is put by as a spare.
 *
 * Own: under and over, a light. Berth: hammock, suspension, tarp, and the lines cut for it. Group: pegs and connectors by head.
 * Spare: under layers put by. Each line is ticked off when packed and when it came back.
 *
 * Shapes   a camp as it was dealt → lines by sleeper, by group, shared
 * Units    [kg]; the share of body mass is for one bar on the planner's own screen and nowhere else
 * Holds    any dealing; masses that nobody knows are counted in `unweighed`
 * Error    sums of the masses stated; cords are not weighed
 * Source   common-practice (handbook/kit.md)
 */
export function packingList(input: PackingInput): PackingList {
  const { camp, dealing } = input;
  const sleepers = camp.sleepers.map((sleeper) => sleeperPacking(input, sleeper));
  const names = [...new Set(camp.sleepers.map(({ group }) => group))];
  const groups = names.map((group) => groupPacking(input, group));
  const spares = dealing.spareUnder.map(({ item, count }) => {
    const line = camp.kit.find(({ id }) => id === item);
    return packed({ carrier: "spare", what: "under", count }, line);
  });
  return { sleepers, groups, shared: [...spares, ...leftOver(camp.kit, groups)] };
}

/** What does not come out even between the groups. */
function leftOver(kit: readonly KitItem[], groups: readonly GroupPacking[]): PackingLine[] {
  const shared = groups.flatMap(({ lines }) => lines);
  return kit.flatMap((item): PackingLine[] => {
    if (!isShared(item) || groups.length === 0) return [];
    const out = shared.reduce((sum, line) => sum + (line.item === item.id ? line.count : 0), 0);
    const count = piecesInUse(item) - out;
    return count > 0 ? [packed({ carrier: "group", what: item.kind, count }, item)] : [];
  });
}

function sleeperPacking(input: PackingInput, sleeper: Sleeper): SleeperPacking {
  const berth = input.berthOf.get(sleeper.id);
  const deal = input.dealing.dealt.find((one) => one.sleeper === sleeper.id);
  const lines = [
    ...(deal === undefined ? [] : dealtLines(input, deal)),
    ...(berth === undefined ? [] : cutLines(input.cuts, berth)),
    ...light(input.camp.kit, input.camp.sleepers.length),
  ];
  const { massKg, unweighed } = weighed(lines);
  return {
    sleeper: sleeper.id,
    ...(berth === undefined ? {} : { berth }),
    lines,
    massKg,
    unweighed,
    ofBodyRatio: massKg / sleeper.massKg,
  };
}

function dealtLines({ camp }: PackingInput, { items }: SleeperDeal): PackingLine[] {
  return items.map(({ kind, item, number }) => {
    const carrier = kind === "under" || kind === "over" ? "own" : "berth";
    const numbers = number === undefined ? {} : { numbers: [number] };
    const line = camp.kit.find(({ id }) => id === item);
    return packed({ carrier, what: kind, count: 1, ...numbers }, line);
  });
}

/** Lines cut for one berth, each purpose once. */
function cutLines({ materials }: CutList, berth: string): PackingLine[] {
  const counts = new Map<PackedThing, number>();
  for (const { purpose, berths } of materials.flatMap(({ pieces }) => pieces)) {
    const count = berths.filter((one) => one === berth).length;
    const what = PACKED[purpose];
    if (count > 0) counts.set(what, (counts.get(what) ?? 0) + count);
  }
  return [...counts].map(([what, count]) => ({ carrier: "berth", what, count }));
}

const PACKED: Readonly<Record<CutPurpose, PackedThing>> = {
  strap: "strap-webbing",
  ridgeline: "ridgeline",
  "tarp-ridge": "tarp-ridgeline",
  guy: "guy-line",
  "hitch-loop": "hitch-loop",
  "drip-line": "drip-line",
};

/** A light each, from the store where it has one for everybody. */
function light(kit: readonly KitItem[], people: number): PackingLine[] {
  const line = kit.find((item) => item.kind === "light" && piecesInUse(item) >= people);
  return [packed({ carrier: "own", what: "light", count: 1 }, line)];
}

/** Pegs and connectors of the store, shared out by heads; people of no group carry as one. */
function groupPacking({ camp }: PackingInput, group: string | undefined): GroupPacking {
  const heads = camp.sleepers.filter((sleeper) => sleeper.group === group).length;
  const share = heads / Math.max(1, camp.sleepers.length);
  const lines = camp.kit.flatMap((item): PackingLine[] => {
    if (!isShared(item)) return [];
    const count = Math.floor(piecesInUse(item) * share + 1e-9);
    return count > 0 ? [packed({ carrier: "group", what: item.kind, count }, item)] : [];
  });
  return { ...(group === undefined ? {} : { group }), lines, ...weighed(lines) };
}

function isShared(item: KitItem): item is OtherKit & { readonly kind: "peg" | "connector" } {
  return item.kind === "peg" || item.kind === "connector";
}

function packed(line: PackingLine, item: KitItem | undefined): PackingLine {
  if (item === undefined) return line;
  const massKg = item.massKg === undefined ? {} : { massKg: item.massKg * line.count };
  return { ...line, item: item.id, ...massKg };
}

/** Cord weighs little and is left out. */
function weighed(lines: readonly PackingLine[]): { massKg: number; unweighed: number } {
  const known = lines.flatMap(({ massKg }) => massKg ?? []);
  const listed = lines.filter(({ item }) => item !== undefined);
  return { massKg: known.reduce((sum, mass) => sum + mass, 0), unweighed: listed.length - known.length };
}
