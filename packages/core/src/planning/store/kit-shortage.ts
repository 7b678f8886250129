import { byRule, compare, type Finding } from "../../outcome/finding.ts";
import type { Sleeper } from "../../plan/camp.ts";
import type { KitItem } from "../../plan/kit.ts";
import type { BorrowWish, DealtKind, KitShortage } from "../../plan/store-types.ts";
import { hallSet } from "./hall-set.ts";
import { spreadLines } from "./spread-lines.ts";

export interface ShortageInput<L extends KitItem> {
  readonly kind: DealtKind;
  /** Who wants one of the kind and has none kept for them. */
  readonly people: readonly Sleeper[];
  /** Who goes without, or with less than enough. */
  readonly lacking: readonly Sleeper[];
  readonly lines: readonly L[];
  readonly piecesOf: (line: L) => number;
  readonly serves: (sleeper: Sleeper, line: L) => boolean;
  /** What the borrowed thing must be for one of those who lack it. */
  readonly wish: (sleeper: Sleeper) => Omit<BorrowWish, "kind" | "count" | "for">;
}

/** Why a kind does not go round: who lacks it, who competes for too few, what to borrow. */
export function kitShortage<L extends KitItem>(input: ShortageInput<L>): KitShortage | undefined {
  const { kind, people, lacking, lines, piecesOf, serves } = input;
  if (lacking.length === 0) return undefined;
  const room = lines.map(piecesOf);
  const table = people.map((person) => Uint8Array.from(lines, (line) => Number(serves(person, line))));
  const isServed = (person: number, line: number) => table[person]?.[line] === 1;
  const served = spreadLines({
    people: table,
    lines: [...room.keys()],
    roomOf: (line) => room[line] ?? 0,
    costOf: (row, line) => (row[line] === 1 ? 0 : Infinity),
  });
  const set = hallSet({ room, serves: isServed, lineOf: Int32Array.from(served, (line) => line ?? -1) });
  const competing = (set?.people ?? []).flatMap((person) => people[person] ?? []);
  const pieces = set?.pieces ?? 0;
  return {
    kind,
    lacking: ids(lacking),
    competing: ids(competing),
    isFewest: set?.isFewest ?? true,
    items: (set?.lines ?? []).flatMap((line) => lines[line]?.id ?? []),
    pieces,
    borrow: [{ kind, count: lacking.length, for: ids(lacking), ...toughest(lacking.map(input.wish)) }],
    because: competing.length === 0 ? [] : [tooFew(kind, pieces, competing.length)],
  };
}

/** Hammocks that are left over because their makers' greatest weight is below this sleeper's. */
export function tooWeakFor(
  sleeper: Sleeper,
  left: readonly { readonly id: string; readonly maxUserKg?: number }[],
): Finding[] {
  return left.flatMap(({ id, maxUserKg }) =>
    maxUserKg === undefined
      ? []
      : [
          compare({
            rule: "part.user-weight",
            source: "maker-plate",
            subject: `sleeper/${sleeper.id}`,
            sense: "at-most",
            demand: sleeper.massKg,
            limit: maxUserKg,
            unit: "kg",
            about: [id],
          }),
        ],
  );
}

/** So many of a kind for so many people. */
export function tooFew(kind: DealtKind, pieces: number, people: number, subject = "camp"): Finding {
  return byRule(
    {
      rule: "layout.kit-short",
      source: "camp-file",
      subject,
      sense: "at-least",
      demand: pieces,
      limit: people,
      unit: "1",
      about: [kind],
    },
    "look-again",
  );
}

/** One thing that would serve any of them: the greatest of lengths and loads, the coldest air. */
function toughest(wishes: readonly Omit<BorrowWish, "kind" | "count" | "for">[]) {
  const all = (pick: (wish: Omit<BorrowWish, "kind" | "count" | "for">) => number | undefined) =>
    wishes.flatMap((wish) => pick(wish) ?? []);
  const greatest = (values: readonly number[]) => (values.length === 0 ? undefined : Math.max(...values));
  const maxUserKg = greatest(all((wish) => wish.maxUserKg));
  const lengthM = greatest(all((wish) => wish.lengthM));
  const strapWidthM = greatest(all((wish) => wish.strapWidthM));
  const coldest = all((wish) => wish.airK);
  return {
    ...(maxUserKg === undefined ? {} : { maxUserKg }),
    ...(lengthM === undefined ? {} : { lengthM }),
    ...(strapWidthM === undefined ? {} : { strapWidthM }),
    // A degree is told only where it is told of everybody that the thing is for.
    ...(coldest.length === 0 || coldest.length < wishes.length ? {} : { airK: Math.min(...coldest) }),
  };
}

function ids(people: readonly Sleeper[]): string[] {
  return people.map(({ id }) => id);
}
