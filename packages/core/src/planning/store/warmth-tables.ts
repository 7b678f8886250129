import type { Sleeper } from "../../plan/camp.ts";
import { isYoung } from "../warmth/warmth-margin.ts";
import { dealWarmth, type ComesFirst, type WarmthHalfTable } from "./deal-warmth.ts";
import type { Holding, LineOf, StoreHands } from "./store-hands.ts";

/** How warm each half of a sleeper is against what is asked tonight [K]; from 0 it is enough. */
export interface HalfMarginsOf {
  readonly underK: (sleeper: Sleeper, hung: Holding, under: LineOf<"under"> | undefined) => number;
  readonly overK: (sleeper: Sleeper, hung: Holding, over: LineOf<"over"> | undefined) => number;
  /** Both at once, each helped by the other, of what was dealt. */
  readonly both: (sleeper: Sleeper, held: Holding) => Readonly<Record<"under" | "over", number>>;
}

/** Warmth as it was dealt. */
export interface WarmthDealt {
  /** By sleeper, the poorer half of those that were dealt [K]. */
  readonly marginK: ReadonlyMap<string, number>;
  readonly below: Readonly<Record<"under" | "over", readonly string[]>>;
  readonly tables: Readonly<Record<"under" | "over", HalfOfStore | undefined>>;
  /** Whether a line would be enough for somebody in all else that they were dealt. */
  readonly isEnough: (sleeper: Sleeper, line: LineOf<"under"> | LineOf<"over">) => boolean;
  readonly isLeastProven: boolean;
  readonly proven: boolean;
}

/** A half as it was dealt from: lines, those of the store first, then those kept for somebody, then nothing. */
export interface HalfOfStore {
  readonly lines: readonly (LineOf<"under"> | LineOf<"over"> | undefined)[];
  readonly table: WarmthHalfTable;
  readonly lineOf: Int32Array;
  /** Lines from here on are kept for somebody, and the last is nothing. */
  readonly keptFrom: number;
}

/** Deals under and over layers to all who have none yet; a half of which the store lists nothing is left to the people. */
export function dealStoreWarmth(
  hands: StoreHands,
  sleepers: readonly Sleeper[],
  margins: HalfMarginsOf,
): WarmthDealt {
  const under = halfTable(hands, sleepers, "under", margins.underK);
  const over = halfTable(hands, sleepers, "over", margins.overK);
  const idle = idleTable(sleepers.length);
  const dealt = dealWarmth(
    sleepers.length,
    under?.table ?? idle,
    over?.table ?? idle,
    sleepers.map(comesFirst),
  );
  const halves = {
    under: under === undefined ? undefined : { ...under, lineOf: dealt.under },
    over: over === undefined ? undefined : { ...over, lineOf: dealt.over },
  };
  for (const half of [halves.under, halves.over]) if (half !== undefined) handOut(hands, sleepers, half);
  return {
    ...toldMargins(hands, sleepers, margins),
    tables: halves,
    isEnough: (sleeper, line) => {
      const held = hands.holding(sleeper);
      const other = line.kind === "under" ? { ...held, under: line } : { ...held, over: line };
      return margins.both(sleeper, other)[line.kind] >= 0;
    },
    isLeastProven: dealt.isLeastProven,
    proven: dealt.proven,
  };
}

/** Under 16 first, then under 18; somebody whose age nobody told is taken as grown. */
function comesFirst(sleeper: Sleeper): ComesFirst {
  if (isYoung(sleeper)) return 2;
  return (sleeper.ageYears ?? ADULT_YEARS) < ADULT_YEARS ? 1 : 0;
}

const ADULT_YEARS = 18;

/** How warm everybody is in what they got, of the halves that the store deals. */
function toldMargins(
  hands: StoreHands,
  sleepers: readonly Sleeper[],
  margins: HalfMarginsOf,
): Pick<WarmthDealt, "marginK" | "below"> {
  const kinds = WARM_KINDS.filter((kind) => hands.lists(kind));
  const told = sleepers.map((sleeper) => ({ sleeper, both: margins.both(sleeper, hands.holding(sleeper)) }));
  const below = (kind: "under" | "over") =>
    kinds.includes(kind) ? told.flatMap(({ sleeper, both }) => (both[kind] < 0 ? [sleeper.id] : [])) : [];
  return {
    marginK: new Map(
      told.map(({ sleeper, both }) => [sleeper.id, Math.min(...kinds.map((kind) => both[kind]))]),
    ),
    below: { under: below("under"), over: below("over") },
  };
}

export const WARM_KINDS = ["under", "over"] as const;

function halfTable<K extends "under" | "over">(
  hands: StoreHands,
  sleepers: readonly Sleeper[],
  kind: K,
  marginK: (sleeper: Sleeper, hung: Holding, line: LineOf<K> | undefined) => number,
): Omit<HalfOfStore, "lineOf"> | undefined {
  if (!hands.lists(kind)) return undefined;
  const free = hands.available(kind);
  const kept = sleepers.flatMap((sleeper) => {
    const line = hands.heldOf(sleeper, kind);
    return line === undefined ? [] : [{ sleeper: sleeper.id, line }];
  });
  const keeper = new Map(kept.map(({ sleeper }, at) => [sleeper, free.length + at]));
  const lines = [...free, ...kept.map(({ line }) => line), undefined];
  const margin = sleepers.flatMap((sleeper) => {
    const own = keeper.get(sleeper.id);
    const hung = hands.holding(sleeper);
    return lines.map((line, at) => {
      const isAllowed = own === undefined ? at < free.length || at === lines.length - 1 : at === own;
      return isAllowed ? hundredths(marginK(sleeper, hung, line)) : -Infinity;
    });
  });
  const room = lines.map((line, at) => {
    if (line === undefined) return sleepers.length;
    return at < free.length ? hands.leftOf(line.id) : 1;
  });
  return {
    lines,
    keptFrom: free.length,
    table: {
      room: Int32Array.from(room),
      margin: Float64Array.from(margin),
      massG: Int32Array.from(lines, (line) => Math.round((line?.massKg ?? 0) * 1000)),
    },
  };
}

/** A decision rests on whole hundredths, whatever machine worked them out. */
function hundredths(marginK: number): number {
  return marginK === -Infinity ? -Infinity : Math.round(marginK * 100);
}

function idleTable(people: number): WarmthHalfTable {
  return {
    room: Int32Array.of(people),
    margin: new Float64Array(people).fill(FOR_CERTAIN),
    massG: new Int32Array(1),
  };
}

function handOut(hands: StoreHands, sleepers: readonly Sleeper[], { lines, lineOf }: HalfOfStore): void {
  sleepers.forEach((sleeper, person) => {
    const line = lines[lineOf[person] ?? -1];
    if (line !== undefined && hands.holding(sleeper)[line.kind] === undefined) hands.give(sleeper, line);
  });
}

/** Of a half that the store does not deal: never the poorer [hundredths of a kelvin]. */
const FOR_CERTAIN = 1e6;
