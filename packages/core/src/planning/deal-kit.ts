import type { Finding } from "../outcome/finding.ts";
import type { DefaultUsed, Night, Sleeper } from "../plan/camp.ts";
import { DEFAULTS } from "../plan/defaults.ts";
import type { KitItem } from "../plan/kit.ts";
import type { Dealing } from "../plan/store-types.ts";
import { ASSUMED_HAMMOCK, ASSUMED_SUSPENSION } from "./assumed-kit.ts";
import type { AssumedPart, DealtKit } from "./dealt-kit.ts";
import { byCodeUnit } from "./order.ts";
import type { KitGiven } from "./redeal/redeal-types.ts";
import { dealHammocks, dealSuspensions, dealTarps } from "./store/deal-hang-kit.ts";
import { tooFew, tooWeakFor } from "./store/kit-shortage.ts";
import { storeDealing } from "./store/store-dealing.ts";
import { StoreHands, type Holding } from "./store/store-hands.ts";
import { airAskedK, tonightMargins } from "./store/tonight-margins.ts";
import { dealStoreWarmth } from "./store/warmth-tables.ts";
import { tonightAir, type HammockAir } from "./warmth/tonight-air.ts";

export interface KitDeal {
  /** In the order of the sleepers given. */
  readonly dealt: readonly DealtKit[];
  readonly short: readonly { readonly sleeper: Sleeper; readonly because: readonly Finding[] }[];
  readonly defaultsUsed: readonly DefaultUsed[];
  /** Pinned items that could not be given: not in use, or given away already. */
  readonly findings: readonly Finding[];
  /** Hammocks and suspensions that are kept for somebody, by the id of the sleeper. */
  readonly kept: ReadonlyMap<string, Pick<Holding, "hammock" | "suspension">>;
  /** The same as it is told, with what is short and why; absent where the store lists nothing that is dealt. */
  readonly dealing?: Dealing;
}

/**
 * Deals the store to the sleepers: what was kept for somebody first, then each kind to as many as it can serve.
 *
 * Hammocks never go above their makers' greatest user weight, except where they were pinned, and then with the least cloth
 * too short; suspensions as wide as the house asks, the strongest to the heaviest; tarps by the hammock below and tonight's
 * rain and gusts; under and over layers by the warmth of
 * the coldest `air`, as `dealWarmth` says. Of equals the lightest is
 * carried. Pieces quarantined or retired are never dealt.
 *
 * What is `given` goes first: kit that was chosen together with the places.
 *
 * Shapes   sleepers: people, kit: lines → dealt + short: people
 * Holds    any store; where it lists no hammock (or no suspension) at all, the assumed one of the table is dealt
 * Error    each step exact; the hang is dealt before the berths are found, as it decides which serve (then `dealAnew`)
 * Source   kit-dealing (handbook/kit.md)
 */
export function dealKit(
  sleepers: readonly Sleeper[],
  kit: readonly KitItem[],
  strapWidthMinM: number,
  night?: Night,
  air: HammockAir | undefined = night === undefined ? undefined : tonightAir(night),
  given: KitGiven = new Map(),
): KitDeal {
  const hands = new StoreHands(kit);
  const order = [...sleepers].sort(heaviestFirst);
  const findings = order.flatMap((sleeper) => hands.pin(sleeper));
  const kept = keptFor(hands, sleepers);
  giveFirst(hands, order, given);
  dealHammocks(hands, order);
  dealSuspensions(hands, order, strapWidthMinM);
  dealTarps(hands, order, night);
  const isWarm = hands.lists("under") || hands.lists("over");
  const warmth = isWarm ? dealStoreWarmth(hands, sleepers, tonightMargins(air)) : undefined;
  const dealt = sleepers.flatMap((sleeper) => dealtTo(hands, sleeper) ?? []);
  const short = sleepers.flatMap((sleeper) => {
    const because = shortage(sleeper, hands, sleepers.length);
    return because.length > 0 ? [{ sleeper, because }] : [];
  });
  const airK = airAskedK(air);
  const input = { hands, sleepers, strapWidthMinM, night, warmth, airK };
  return {
    dealt,
    short,
    defaultsUsed: assumedDefaults(dealt),
    findings,
    kept,
    ...(kit.some(({ kind }) => DEALT.has(kind)) ? { dealing: storeDealing(input) } : {}),
  };
}

