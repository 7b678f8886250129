import { compare, type Finding } from "../outcome/finding.ts";
import type { Camp, Pin } from "../plan/camp.ts";
import type { RefusedPin } from "../plan/plan.ts";
import type { CampPlace, CampPlaces } from "./camp-places-types.ts";
import type { DealtKit } from "./dealt-kit.ts";
import type { KitDeal } from "./deal-kit.ts";
import { hazardsOf } from "./findings/surroundings.ts";
import { fitClasses } from "./fit-classes.ts";
import { HangDesk } from "./hang-desk.ts";
import { NO_GROUND } from "./no-ground.ts";
import { broken, findNamedPair, pairFaults, type NamedPair } from "./pair-faults.ts";
import { planBerth } from "./plan-berth.ts";
import { refusedFindings } from "./refused-hang.ts";
import { pullLimits } from "./pull-limits.ts";
import { trunkPulls } from "./trunk-pulls.ts";

/** A sleeper who keeps a place. */
export interface KeptPin {
  readonly place: number;
  readonly kit: DealtKit;
}

export interface JudgedPins {
  readonly kept: readonly KeptPin[];
  readonly refused: readonly RefusedPin[];
  /** The ground with the head where the pins want it. */
  readonly ground: CampPlaces;
}

/**
 * Which pins can be kept: those at a place by the house rules, whose hang is not refused, whose berth has no finding
 * "do not hang", and that go with the pins before them.
 *
 * Shapes   pins in the order of the file → each kept, or refused with every reason
 * Holds    any pins; of two for one sleeper the first counts
 * Source   house-convention (handbook/planning.md: pins)
 */
export function judgePins(camp: Camp, deal: KitDeal, given: CampPlaces): JudgedPins {
  const kept: KeptPin[] = [];
  const refused: RefusedPin[] = [];
  const places = [...given.places];
  const ground: CampPlaces = { ...given, places };
  for (const pin of camp.pins ?? []) {
    const pair = findNamedPair(camp, ground, pin);
    const place = pair === undefined ? -1 : indexOfPlace(ground, pair, pin);
    const there = places[place];
    if (there !== undefined) places[place] = turned(ground, there, pin);
    const because = faultsOf({ camp, deal, ground, kept }, pin, pair, place);
    const kit = deal.dealt.find(({ sleeper }) => sleeper.id === pin.sleeper);
    if (because.length === 0 && kit !== undefined && place >= 0) {
      kept.push({ place, kit });
      continue;
    }
    if (there !== undefined) places[place] = there;
    refused.push({ sleeper: pin.sleeper, trees: pair?.ids ?? pin.trees ?? [pin.pair ?? "", ""], because });
  }
  return { kept, refused, ground };
}

interface PinCase {
  readonly camp: Camp;
  readonly deal: KitDeal;
  readonly ground: CampPlaces;
  readonly kept: readonly KeptPin[];
}

function faultsOf(
  given: PinCase,
  { sleeper }: Pin,
  pair: NamedPair | undefined,
  place: number,
): readonly Finding[] {
  const { camp, deal, ground, kept } = given;
  const subject = `sleeper/${sleeper}`;
  const short = deal.short.find((one) => one.sleeper.id === sleeper);
  if (short !== undefined) return short.because;
  if (pair === undefined) return [];
  if (place < 0) return pairFaults(camp, ground, pair, subject);
  const kit = deal.dealt.find((one) => one.sleeper.id === sleeper);
  if (kit === undefined) return [];
  const twice = kept.some((one) => one.kit.sleeper.id === sleeper);
  if (twice) return [broken("site.taken", subject, [sleeper])];
  const inTheWay = clashes(given, place, subject);
  return inTheWay.length > 0 ? inTheWay : berthFaults(given, kit, place);
}

/** What pins before this one stand in its way. */
function clashes({ camp, ground, kept }: PinCase, place: number, subject: string): Finding[] {
  const { first = -1, second = -1 } = ground.places[place] ?? {};
  const most = camp.rules.hammocksPerTree.value;
  const idOf = (anchor: number): string => ground.anchors[anchor]?.id ?? "";
  const found: Finding[] = [];
  for (const other of kept) {
    const who = other.kit.sleeper.id;
    const apart = ground.conflicts.some(
      ([a, b]) => a === Math.min(place, other.place) && b === Math.max(place, other.place),
    );
    if (other.place === place) found.push(broken("site.taken", subject, [who]));
    else if (apart) found.push(broken("site.in-the-way", subject, [who]));
  }
  if (found.length > 0) return found;
  for (const anchor of [first, second]) {
    const there = kept.filter((other) => {
      const at = ground.places[other.place];
      return at?.first === anchor || at?.second === anchor;
    }).length;
    if (there >= most) found.push(tooMany(idOf(anchor), there + 1, most));
  }
  return found;
}

function tooMany(tree: string, demand: number, limit: number): Finding {
  const subject = `tree/${tree}`;
  const compared = {
    rule: "site.capacity",
    source: "house-rules",
    subject,
    sense: "at-most",
    demand,
    limit,
    unit: "1",
  } as const;
  return compare(compared);
}

/** The hang, and every finding of the berth that says do not hang. */
function berthFaults({ camp, ground }: PinCase, kit: DealtKit, place: number): Finding[] {
  const there = ground.places[place];
  const [fit] = fitClasses([kit], camp);
  if (there === undefined || fit === undefined) return [];
  const desk = new HangDesk([there], [fit], pullLimits({ ...ground, places: [there] }, camp.rules));
  const hang = desk.hangOf(0, 0);
  const trees = [ground.anchors[there.first]?.id ?? "", ground.anchors[there.second]?.id ?? ""] as const;
  if (!hang.ok) return refusedFindings({ trees, kit, limits: fit.limits, refusals: hang.refusals });
  const { berth } = planBerth({
    id: "1",
    camp,
    hazards: hazardsOf(camp.ground ?? NO_GROUND),
    anchors: ground.anchors,
    place: there,
    kit,
    limits: fit.limits,
    hang: hang.value,
    request: desk.requestOf(0, 0),
    pulls: trunkPulls([{ id: "1", place: there, hang: hang.value }]),
  });
  return berth.findings.filter(({ verdict }) => verdict === "do-not-hang");
}

function indexOfPlace({ places, anchors }: CampPlaces, { ids }: NamedPair, { pair }: Pin): number {
  return places.findIndex(
    ({ first, second, ...place }) =>
      anchors[first]?.id === ids[0] &&
      anchors[second]?.id === ids[1] &&
      (pair === undefined || place.pair === pair),
  );
}

/** The place with its head at the tree that the pin names. */
function turned({ anchors }: CampPlaces, place: CampPlace, { head }: Pin): CampPlace {
  if (head === undefined) return place;
  const names = [anchors[place.first], anchors[place.second]].map((anchor) => [
    anchor?.id,
    anchor?.tree?.tag,
  ]);
  const at = names.findIndex((known) => known.includes(head));
  return at < 0 ? place : { ...place, headSecond: at === 1 };
}
