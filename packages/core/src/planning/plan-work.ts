import { worstVerdict } from "../outcome/finding.ts";
import type { Camp } from "../plan/camp.ts";
import { CAUTION_KEYS } from "../plan/cautions.ts";
import type { Plan, PlanPart, PlannedBerth, Supply, TreesLookedAt } from "../plan/plan.ts";
import { readingOrder } from "./berth-numbers.ts";
import type { CampPlace, CampPlaces } from "./camp-places-types.ts";
import type { ChooseInput, ChosenBerths } from "./choose-berths.ts";
import { PEOPLE_LIMITS, type PeopleRules } from "./choose-berths-people.ts";
import { toldCostTerms } from "./cost-terms-told.ts";
import { costTerms, placeCosts, UNITS_PER_M, type CostTerm } from "./cost-terms.ts";
import { campFindings, refusedPinFindings } from "./findings/camp-wide.ts";
import type { DealtKit } from "./dealt-kit.ts";
import { hazardsOf } from "./findings/surroundings.ts";
import { mostMomentNm } from "./findings/trunk.ts";
import { headIsSecond } from "./hang-request.ts";
import type { LinearSolver } from "./linear-solver.ts";
import { byCodeUnit } from "./order.ts";
import { planBerth, type EndedBerth } from "./plan-berth.ts";
import { NO_GROUND } from "./no-ground.ts";
import type { PreparedCamp } from "./prepare-camp.ts";
import type { SpanExtras } from "./span-window.ts";
import { trunkPulls } from "./trunk-pulls.ts";
import { unplacedSleepers } from "./unplaced.ts";
import { peopleFindings } from "./wish-findings.ts";
import { peopleDistances, type PeopleDistances } from "./wish-measures.ts";

/** A prepared camp while it is planned. */
export interface Work extends PreparedCamp {
  readonly engine: string;
  readonly terms: readonly CostTerm[];
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
    ...(solver === undefined ? {} : { solver }),
  };
}

/** Groups of one zone one after the other, so that they come to lie beside each other. */
function peopleRules({ groups, rules }: Camp): PeopleRules {
  const sorted = [...groups].sort((a, b) => byCodeUnit(a.zone ?? "", b.zone ?? "") || byCodeUnit(a.id, b.id));
  return { groups: sorted, ...(rules.weights === undefined ? {} : { weights: rules.weights }) };
}

/** The plan of a layout: every hang in full, every finding, and why anybody goes without. */
export function planOf(work: Work, { search, seats }: ChosenBerths): Plan {
  const { camp, deal, ground } = work;
  const ended = berthsOf(work, seats);
  const berths = ended.map(({ berth }) => berth);
  const asked = camp.sleepers.length;
  const people = distancesOf(work, seats);
  const findings = [
    ...campFindings(camp, berths.length, asked),
    ...deal.findings,
    ...refusedPinFindings(work.pinsRefused),
    ...peopleFindings(people),
  ];
  const verdicts = [...findings, ...berths].map(({ verdict }) => verdict);
  const { checked, notChecked } = partsChecked(ended, ground);
  const places = seats.flatMap(({ place }) => ground.places[place] ?? []);
  const told = toldCostTerms(places, work.terms, people, camp.rules.weights);
  const units = Math.round(told.reduce((sum, term) => sum + term.cost, 0) * UNITS_PER_M);
  return {
    campName: camp.name,
    engine: work.engine,
    verdict: worstVerdict(verdicts),
    treesLookedAt: treesLookedAt(ended),
    checked,
    notChecked,
    asked,
    placed: berths.length,
    bound: search.bound,
    cost: units / UNITS_PER_M,
    lowerBound: search.lowerBoundUnits / UNITS_PER_M,
    gap: (units - search.lowerBoundUnits) / Math.max(units, 1),
    method: search.method,
    costTerms: told,
    berths,
    unplaced: unplacedSleepers(
      { ...work, placed: new Set(berths.map(({ sleeper }) => sleeper)), bound: search.bound },
      camp.sleepers,
    ),
    supply: supplyOf(work),
    ...(work.pinsRefused.length === 0 ? {} : { pinsRefused: work.pinsRefused }),
    defaultsUsed: [...camp.defaultsUsed, ...deal.defaultsUsed],
    findings,
    cautions: CAUTION_KEYS,
  };
}

function distancesOf({ camp, ground }: Work, seats: ChosenBerths["seats"]): PeopleDistances {
  const lying = seats.map(({ place, kit }) => {
    const at = ground.places[place]?.middle;
    return { sleeper: kit.sleeper, ...(at === undefined ? {} : { at }) };
  });
  return peopleDistances(lying, camp.groups, PEOPLE_LIMITS);
}

function berthsOf({ camp, ground, classes, desk }: Work, seats: ChosenBerths["seats"]): EndedBerth[] {
  const places = seats.flatMap(({ place }) => ground.places[place] ?? []);
  const hazards = hazardsOf(camp.ground ?? NO_GROUND);
  const hung = readingOrder(places, camp.ground ?? NO_GROUND).flatMap((index, number) => {
    const seat = seats[index];
    const place = places[index];
    const fit = classes[seat?.classIndex ?? -1];
    if (seat === undefined || place === undefined || fit === undefined) return [];
    const outcome = desk.hangOf(seat.classIndex, seat.place);
    if (!outcome.ok) return [];
    const extras = spanExtras(seat.kit, place, ground);
    const window = desk.spanWindowOf(seat.classIndex, seat.place, camp.rules, extras);
    return [
      {
        id: String(number + 1),
        place,
        kit: seat.kit,
        limits: fit.limits,
        hang: outcome.value,
        request: desk.requestOf(seat.classIndex, seat.place),
        ...(window === undefined ? {} : { spanWindow: window }),
      },
    ];
  });
  const pulls = trunkPulls(hung);
  return hung.map((berth) => planBerth({ ...berth, camp, hazards, anchors: ground.anchors, pulls }));
}

/** What besides the hang may end a berth's window of spans: room for the tarp, bending of a trunk that is known. */
function spanExtras({ tarp }: DealtKit, place: CampPlace, { anchors }: CampPlaces): SpanExtras {
  const ends = [place.first, place.second].map((anchor, end) => {
    const tree = anchors[anchor]?.tree;
    const isMeasured = tree !== undefined || !place.dbhAssumed;
    return isMeasured ? mostMomentNm(tree, place.dbhM[end] ?? 0) : Infinity;
  });
  const [head, foot] = headIsSecond(place) ? ends.toReversed() : ends;
  return {
    ...(tarp === undefined ? {} : { tarpRidgeM: tarp.ridgeM }),
    bendMaxNM: { head: head ?? Infinity, foot: foot ?? Infinity },
  };
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
