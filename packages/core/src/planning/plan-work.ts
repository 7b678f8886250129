import { worstVerdict, type Finding } from "../outcome/finding.ts";
import type { Camp } from "../plan/camp.ts";
import { CAUTION_KEYS } from "../plan/cautions.ts";
import { keptHalfWidthM, type HouseRules } from "../plan/house-rules.ts";
import type { Plan, PlanPart, PlannedBerth, Supply, TreesLookedAt } from "../plan/plan.ts";
import type { CampPlaces } from "./camp-places-types.ts";
import type { ChooseInput, ChosenBerths } from "./choose-berths.ts";
import { peopleLimits, type PeopleRules } from "./choose-berths-people.ts";
import { withBuddies } from "./buddies.ts";
import { toldCostTerms } from "./cost-terms-told.ts";
import { costTerms, placeCosts, UNITS_PER_M, type CostTerm } from "./cost-terms.ts";
import { berthEffortM } from "./berth-effort.ts";
import { campFindings, refusedPinFindings } from "./findings/camp-wide.ts";
import { endedBerths } from "./ended-berths.ts";
import { layoutMethod } from "./layout-method.ts";
import type { LinearSolver } from "./linear-solver.ts";
import { byCodeUnit } from "./order.ts";
import type { EndedBerth } from "./plan-berth.ts";
import type { PreparedCamp } from "./prepare-camp.ts";
import { isSpare, isSpareId, sparesAsked } from "./spare-sleepers.ts";
import { spareBerth, spareFindings } from "./spare-berth.ts";
import { findNightClock } from "./shelter/night-clock.ts";
import { clockOf, nightParts, shelterChecked } from "./shelter/night-parts.ts";
import { storeParts } from "./store/store-parts.ts";
import { unplacedSleepers } from "./unplaced.ts";
import { campWarmth } from "./warmth/camp-warmth.ts";
import { peopleFindings } from "./wish-findings.ts";
import { peopleDistances, type Lying, type PeopleDistances } from "./wish-measures.ts";

/** A prepared camp while it is planned. */
export interface Work extends PreparedCamp {
  readonly engine: string;
  readonly terms: readonly CostTerm[];
  /** A plan on the way to a better one: its tarps are left out. */
  readonly isInterim?: boolean;
  /** Proven most that can be placed whatever dealing of the kit; absent where only this one was looked at. */
  readonly mostDealt?: number;
}

export function workOf(prepared: PreparedCamp, engine: string): Work {
  const { camp } = prepared;
  return { ...prepared, engine, terms: costTerms(camp.rules.spanIdealM.value, { ...camp.rules, ...camp }) };
}

/** What the search for berths is asked. */
export function chooseInputOf(work: Work, solver: LinearSolver | undefined): ChooseInput {
  const { camp, ground, classes, seeking, capacities, pinned, allowed, desk } = work;
  return {
    ground,
    capacity: camp.rules.hammocksPerTree.value,
    classes: classes.slice(0, seeking),
    capacities,
    pinned,
    allowed,
    costUnits: placeCosts(ground.places, work.terms),
    desk,
    people: peopleRules(camp),
    ...(camp.sleepers.some(({ beginner }) => beginner) ? { effortM: berthEffortM(ground.places, camp) } : {}),
    ...(solver === undefined ? {} : { solver }),
  };
}

/** Groups of one zone one after the other, so that they come to lie beside each other. */
function peopleRules({ groups, rules }: Camp): PeopleRules {
  const sorted = [...groups].sort((a, b) => byCodeUnit(a.zone ?? "", b.zone ?? "") || byCodeUnit(a.id, b.id));
  return {
    groups: sorted,
    limits: peopleLimits(rules),
    ...(rules.weights === undefined ? {} : { weights: rules.weights }),
  };
}

/**
 * The plan of a layout: every hang in full, every finding, and why anybody goes without. One that a better may follow
 * at any moment leaves out what is cut and packed.
 */
export function planOf(work: Work, layout: ChosenBerths): Plan {
  const { search, seats } = layout;
  const { camp, deal, ground } = work;
  const all = endedBerths(work, seats);
  const ended = all.filter(({ berth }) => !isSpareId(berth.sleeper));
  const buddies = withBuddies(
    ended.map(({ berth }) => berth),
    lyingAt(work, seats),
  );
  const night = findNightClock(camp, all.length);
  const warmth = campWarmth({ camp, berths: buddies, dealt: deal.dealt, ...clockOf(night) });
  const { berths } = warmth;
  const spares = all.flatMap(({ berth }) => (isSpareId(berth.sleeper) ? [spareBerth(work, berth)] : []));
  const distances = peopleDistances(lyingAt(work, seats), camp.groups, peopleLimits(camp.rules));
  const findings = [
    ...countFindings(work, berths.length, spares.length),
    ...peopleFindings(distances),
    ...warmth.findings,
    ...(night?.clock.findings ?? []),
  ];
  const people = deal.dealt.filter((kit) => !isSpare({ kit })).length;
  const bound = work.mostDealt ?? Math.min(search.bound, people);
  const store = work.isInterim === true ? {} : storeParts(camp, berths, deal);
  const verdicts = [...findings, ...berths].map(({ verdict }) => verdict);
  const parts = partsChecked(ended, ground, {
    warmth: warmth.checked,
    cuts: store.cuts !== undefined,
    packing: store.packing !== undefined,
    ...shelterChecked(ended, night?.clock),
  });
  return {
    campName: camp.name,
    engine: work.engine,
    verdict: worstVerdict(verdicts),
    treesLookedAt: treesLookedAt(ended),
    ...parts,
    asked: camp.sleepers.length,
    placed: berths.length,
    bound,
    ...costFigures(work, layout, distances),
    berths,
    ...(sparesAsked(camp) === 0 ? {} : { spares }),
    unplaced: unplacedSleepers(
      { ...work, placed: new Set(berths.map(({ sleeper }) => sleeper)), bound },
      camp.sleepers,
    ),
    supply: supplyOf(work),
    ...keptWidth(camp.rules),
    ...store,
    ...(work.pinsRefused.length === 0 ? {} : { pinsRefused: work.pinsRefused }),
    ...nightParts(night?.clock),
    defaultsUsed: [camp, deal, warmth, night].flatMap((part) => part?.defaultsUsed ?? []),
    findings,
    cautions: CAUTION_KEYS,
  };
}

