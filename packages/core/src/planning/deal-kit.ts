import { byRule, type Finding } from "../outcome/finding.ts";
import type { DefaultUsed, Sleeper } from "../plan/camp.ts";
import { DEFAULTS } from "../plan/defaults.ts";
import type { KitItem } from "../plan/kit.ts";
import type { AssumedPart, DealtKit } from "./dealt-kit.ts";
import { byCodeUnit } from "./order.ts";
import { KitStock } from "./kit-stock.ts";

export interface KitDeal {
  /** In the order of the sleepers given. */
  readonly dealt: readonly DealtKit[];
  readonly short: readonly { readonly sleeper: Sleeper; readonly because: readonly Finding[] }[];
  readonly defaultsUsed: readonly DefaultUsed[];
  /** Pinned items that could not be given: not in use, or given away already. */
  readonly findings: readonly Finding[];
}

/**
 * Deals the store to the sleepers: pinned items first, then to the heaviest first, the tallest of equals.
 *
 * A hammock never goes to somebody heavier than its maker's greatest user weight, except where it was pinned;
 * among those left the first choice is one long enough for the sleeper, then the tightest greatest weight, then the
 * shortest. As greatest weights nest, heaviest first leaves nobody without who could have had one. Suspensions go
 * strongest first among those of the allowed width. Items quarantined or retired are never dealt.
 *
 * Shapes   sleepers: people, kit: lines → dealt + short: people
 * Holds    any store; where it lists no hammock (or no suspension) at all, the assumed one of the table is dealt
 * Source   common-practice (handbook/planning.md)
 */
export function dealKit(
  sleepers: readonly Sleeper[],
  kit: readonly KitItem[],
  strapWidthMinM: number,
): KitDeal {
  const stock = new KitStock(kit, strapWidthMinM);
  const order = [...sleepers].sort(heaviestFirst);
  const findings = order.flatMap((sleeper) => stock.pin(sleeper));
  order.forEach((sleeper) => {
    stock.giveHammock(sleeper);
    stock.giveSuspension(sleeper);
    stock.giveTarp(sleeper);
  });
  [...order].sort(coldestFirst).forEach((sleeper) => stock.giveWarmth(sleeper));
  const dealt = sleepers.flatMap((sleeper) => stock.dealtTo(sleeper) ?? []);
  const short = sleepers.flatMap((sleeper) => {
    const because = shortage(sleeper, stock, sleepers.length);
    return because.length > 0 ? [{ sleeper, because }] : [];
  });
  return { dealt, short, defaultsUsed: assumedDefaults(dealt), findings };
}

function shortage(sleeper: Sleeper, stock: KitStock, people: number): Finding[] {
  return stock.lacking(sleeper).flatMap((kind) => {
    const inUse = stock.inUse(kind);
    const missing = byRule(
      {
        rule: "layout.kit-short",
        source: "camp-file",
        subject: `sleeper/${sleeper.id}`,
        sense: "at-least",
        demand: inUse,
        limit: people,
        unit: "1",
        about: [kind],
      },
      "look-again",
    );
    const tooWeak = kind === "hammock" ? stock.tooWeakFor(sleeper) : [];
    return [missing, ...tooWeak];
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

const COLDNESS = { cold: 0, usual: 1, warm: 2 } as const;

function coldestFirst(a: Sleeper, b: Sleeper): number {
  return COLDNESS[a.sleeps] - COLDNESS[b.sleeps] || byCodeUnit(a.id, b.id);
}
