import type { Finding } from "../../outcome/finding.ts";
import type { Limit } from "../../outcome/outcome.ts";
import type { HangAlternatives } from "../../plan/alternative-types.ts";
import type { Plan, PlannedBerth } from "../../plan/plan.ts";
import type { PreparedCamp } from "../prepare-camp.ts";
import { hangAlternatives, STRAP_TROUBLES } from "./hang-alternatives.ts";
import { treesOf } from "./try-hang.ts";

/**
 * The plan with what else could be done wherever straps came out too long or too short: at berths whose angle had to
 * give way to them, for people without a berth, at pairs that nearly serve, and at pins that were not kept.
 *
 * Shapes   one plan of this very camp → the same with `alternatives` where there is such trouble
 * Holds    any plan; the first 20 berths and 3 pairs of each person are looked at, no more is read
 * Source   as `hangAlternatives`
 */
export function withAlternatives(plan: Plan, prepared: PreparedCamp): Plan {
  const at = asker(prepared, plan);
  let left = BERTHS_TOLD;
  const berths = plan.berths.map((berth) => {
    const binds = troubleOf(berth);
    if (binds === undefined || left-- <= 0) return berth;
    const found = at(berth.sleeper, [berth.headTree, berth.footTree], binds);
    return found === undefined ? berth : { ...berth, alternatives: found };
  });
  const unplaced = plan.unplaced.map((one) => {
    const alternatives = troublesIn(one.because).flatMap(
      ({ trees, binds }) => at(one.sleeper, trees, binds) ?? [],
    );
    const pairs = one.pairs?.map((pair, index) => {
      const [trouble] = index < PAIRS_TOLD ? troublesIn(pair.because) : [];
      const found = trouble === undefined ? undefined : at(one.sleeper, pair.trees, trouble.binds);
      return found === undefined ? pair : { ...pair, alternatives: found };
    });
    return {
      ...one,
      ...(alternatives.length === 0 ? {} : { alternatives }),
      ...(pairs === undefined ? {} : { pairs }),
    };
  });
  const pinsRefused = plan.pinsRefused?.map((pin) => {
    const [trouble] = troublesIn(pin.because);
    const found = trouble === undefined ? undefined : at(pin.sleeper, pin.trees, trouble.binds);
    return found === undefined ? pin : { ...pin, alternatives: found };
  });
  return { ...plan, berths, unplaced, ...(pinsRefused === undefined ? {} : { pinsRefused }) };
}

const BERTHS_TOLD = 20;
const PAIRS_TOLD = 3;

type Ask = (sleeper: string, trees: readonly [string, string], binds: Limit) => HangAlternatives | undefined;

function asker(prepared: PreparedCamp, { berths }: Plan): Ask {
  const { ground, classes } = prepared;
  const kits = new Map(
    classes.flatMap(({ members }) => members.map((kit) => [kit.sleeper.id, kit] as const)),
  );
  const placeAt = new Map(ground.places.map((place, index) => [keyOf(treesOf(ground, place)), index]));
  const lying = berths.flatMap(({ headTree, footTree, sleeper }) => {
    const place = placeAt.get(keyOf([headTree, footTree]));
    return place === undefined ? [] : [{ place, sleeper }];
  });
  return (sleeper, trees, binds) => {
    const [place, kit] = [placeAt.get(keyOf(trees)), kits.get(sleeper)];
    if (place === undefined || kit === undefined) return undefined;
    const others = lying.filter((one) => one.sleeper !== sleeper);
    const occupied = new Set(others.map((one) => one.place));
    return hangAlternatives({ prepared, place, kit, binds, occupied });
  };
}

function keyOf(trees: readonly [string, string]): string {
  return JSON.stringify([...trees].sort());
}

/** The length of strap that the angle of a berth had to give way to. */
function troubleOf({ hang }: PlannedBerth): Limit | undefined {
  return hang.notes.flatMap((note) =>
    note.key === "moved-by" && isTrouble(note.limit) ? [note.limit] : [],
  )[0];
}

interface Trouble {
  readonly trees: readonly [string, string];
  readonly binds: Limit;
}

/** Refused hangs tell their trees and their limit; each pair of trees once. */
function troublesIn(because: readonly Finding[]): readonly Trouble[] {
  const found = new Map<string, Trouble>();
  for (const { about: [first, second, limit] = [] } of because) {
    const binds = STRAP_TROUBLES.find((trouble) => trouble === limit);
    if (first === undefined || second === undefined || binds === undefined) continue;
    const key = keyOf([first, second]);
    if (!found.has(key) && found.size < PAIRS_TOLD) found.set(key, { trees: [first, second], binds });
  }
  return [...found.values()];
}

function isTrouble(limit: Limit): boolean {
  return STRAP_TROUBLES.includes(limit);
}
