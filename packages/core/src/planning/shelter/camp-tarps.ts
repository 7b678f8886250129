import { kept, byRule, type Finding } from "../../outcome/finding.ts";
import type { Camp } from "../../plan/camp.ts";
import type { BerthTarp } from "../../plan/tarp-types.ts";
import { reversed } from "../bearing.ts";
import type { CampPlaces } from "../camp-places-types.ts";
import { berthSubject } from "../findings/berth-case.ts";
import { headIsSecond } from "../hang-request.ts";
import { NO_GROUND } from "../no-ground.ts";
import type { TrunkPull } from "../trunk-pulls.ts";
import { findBerthTarp } from "./berth-tarp.ts";
import type { GuySurroundings, MapFrame } from "./guy-conflicts.ts";
import { tarpWeather, type HungPlace, type TarpWeather } from "./shelter-place.ts";

/** The tarp of a berth where it has one, and what is to be said of it. */
export interface ShelteredBerth {
  readonly tarp?: BerthTarp;
  readonly findings: readonly Finding[];
}

/** Pitches the tarp of every berth of a camp, by the number of the berth. */
export function campTarps(
  camp: Camp,
  ground: CampPlaces,
  hung: readonly HungPlace[],
): ReadonlyMap<string, ShelteredBerth> {
  const weather = tarpWeather(camp);
  const { trees, obstacles } = camp.ground ?? NO_GROUND;
  const around: GuySurroundings = { trees, obstacles, berths: hung };
  return new Map(hung.map((berth) => [berth.id, sheltered(camp, ground, weather, around, berth)]));
}

function sheltered(
  camp: Camp,
  ground: CampPlaces,
  weather: TarpWeather,
  around: GuySurroundings,
  hung: HungPlace,
): ShelteredBerth {
  const dealt = hung.kit.tarp;
  if (dealt === undefined) return { findings: weather.rainMmH > 0 ? [noTarp(hung)] : [] };
  const frame = mapFrame(ground, hung);
  const found = findBerthTarp({
    camp,
    weather,
    hung,
    around: { ...around, trees: treesNear(around, hung, ground) },
    effort: "few",
    tarps: [dealt],
    ...(frame === undefined ? {} : { frame }),
  });
  if (found === undefined) return { findings: [notPitched(hung, dealt.id)] };
  return { tarp: found.tarp, findings: found.tarp.findings };
}

/** Trees that a guy could meet: near the berth, its own two left out. */
export function treesNear({ trees }: GuySurroundings, { place }: HungPlace, { anchors }: CampPlaces) {
  const { middle } = place;
  if (middle === undefined) return [];
  const own = new Set([anchors[place.first]?.id, anchors[place.second]?.id]);
  return trees.filter(
    ({ id, xM, yM }) => !own.has(id) && (xM - middle[0]) ** 2 + (yM - middle[1]) ** 2 < NEAR_M * NEAR_M,
  );
}

const NEAR_M = 7;

/** Where the berth's coordinates start on the map, and which way they run. */
export function mapFrame({ anchors }: CampPlaces, { place }: HungPlace): MapFrame | undefined {
  const isSecond = headIsSecond(place);
  const tree = anchors[isSecond ? place.second : place.first]?.tree;
  if (tree === undefined || place.bearingRad === undefined) return undefined;
  const bearingRad = isSecond ? reversed(place.bearingRad) : place.bearingRad;
  return { head: [tree.xM, tree.yM], bearingRad };
}

/** Of the one tarp that rain asks for, none. */
function noTarp({ id }: HungPlace): Finding {
  return kept(
    {
      rule: "tarp.none",
      source: "common-practice",
      subject: berthSubject(id, "tarp"),
      sense: "at-least",
      demand: 0,
      limit: 1,
      unit: "1",
    },
    "look-again",
  );
}

function notPitched({ id }: HungPlace, item: string): Finding {
  return byRule(
    {
      rule: "tarp.no-pitch",
      source: "tarp-geometry",
      subject: berthSubject(id, "tarp"),
      sense: "at-least",
      demand: 0,
      limit: 1,
      unit: "1",
      about: [item],
    },
    "look-again",
  );
}

/** What the ridges do to the trees, by the index of the anchor, to be added to the pulls of the hangs. */
export function withRidgePulls(
  pulls: ReadonlyMap<number, readonly TrunkPull[]>,
  hung: readonly HungPlace[],
  tarps: ReadonlyMap<string, ShelteredBerth>,
): ReadonlyMap<number, readonly TrunkPull[]> {
  const all = new Map(pulls);
  for (const { id, place } of hung) {
    const onTrees = tarps.get(id)?.tarp?.ridge.onTrees;
    if (onTrees === undefined) continue;
    const [first, second] = headIsSecond(place) ? [onTrees.foot, onTrees.head] : [onTrees.head, onTrees.foot];
    all.set(place.first, [...(all.get(place.first) ?? []), { berth: id, ...first }]);
    all.set(place.second, [...(all.get(place.second) ?? []), { berth: id, ...second }]);
  }
  return all;
}