function keptWidth(rules: HouseRules): Pick<Plan, "keptHalfWidthM"> {
  const keptM = keptHalfWidthM(rules);
  return keptM > rules.footprintHalfWidthM.value ? { keptHalfWidthM: keptM } : {};
}

/** How many lie, how many spares there are, what of kit and pins could not be kept. */
function countFindings({ camp, deal, pinsRefused }: Work, placed: number, spares: number): Finding[] {
  return [
    ...campFindings(camp, placed, camp.sleepers.length),
    ...spareFindings(spares, sparesAsked(camp)),
    ...deal.findings,
    ...refusedPinFindings(pinsRefused),
  ];
}

/** The cost, what it is made of, and how far from the least it may be. */
function costFigures(
  { camp, ground, terms }: Work,
  layout: ChosenBerths,
  people: PeopleDistances,
): Pick<Plan, "cost" | "lowerBound" | "gap" | "method" | "costTerms"> {
  const { search, seats, leastUnits } = layout;
  const places = seats.flatMap(({ place }) => ground.places[place] ?? []);
  const told = toldCostTerms(places, terms, people, camp.rules.weights);
  const units = Math.round(told.reduce((sum, term) => sum + term.cost, 0) * UNITS_PER_M);
  const lower = Math.min(units, leastUnits ?? search.lowerBoundUnits);
  return {
    cost: units / UNITS_PER_M,
    lowerBound: lower / UNITS_PER_M,
    gap: (units - lower) / Math.max(units, 1),
    method: layoutMethod(layout, told, units > lower),
    costTerms: told,
  };
}

/** Who lies where, spare berths left out. */
function lyingAt({ ground }: Work, seats: ChosenBerths["seats"]): Lying[] {
  return seats
    .filter((seat) => !isSpare(seat))
    .map(({ place, kit }) => {
      const at = ground.places[place]?.middle;
      return { sleeper: kit.sleeper, ...(at === undefined ? {} : { at }) };
    });
}

function treesLookedAt(ended: readonly EndedBerth[]): TreesLookedAt {
  const ends = new Map(ended.flatMap(({ ends }) => ends).map((end) => [end.id, end]));
  const looks = [...ends.values()].flatMap(({ looked }) => looked ?? []);
  const [on] = looks.map((look) => look.on).sort((a, b) => byCodeUnit(b, a));
  return {
    done: looks.length,
    of: ends.size,
    by: [...new Set(looks.map(({ by }) => by))].sort(byCodeUnit),
    ...(on === undefined ? {} : { on }),
  };
}

/** Hazards of the site are only known where every berth stands on a map. */
function partsChecked(
  ended: readonly EndedBerth[],
  ground: CampPlaces,
  done: Partial<Readonly<Record<PlanPart, boolean>>>,
): { readonly checked: readonly PlanPart[]; readonly notChecked: readonly PlanPart[] } {
  const onMap = ended.every(({ ends }) => ends.every(({ tree }) => tree !== undefined));
  const site = onMap && ground.funnel.trees > 0;
  const hangs = ended.length > 0;
  const is: Readonly<Record<PlanPart, boolean>> = {
    site,
    hang: hangs,
    strength: hangs,
    trunk: hangs && ended.every(({ berth }) => bothBent(berth)),
    tarp: false,
    rain: false,
    warmth: false,
    night: false,
    cuts: false,
    packing: false,
    ...done,
  };
  const parts = PARTS.map((part) => ({ part, done: is[part] }));
  return {
    checked: parts.filter(({ done }) => done).map(({ part }) => part),
    notChecked: parts.filter(({ done }) => !done).map(({ part }) => part),
  };
}

/** Whether the bending of both trunks was compared: not where nobody measured one. */
function bothBent({ findings, headTree, footTree }: PlannedBerth): boolean {
  const bent = new Set(findings.filter(({ rule }) => rule === "tree.bending").map(({ subject }) => subject));
  return bent.has(`tree/${headTree}`) && bent.has(`tree/${footTree}`);
}

const PARTS: readonly PlanPart[] = [
  "site",
  "hang",
  "strength",
  "trunk",
  "tarp",
  "rain",
  "warmth",
  "night",
  "cuts",
  "packing",
];

function supplyOf({ ground, refusedEverywhere }: Work): Supply {
  const { trees, usable, pairs, blockedBy } = ground.funnel;
  return {
    trees,
    usable,
    pairs,
    blockedBy: { ...blockedBy, hang: refusedEverywhere },
    berths: ground.places.length - refusedEverywhere,
  };
}
