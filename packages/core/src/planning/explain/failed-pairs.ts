import { compare, type Finding } from "../../outcome/finding.ts";
import type { FailedPair, Plan, Unplaced } from "../../plan/plan.ts";
import { withoutBarredSpecies } from "../barred-species.ts";
import type { CampPlace } from "../camp-places-types.ts";
import { hazardsOf } from "../findings/surroundings.ts";
import { mapPlaces } from "../map-places.ts";
import { NO_GROUND } from "../no-ground.ts";
import { byCodeUnit } from "../order.ts";
import { broken, findNamedPair, pairFaults, spanFaults, stripFaults } from "../pair-faults.ts";
import type { PreparedCamp } from "../prepare-camp.ts";
import { refusedFindings } from "../refused-hang.ts";
import { takenPlaces } from "./contested.ts";

/** As an unplaced sleeper carries them. */
type FailedPairs = Required<Pick<Unplaced, "pairs">> & Pick<Unplaced, "pairsLeft">;

/**
 * The pairs of trees that nearly serve one who has no berth, and why each does not: pairs that would serve but for
 * those who lie there or across it, hangs that are refused, strips that are not free, spans just out of range.
 *
 * How nearly a pair serves is how far the worst of its comparisons is from being kept, as a ratio; what has no figure
 * comes last.
 *
 * Shapes   one sleeper → at most 12 pairs, the nearest first, and how many more there are
 * Holds    a plan of this camp; nothing for somebody without kit
 * Source   house-convention (handbook/planning.md: who has no berth)
 */
export function failedPairs(prepared: PreparedCamp, plan: Plan, sleeper: string): FailedPairs {
  const classIndex = prepared.classes.findIndex(({ members }) =>
    members.some((kit) => kit.sleeper.id === sleeper),
  );
  if (classIndex < 0) return { pairs: [] };
  const subject = `sleeper/${sleeper}`;
  const refused = [...prepared.ground.places.keys()].filter(
    (place) => !prepared.desk.serves(classIndex, place),
  );
  const found = [
    ...takenPairs(prepared, plan, classIndex, subject),
    ...refusedPairs(prepared, refused, classIndex, sleeper),
    ...blockedPairs(prepared, subject),
    ...pairsOutOfRange(prepared, subject),
    ...statedPairsOut(prepared, subject),
  ];
  const idealM = prepared.camp.rules.spanIdealM.value;
  const offM = ({ spanM }: FailedPair): number => Math.abs(spanM - idealM);
  const pairs = found
    .map((pair) => ({ pair, short: shortfall(pair.because) }))
    .sort((a, b) => a.short - b.short || offM(a.pair) - offM(b.pair) || byTrees(a.pair, b.pair))
    .slice(0, PAIRS_TOLD)
    .map(({ pair }) => pair);
  const notLookedAt = beyondLook(refused.length) + beyondLook(prepared.ground.blocked.length);
  const left = found.length - pairs.length + notLookedAt;
  return left > 0 ? { pairs, pairsLeft: left } : { pairs };
}

function beyondLook(count: number): number {
  return Math.max(0, count - PAIRS_LOOKED_AT);
}

/** No more pairs than a person reads, and no more of one kind than are worth looking at. */
const PAIRS_TOLD = 12;
const PAIRS_LOOKED_AT = 300;

/** Pairs whose hang would do, with who is in the way. */
function takenPairs(prepared: PreparedCamp, plan: Plan, classIndex: number, subject: string): FailedPair[] {
  const { ground, desk, camp } = prepared;
  const lying = takenPlaces(prepared, plan);
  const across = new Map<number, string[]>();
  for (const [a, b] of ground.conflicts) {
    for (const [place, other] of [[a, b] as const, [b, a] as const]) {
      const who = lying.get(other);
      if (who !== undefined) across.set(place, [...(across.get(place) ?? []), who]);
    }
  }
  const load = new Map<number, number>();
  for (const place of lying.keys()) {
    const { first = -1, second = -1 } = ground.places[place] ?? {};
    for (const anchor of [first, second]) load.set(anchor, (load.get(anchor) ?? 0) + 1);
  }
  const most = camp.rules.hammocksPerTree.value;
  return ground.places.flatMap((there, place) => {
    if (!desk.serves(classIndex, place)) return [];
    const taken = lying.get(place);
    const over = (across.get(place) ?? []).map((who) => broken("site.in-the-way", subject, [who]));
    const full = [there.first, there.second]
      .filter((anchor) => (load.get(anchor) ?? 0) >= most)
      .map((anchor) => tooMany(ground.anchors[anchor]?.id ?? "", (load.get(anchor) ?? 0) + 1, most));
    const because = taken === undefined ? [...full, ...over] : [broken("site.taken", subject, [taken])];
    return because.length === 0 ? [] : [pairOf(prepared, there, because)];
  });
}