function keptFor(hands: StoreHands, sleepers: readonly Sleeper[]): KitDeal["kept"] {
  return new Map(
    sleepers.map((sleeper) => {
      const { hammock, suspension } = hands.holding(sleeper);
      const kept = { ...(hammock && { hammock }), ...(suspension && { suspension }) };
      return [sleeper.id, kept];
    }),
  );
}

/** What was chosen together with the places, but nothing of a kind that is kept for that sleeper already. */
function giveFirst(hands: StoreHands, sleepers: readonly Sleeper[], given: KitGiven): void {
  const lines = [...hands.available("hammock"), ...hands.available("suspension")];
  for (const sleeper of sleepers) {
    const ids = given.get(sleeper.id) ?? [];
    lines
      .filter(({ id, kind }) => ids.includes(id) && hands.holding(sleeper)[kind] === undefined)
      .forEach((line) => hands.give(sleeper, line));
  }
}

const DEALT: ReadonlySet<KitItem["kind"]> = new Set(["hammock", "suspension", "tarp", "under", "over"]);

/** What a sleeper hangs in, or nothing where hammock or suspension is missing. */
function dealtTo(hands: StoreHands, sleeper: Sleeper): DealtKit | undefined {
  const { tarp, under, over, ...held } = hands.holding(sleeper);
  const assumed = NEEDFUL.filter((kind) => held[kind] === undefined && !hands.lists(kind));
  const hammock = held.hammock ?? (hands.lists("hammock") ? undefined : ASSUMED_HAMMOCK);
  const suspension = held.suspension ?? (hands.lists("suspension") ? undefined : ASSUMED_SUSPENSION);
  if (hammock === undefined || suspension === undefined) return undefined;
  return {
    sleeper,
    hammock,
    suspension,
    assumed,
    ...(tarp === undefined ? {} : { tarp }),
    ...(under === undefined ? {} : { under }),
    ...(over === undefined ? {} : { over }),
  };
}

const NEEDFUL: readonly AssumedPart[] = ["hammock", "suspension"];

function shortage(sleeper: Sleeper, hands: StoreHands, people: number): Finding[] {
  return NEEDFUL.flatMap((kind) => {
    if (hands.holding(sleeper)[kind] !== undefined || !hands.lists(kind)) return [];
    const missing = tooFew(kind, hands.inUse(kind), people, `sleeper/${sleeper.id}`);
    return [missing, ...(kind === "hammock" ? tooWeakFor(sleeper, hands.available(kind)) : [])];
  });
}

function assumedDefaults(dealt: readonly DealtKit[]): DefaultUsed[] {
  const of = (part: AssumedPart): string[] =>
    dealt.filter(({ assumed }) => assumed.includes(part)).map(({ sleeper }) => sleeper.id);
  const used = (field: AssumedField, people: readonly string[]): DefaultUsed[] =>
    people.length > 0 ? [{ field, value: DEFAULTS[field].value, for: people }] : [];
  return [
    ...used("kit.default.hammock.length_m", of("hammock")),
    ...used("kit.default.hammock.ridgeline_ratio", of("hammock")),
    ...used("kit.default.suspension.type", of("suspension")),
  ];
}

type AssumedField =
  "kit.default.hammock.length_m" | "kit.default.hammock.ridgeline_ratio" | "kit.default.suspension.type";

function heaviestFirst(a: Sleeper, b: Sleeper): number {
  return b.massKg - a.massKg || b.statureM - a.statureM || byCodeUnit(a.id, b.id);
}
