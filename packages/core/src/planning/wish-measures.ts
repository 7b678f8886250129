import { LENGTH_SLACK_M } from "../quantity/constants.ts";
import type { GroundXY } from "../site/obstacle.ts";
import type { Group, Sleeper } from "../plan/camp.ts";
import { byCodeUnit } from "./order.ts";

/** A sleeper and the middle of the berth; no `at` where nobody knows where that is. */
export interface Lying {
  readonly sleeper: Sleeper;
  readonly at?: GroundXY;
}

/** How far apart two people lie, and how far they should [m]. */
export interface Distance {
  readonly sleeper: string;
  readonly other: string;
  readonly apartM: number;
  readonly limitM: number;
  readonly met: boolean;
  /** Of two who wish to be near though their zones keep them apart: they lie at least so far apart [m]. */
  readonly zonesM?: number;
}

/** Distances of one group from its hub. */
export interface GroupDistances {
  readonly group: string;
  /** Whose berth is the hub. */
  readonly hub: string;
  readonly members: readonly Distance[];
}

export interface PeopleDistances {
  readonly groups: readonly GroupDistances[];
  readonly near: readonly Distance[];
  readonly apart: readonly Distance[];
  /** Pairs of different zones that lie too near each other. */
  readonly zones: readonly Distance[];
  /** Pairs of a grown person and one under 18 that lie too near each other. */
  readonly ages: readonly Distance[];
}

export interface PeopleLimits {
  readonly nearM: number;
  readonly apartM: number;
  /** Between grown people and those under 18; absent: no rule. */
  readonly adultYouthM?: number;
}

/**
 * How far people lie from whom they should be near or apart from, by berth middles alone.
 *
 * The hub of a group is the berth of that leader (of anybody, where nobody leads) from which fewest of the group lie
 * beyond its radius, and of these the one whose farthest is nearest. A wish that two say about each other counts once.
 * People of groups with different zones keep apart as those do who wish so, grown people and those under 18 as the
 * house says; whose age nobody tells is neither.
 *
 * Shapes   who lies where → distances sorted by ids; whoever has no berth, or one nobody can place, is left out
 * Units    metres; limits are inclusive with 1e-9 m slack
 * Source   common-practice (handbook/layout.md: people)
 */
export function peopleDistances(
  lying: readonly Lying[],
  groups: readonly Group[],
  limits: PeopleLimits,
): PeopleDistances {
  const placed = [...lying].sort((a, b) => byCodeUnit(a.sleeper.id, b.sleeper.id));
  const byId = new Map(placed.map((one) => [one.sleeper.id, one]));
  const zoneOf = new Map(groups.map(({ id, zone }) => [id, zone]));
  const zoneIn = (id: string): string | undefined => zoneOf.get(byId.get(id)?.sleeper.group ?? "");
  const areWalled = ({ sleeper, other }: Distance): boolean => {
    const [one, two] = [zoneIn(sleeper), zoneIn(other)];
    return one !== undefined && two !== undefined && one !== two;
  };
  return {
    groups: groups.flatMap((group) => groupDistances(placed, group)),
    near: wished(placed, byId, "near", (apartM) => atMost(apartM, limits.nearM)).map((one) =>
      areWalled(one) ? { ...one, zonesM: limits.apartM } : one,
    ),
    apart: wished(placed, byId, "apart", (apartM) => atLeast(apartM, limits.apartM)),
    zones: acrossWall(placed, ({ group }) => zoneOf.get(group ?? ""), limits.apartM),
    ages: limits.adultYouthM === undefined ? [] : acrossWall(placed, isOfAge, limits.adultYouthM),
  };
}

/** Whether somebody is grown up; undefined where nobody tells the age. */
export function isOfAge({ ageYears }: Sleeper): boolean | undefined {
  return ageYears === undefined ? undefined : ageYears >= OF_AGE_YEARS;
}

/** Source: house-convention; organisations draw the line at 18. */
const OF_AGE_YEARS = 18;

interface Met {
  readonly limitM: number;
  readonly met: boolean;
}

function atMost(apartM: number, limitM: number): Met {
  return { limitM, met: apartM <= limitM + LENGTH_SLACK_M };
}

function atLeast(apartM: number, limitM: number): Met {
  return { limitM, met: apartM >= limitM - LENGTH_SLACK_M };
}

function groupDistances(placed: readonly Lying[], { id, withinM }: Group): GroupDistances[] {
  const own = placed.filter(({ sleeper }) => sleeper.group === id);
  const leaders = own.filter(({ sleeper }) => sleeper.leads);
  let best: GroupDistances | undefined;
  let least = Infinity;
  for (const hub of leaders.length > 0 ? leaders : own) {
    const members = own.flatMap((one) => distance(one, hub, (apartM) => atMost(apartM, withinM)));
    const beyond = members.filter(({ met }) => !met).length;
    const farthest = members.reduce((most, { apartM }) => Math.max(most, apartM), 0);
    if (beyond * FARTHER_THAN_ANY_M + farthest >= least) continue;
    least = beyond * FARTHER_THAN_ANY_M + farthest;
    best = { group: id, hub: hub.sleeper.id, members };
  }
  return best === undefined ? [] : [best];
}

/** More than any distance in a camp. */
const FARTHER_THAN_ANY_M = 1e6;

function wished(
  placed: readonly Lying[],
  byId: ReadonlyMap<string, Lying>,
  wish: "near" | "apart",
  judge: (apartM: number) => Met,
): Distance[] {
  const said = new Set<string>();
  return placed.flatMap((one) =>
    [...one.sleeper[wish]].sort(byCodeUnit).flatMap((id) => {
      const other = byId.get(id);
      const key = JSON.stringify([one.sleeper.id, id].sort(byCodeUnit));
      if (other === undefined || said.has(key)) return [];
      said.add(key);
      return distance(one, other, judge);
    }),
  );
}

/** Pairs of different sides that lie too near each other. */
function acrossWall(
  placed: readonly Lying[],
  sideOf: (sleeper: Sleeper) => string | boolean | undefined,
  limitM: number,
): Distance[] {
  const sided = placed.flatMap((one) => {
    const side = sideOf(one.sleeper);
    return side === undefined ? [] : [{ one, side }];
  });
  return sided.flatMap(({ one, side }, at) =>
    sided
      .slice(at + 1)
      .filter((other) => other.side !== side)
      .flatMap((other) => distance(one, other.one, (apartM) => atLeast(apartM, limitM)))
      .filter(({ met }) => !met),
  );
}

/** Nothing where one of the two places is not known, nor between a person and themselves. */
function distance(one: Lying, other: Lying, judge: (apartM: number) => Met): Distance[] {
  if (one.at === undefined || other.at === undefined || one === other) return [];
  const [east, north] = [one.at[0] - other.at[0], one.at[1] - other.at[1]];
  const apartM = Math.sqrt(east * east + north * north);
  return [{ sleeper: one.sleeper.id, other: other.sleeper.id, apartM, ...judge(apartM) }];
}
