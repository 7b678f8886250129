import { worstFirst, worstVerdict } from "../outcome/finding.ts";
import type { Camp } from "../plan/camp.ts";
import type { BerthKit, PlannedBerth } from "../plan/plan.ts";
import type { Looked } from "../site/tree.ts";
import type { Hang, HangInput, HangLimits, OkRange } from "../statics/hang-types.ts";
import { reversed } from "./bearing.ts";
import type { Anchor, CampPlace } from "./camp-places-types.ts";
import type { DealtKit } from "./dealt-kit.ts";
import type { BerthCase, BerthEnd } from "./findings/berth-case.ts";
import type { Hazards } from "./findings/surroundings.ts";
import { berthFindings } from "./findings/berth-findings.ts";
import { headIsSecond } from "./hang-request.ts";
import { byCodeUnit } from "./order.ts";
import type { ShelteredBerth } from "./shelter/camp-tarps.ts";
import type { TrunkPull } from "./trunk-pulls.ts";

export interface BerthParts {
  readonly id: string;
  readonly camp: Camp;
  readonly hazards: Hazards;
  readonly anchors: readonly Anchor[];
  readonly place: CampPlace;
  readonly kit: DealtKit;
  readonly limits: HangLimits;
  readonly hang: Hang;
  readonly request: HangInput;
  readonly spanWindow?: OkRange;
  /** All that pulls at each tree of the plan, by the index of its anchor. */
  readonly pulls: ReadonlyMap<number, readonly TrunkPull[]>;
  /** The tarp, and what is to be said of it; absent where nobody asked. */
  readonly shelter?: ShelteredBerth;
}

/** One berth of the plan, and its two ends for the count of trees looked at. */
export interface EndedBerth {
  readonly berth: PlannedBerth;
  readonly ends: readonly [head: BerthEnd, foot: BerthEnd];
}

/** Puts together what is known of one berth, with every finding and the verdict that follows from them. */
export function planBerth(parts: BerthParts): EndedBerth {
  const { id, camp, place, kit, limits, hang, request } = parts;
  const isSecond = headIsSecond(place);
  const [first, second] = [endOf(parts, 0), endOf(parts, 1)];
  const [head, foot] = isSecond ? [second, first] : [first, second];
  const setBy = whoSets(camp, kit, Math.max(hang.head.strapHeightM, hang.foot.strapHeightM));
  const trunks = trunksOf(parts, isSecond);
  const window = parts.spanWindow === undefined ? {} : { spanWindow: parts.spanWindow };
  const { tarp, findings: aboutTarp } = parts.shelter ?? NO_SHELTER;
  const aboutHang = berthFindings(
    { id, camp, place, head, foot, kit, hang, request, limits, setBy, trunks, ...window },
    parts.hazards,
  );
  const findings = [...aboutHang, ...aboutTarp].sort(worstFirst);
  const bearingRad =
    place.bearingRad === undefined || !isSecond ? place.bearingRad : reversed(place.bearingRad);
  const berth: PlannedBerth = {
    id,
    sleeper: kit.sleeper.id,
    headTree: head.id,
    footTree: foot.id,
    spanM: place.spanM,
    ...(bearingRad === undefined ? {} : { bearingRad }),
    ...(place.pair === undefined ? {} : { pair: place.pair }),
    groundKnown: place.fallM !== undefined,
    stepItOut: place.stepItOut,
    hang,
    request,
    ...window,
    kit: kitIds(kit),
    ...(tarp === undefined ? {} : { tarp }),
    setBy,
    verdict: worstVerdict(findings.map(({ verdict }) => verdict)),
    findings,
  };
  return { berth, ends: [head, foot] };
}

const NO_SHELTER: ShelteredBerth = { findings: [] };

function endOf({ anchors, place, camp }: BerthParts, end: 0 | 1): BerthEnd {
  const anchor = anchors[end === 0 ? place.first : place.second];
  const tree = anchor?.tree;
  const looked = [tree?.lookedAt, place.lookedAt].find((look) => wasThatDay(look, camp.date));
  return {
    id: anchor?.id ?? "",
    dbhM: place.dbhM[end],
    ...(tree === undefined ? {} : { tree }),
    ...(looked === undefined ? {} : { looked }),
  };
}

function trunksOf({ place, pulls }: BerthParts, headIsSecondTree: boolean): BerthCase["trunks"] {
  const [first, second] = [pulls.get(place.first) ?? [], pulls.get(place.second) ?? []];
  return headIsSecondTree ? { head: second, foot: first } : { head: first, foot: second };
}

/** A look counts on the day of the camp only; where the camp has no day, nobody can say that it was that day. */
function wasThatDay(looked: Looked | undefined, date: string | undefined): boolean {
  return looked !== undefined && looked.on === date;
}

/** The sleeper where the own reach does; else who reaches: leaders first, then by id. */
function whoSets({ sleepers }: Camp, { sleeper }: DealtKit, heightM: number): string {
  if (sleeper.reachM >= heightM) return sleeper.id;
  const helpers = sleepers.filter(({ reachM }) => reachM >= heightM);
  const [helper] = helpers.sort((a, b) => Number(b.leads) - Number(a.leads) || byCodeUnit(a.id, b.id));
  return helper?.id ?? sleeper.id;
}

/** Ids of the items dealt; an assumed item has none. */
function kitIds({ hammock, suspension, tarp, under, over, assumed }: DealtKit): BerthKit {
  return {
    ...(assumed.includes("hammock") ? {} : { hammock: hammock.id }),
    ...(assumed.includes("suspension") ? {} : { suspension: suspension.id }),
    ...(tarp === undefined ? {} : { tarp: tarp.id }),
    ...(under === undefined ? {} : { under: under.id }),
    ...(over === undefined ? {} : { over: over.id }),
  };
}
