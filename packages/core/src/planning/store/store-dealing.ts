import type { Night, Sleeper } from "../../plan/camp.ts";
import type { KitItem } from "../../plan/kit.ts";
import type { Dealing, DealtItem, DealtKind, KitShortage, SleeperDeal } from "../../plan/store-types.ts";
import { CLOTH_OVER_STATURE_M } from "../assumed-kit.ts";
import { wantedRidgeM } from "./deal-hang-kit.ts";
import { isYoung } from "../warmth/warmth-margin.ts";
import { kitShortage } from "./kit-shortage.ts";
import { numbersInUse } from "./pieces-in-use.ts";
import { putBySpares, sparesWanted } from "./spare-under.ts";
import type { StoreHands } from "./store-hands.ts";
import { WARM_KINDS, type HalfOfStore, type WarmthDealt } from "./warmth-tables.ts";

export interface DealingInput {
  readonly hands: StoreHands;
  readonly sleepers: readonly Sleeper[];
  readonly strapWidthMinM: number;
  readonly night: Night | undefined;
  /** Absent where the store lists neither under nor over layers. */
  readonly warmth: WarmthDealt | undefined;
  /** Air that each half must be good for [K]; absent without a night. */
  readonly airK: ((sleeper: Sleeper) => number) | undefined;
}

/** What a dealing came to: who got what, what is short and why, what is put by. */
export function storeDealing(input: DealingInput): Dealing {
  const { hands, sleepers, warmth, night } = input;
  const spares = putBySpares(hands, sleepers.length);
  const grown = new Set(sleepers.filter((sleeper) => !isYoung(sleeper)).map(({ id }) => id));
  const margins = night === undefined || warmth === undefined ? [] : [...warmth.marginK];
  // Under 16 no degree of a balance is valid, and none is told.
  const told = new Map(margins.filter(([id]) => grown.has(id)));
  const dealt = dealtItems(hands, sleepers, told);
  const least = Math.min(Infinity, ...told.values());
  return {
    dealt,
    shortages: shortages(input),
    spareUnder: spares,
    spareUnderLacking: hands.lists("under")
      ? sparesWanted(sleepers.length) - spares.reduce((sum, { count }) => sum + count, 0)
      : 0,
    groundPlaces: sparesWanted(sleepers.length),
    ...(Number.isFinite(least) ? { leastMarginK: least } : {}),
    massKg: sleepers.reduce((sum, sleeper) => sum + massOf(hands, sleeper), 0),
    proven: warmth?.proven ?? true,
    provenOf: {
      below: true,
      leastMargin: warmth?.isLeastProven ?? true,
      order: warmth?.proven ?? true,
    },
  };
}

function massOf(hands: StoreHands, sleeper: Sleeper): number {
  const held = hands.holding(sleeper);
  return KINDS.reduce((sum, kind) => sum + (held[kind]?.massKg ?? 0), 0);
}

/** Pieces are numbered off in the order of sleepers. */
function dealtItems(
  hands: StoreHands,
  sleepers: readonly Sleeper[],
  marginK: ReadonlyMap<string, number>,
): SleeperDeal[] {
  const numbers = new Map<string, string[]>();
  return sleepers.map((sleeper) => {
    const held = hands.holding(sleeper);
    const items = KINDS.flatMap((kind): DealtItem[] => {
      const line = held[kind];
      if (line === undefined) return [];
      const free = numbers.get(line.id) ?? numbersInUse(line);
      const [number, ...rest] = free;
      numbers.set(line.id, rest);
      const pinned = held.pinned.has(kind);
      return [{ kind, item: line.id, ...(number === undefined ? {} : { number }), pinned }];
    });
    const margin = marginK.get(sleeper.id) ?? Infinity;
    return { sleeper: sleeper.id, items, ...(Number.isFinite(margin) ? { marginK: margin } : {}) };
  });
}

const KINDS: readonly DealtKind[] = ["hammock", "suspension", "tarp", "under", "over"];

function shortages({ hands, sleepers, strapWidthMinM, night, warmth, airK }: DealingInput): KitShortage[] {
  const without = (kind: DealtKind) =>
    hands.lists(kind) ? sleepers.filter((sleeper) => hands.holding(sleeper)[kind] === undefined) : [];
  const wanting = (kind: DealtKind) => sleepers.filter((sleeper) => !hands.holding(sleeper).pinned.has(kind));
  const pieces = (kind: DealtKind) => (line: KitItem) => hands.dealable(line, kind);
  const found = [
    kitShortage({
      kind: "hammock",
      people: wanting("hammock"),
      lacking: without("hammock"),
      lines: hands.lines("hammock"),
      piecesOf: pieces("hammock"),
      serves: ({ massKg }, { maxUserKg }) => massKg <= (maxUserKg ?? Infinity),
      wish: ({ massKg, statureM }) => ({ maxUserKg: massKg, lengthM: statureM + CLOTH_OVER_STATURE_M }),
    }),
    kitShortage({
      kind: "suspension",
      people: wanting("suspension"),
      lacking: without("suspension"),
      lines: hands.lines("suspension"),
      piecesOf: pieces("suspension"),
      serves: () => true,
      wish: () => ({ strapWidthM: strapWidthMinM }),
    }),
    kitShortage({
      kind: "tarp",
      people: wanting("tarp"),
      lacking: without("tarp"),
      lines: hands.lines("tarp"),
      piecesOf: pieces("tarp"),
      serves: () => true,
      wish: (sleeper) => ({ lengthM: wantedRidgeM(hands.holding(sleeper).hammock, night) }),
    }),
    ...WARM_KINDS.map((kind) => shortWarmth(kind, sleepers, warmth, airK)),
  ];
  return found.flatMap((shortage) => shortage ?? []);
}

function shortWarmth(
  kind: "under" | "over",
  sleepers: readonly Sleeper[],
  warmth: WarmthDealt | undefined,
  airK: ((sleeper: Sleeper) => number) | undefined,
): KitShortage | undefined {
  const half = warmth?.tables[kind];
  if (warmth === undefined || half === undefined || airK === undefined) return undefined;
  const below = new Set(warmth.below[kind]);
  const lines = linesOfStore(half);
  const room = new Map(lines.map((line) => [line.line, line.room]));
  return kitShortage({
    kind,
    people: sleepers,
    lacking: sleepers.filter(({ id }) => below.has(id)),
    lines: [...room.keys()],
    piecesOf: (line) => room.get(line) ?? 0,
    serves: warmth.isEnough,
    wish: (sleeper) => (isYoung(sleeper) ? {} : { airK: airK(sleeper) }),
  });
}

/** Lines that anybody may have; what is kept for somebody competes with nobody. */
function linesOfStore({ lines, table, keptFrom }: HalfOfStore) {
  return lines.slice(0, keptFrom).flatMap((line, column) => {
    return line === undefined ? [] : [{ line, room: table.room[column] ?? 0 }];
  });
}
