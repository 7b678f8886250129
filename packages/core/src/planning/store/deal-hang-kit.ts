import type { Night, Sleeper } from "../../plan/camp.ts";
import { CLOTH_OVER_STATURE_M } from "../assumed-kit.ts";
import { spreadLines } from "./spread-lines.ts";
import type { LineOf, StoreHands } from "./store-hands.ts";

/**
 * Deals hammocks, each to all who have none yet: never to somebody above the maker's greatest user weight; then with the least
 * cloth too short in all; then the lightest; then those with the lower ratings.
 */
export function dealHammocks(hands: StoreHands, sleepers: readonly Sleeper[]): void {
  const lines = hands.available("hammock");
  const rank = ranks(lines, ({ maxUserKg, lengthM }) => [maxUserKg ?? Infinity, lengthM]);
  spread(hands, sleepers, "hammock", lines, (sleeper, line) => {
    if (sleeper.massKg > (line.maxUserKg ?? Infinity)) return Infinity;
    const shortM = Math.max(0, sleeper.statureM + CLOTH_OVER_STATURE_M - line.lengthM);
    return Math.ceil(shortM * 100 - 1e-6) * CM + tens(line) * TEN_GRAMS + (rank.get(line.id) ?? 0);
  });
}

/** Deals suspensions: as wide as the house asks before narrower, then the strongest to the heaviest. */
export function dealSuspensions(
  hands: StoreHands,
  sleepers: readonly Sleeper[],
  strapWidthMinM: number,
): void {
  const lines = hands.available("suspension");
  const strongest = Math.max(0, ...lines.map(strengthN));
  spread(hands, sleepers, "suspension", lines, (sleeper, line) => {
    const narrow = line.strapWidthM >= strapWidthMinM ? 0 : 1;
    const weaker = (strongest - strengthN(line)) / Math.max(1, strongest);
    return narrow * NARROW + Math.round(weaker * Math.min(sleeper.massKg, 1000) * WEAKER);
  });
}

/**
 * Deals tarps by what hangs below them: the ridge reaches beyond the hammock's gathers, farther where rain or a gust is forecast;
 * then the lightest.
 */
export function dealTarps(hands: StoreHands, sleepers: readonly Sleeper[], night: Night | undefined): void {
  spread(hands, sleepers, "tarp", hands.available("tarp"), (sleeper, line) => {
    const shortM = Math.max(0, wantedRidgeM(hands.holding(sleeper).hammock, night) - line.ridgeM);
    return Math.ceil(shortM * 100 - 1e-6) * CM + tens(line) * TEN_GRAMS;
  });
}

/** Ridge that a tarp should have over this hammock tonight [m]. */
export function wantedRidgeM(
  hammock: LineOf<"hammock"> | undefined,
  night: Pick<Night, "rainMmH" | "gustMS"> | undefined,
): number {
  const foul = night !== undefined && (night.rainMmH > 0 || night.gustMS >= FOUL_GUST_MS);
  const gathersM = hammock?.ridgelineM ?? (hammock?.lengthM ?? 0) * USUAL_RIDGELINE;
  return gathersM + 2 * (foul ? FOUL_OVERHANG_M : FAIR_OVERHANG_M);
}

function spread<K extends "hammock" | "suspension" | "tarp">(
  hands: StoreHands,
  sleepers: readonly Sleeper[],
  kind: K,
  lines: readonly LineOf<K>[],
  costOf: (sleeper: Sleeper, line: LineOf<K>) => number,
): void {
  const people = sleepers.filter((sleeper) => hands.holding(sleeper)[kind] === undefined);
  const given = spreadLines({ people, lines, roomOf: ({ id }) => hands.leftOf(id), costOf });
  people.forEach((sleeper, at) => {
    const line = given[at];
    if (line !== undefined) hands.give(sleeper, line);
  });
}

/** To compare parts with a rated load and parts with a breaking strength only [N]. */
export function strengthN({ ratedLoadN, breakingN }: LineOf<"suspension">): number {
  return ratedLoadN ?? (breakingN ?? 0) / RATED_SHARE;
}

/** Mass in tens of grams. */
function tens({ massKg }: { readonly massKg?: number }): number {
  return Math.min(MOST_TENS, Math.round((massKg ?? 0) * 100));
}

function ranks<L extends { readonly id: string }>(
  lines: readonly L[],
  marks: (line: L) => readonly [number, number],
): Map<string, number> {
  const sorted = [...lines].sort((a, b) => {
    const [left, right] = [marks(a), marks(b)];
    return compared(left[0], right[0]) || compared(left[1], right[1]);
  });
  return new Map(sorted.map(({ id }, rank) => [id, Math.min(rank, TEN_GRAMS - 1)]));
}

function compared(a: number, b: number): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}

// Weights that keep the marks in order: a centimetre outweighs any mass, ten grams any rank.
const TEN_GRAMS = 100;
const MOST_TENS = 2_000;
const CM = 250_000;
const NARROW = 2e6;
const WEAKER = 1e3;

/** Source: asme-b30-9. */
const RATED_SHARE = 5;

/** Beyond each gather, fair and foul [m]. Source: common-practice, 15 to 30 cm. */
const FAIR_OVERHANG_M = 0.15;
const FOUL_OVERHANG_M = 0.3;
/** Branches move: from here a tarp is pitched low and long. Source: common-practice. */
const FOUL_GUST_MS = 11;
/** Where nobody knows the ridgeline. Source: common-practice. */
const USUAL_RIDGELINE = 0.83;