function tooMany(tree: string, demand: number, limit: number): Finding {
  const subject = `tree/${tree}`;
  return compare({
    rule: "site.capacity",
    source: "house-rules",
    subject,
    sense: "at-most",
    demand,
    limit,
    unit: "1",
  });
}

/** Pairs at which the hang is refused, with every limit in its way. */
function refusedPairs(
  prepared: PreparedCamp,
  refused: readonly number[],
  classIndex: number,
  sleeper: string,
): FailedPair[] {
  const { ground, desk, classes } = prepared;
  const fit = classes[classIndex];
  const kit = fit?.members.find((one) => one.sleeper.id === sleeper);
  if (fit === undefined || kit === undefined) return [];
  return refused.slice(0, PAIRS_LOOKED_AT).flatMap((place) => {
    const there = ground.places[place];
    const outcome = desk.hangOf(classIndex, place);
    if (there === undefined || outcome.ok) return [];
    const pair = pairOf(prepared, there, []);
    const because = refusedFindings({
      trees: pair.trees,
      kit,
      limits: fit.limits,
      refusals: outcome.refusals,
    });
    return [{ ...pair, because }];
  });
}

function blockedPairs({ camp, ground }: PreparedCamp, subject: string): FailedPair[] {
  const hazards = hazardsOf(camp.ground ?? NO_GROUND);
  return ground.blocked.slice(0, PAIRS_LOOKED_AT).map((strip) => {
    const [a, b] = strip.trees;
    const [east, north] = [b.xM - a.xM, b.yM - a.yM];
    return {
      trees: [a.id, b.id],
      spanM: Math.sqrt(east * east + north * north),
      because: stripFaults(strip, hazards, camp.rules, subject),
    };
  });
}

/** Pairs of the map that are free, and a little too near or too far. */
function pairsOutOfRange({ camp, ground }: PreparedCamp, subject: string): FailedPair[] {
  const { rules } = camp;
  if (camp.ground === undefined) return [];
  const wider = mapPlaces(withoutBarredSpecies(camp.ground, rules), {
    ...rules,
    spanMinM: { ...rules.spanMinM, value: rules.spanMinM.value - NEARLY_M },
    spanMaxM: { ...rules.spanMaxM, value: rules.spanMaxM.value + NEARLY_M },
  });
  const known = new Set(ground.places.map(({ first, second }) => `${first} ${second}`));
  return wider.places.flatMap((place) => {
    const ids = [wider.anchors[place.first]?.id ?? "", wider.anchors[place.second]?.id ?? ""] as const;
    const because = spanFaults(rules, { ids, spanM: place.spanM }, subject, camp.ground?.offM);
    if (because.length === 0 || known.has(`${place.first} ${place.second}`)) return [];
    return [{ trees: ids, spanM: place.spanM, because }];
  });
}

/** How far out of range a pair may be and still be told [m]. */
const NEARLY_M = 0.5;

function statedPairsOut({ camp, ground }: PreparedCamp, subject: string): FailedPair[] {
  return (camp.ground?.pairs ?? []).flatMap(({ id }) => {
    const pair = findNamedPair(camp, ground, { pair: id });
    if (pair === undefined || !pair.trees.includes(undefined)) return [];
    const because = pairFaults(camp, ground, pair, subject);
    return because.length === 0 ? [] : [{ trees: pair.ids, spanM: pair.spanM, because }];
  });
}

function pairOf({ ground }: PreparedCamp, place: CampPlace, because: readonly Finding[]): FailedPair {
  const trees = [ground.anchors[place.first]?.id ?? "", ground.anchors[place.second]?.id ?? ""] as const;
  return { trees, spanM: place.spanM, because };
}

/** How far the worst comparison is from being kept: 0 where only somebody else is in the way. */
function shortfall(because: readonly Finding[]): number {
  return because.reduce((worst, { margin, rule }) => {
    if (IN_THE_WAY.has(rule)) return worst;
    return Math.max(worst, margin === null ? 1 : -margin);
  }, 0);
}

const IN_THE_WAY: ReadonlySet<string> = new Set(["site.taken", "site.in-the-way", "site.capacity"]);

function byTrees(a: FailedPair, b: FailedPair): number {
  return byCodeUnit(a.trees.join(" "), b.trees.join(" "));
}
