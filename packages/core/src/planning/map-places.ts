import type { Ground } from "../plan/camp.ts";
import { DEFAULTS } from "../plan/defaults.ts";
import { keptHalfWidthM, type HouseRules } from "../plan/house-rules.ts";
import { STEPPED_SPAN_ERROR_RATIO } from "../statics/hang-errors.ts";
import { berthPlaces } from "../site/berth-places.ts";
import type { Place, PlaceBlock, Places } from "../site/places-types.ts";
import type { Tree } from "../site/tree.ts";
import type { CampPlace, CampPlaces } from "./camp-places-types.ts";
import { bearing } from "./bearing.ts";
import { byCodeUnit } from "./order.ts";

/** What the map alone offers: every pair of usable trees in range whose strip of ground is free. */
export function mapPlaces(ground: Ground, rules: HouseRules): CampPlaces {
  const trees = [...ground.trees].sort((a, b) => byCodeUnit(a.id, b.id));
  const found = berthPlaces({
    trees,
    obstacles: ground.obstacles,
    spanMinM: rules.spanMinM.value,
    spanMaxM: rules.spanMaxM.value,
    trunkMinM: rules.trunkMinM.value,
    halfWidthM: rules.footprintHalfWidthM.value,
    keptHalfWidthM: keptHalfWidthM(rules),
    deadTreeHeights: rules.deadTreeHeights.value,
    doubtfulTreeHeights: (rules.doubtfulTreeHeights ?? rules.deadTreeHeights).value,
    ...(ground.offM === undefined ? {} : { offM: ground.offM }),
  });
  return {
    anchors: trees.map((tree) => ({ id: tree.id, tree })),
    places: found.places.flatMap((place) => placeOf(place, trees, ground)),
    conflicts: found.conflicts,
    blocked: found.blocked.flatMap(({ first, second, by, cause }) => {
      const [a, b] = [trees[first], trees[second]];
      return a === undefined || b === undefined ? [] : [{ trees: [a, b] as const, by, cause }];
    }),
    funnel: {
      trees: trees.length,
      usable: found.usable,
      pairs: found.pairs,
      blockedBy: countBlocks(found),
    },
  };
}

function placeOf(place: Place, trees: readonly Tree[], ground: Ground): CampPlace[] {
  const [a, b] = [trees[place.first], trees[place.second]];
  if (a === undefined || b === undefined) return [];
  const fallM = fallBetween(a, b, ground.slope);
  return [
    {
      first: place.first,
      second: place.second,
      spanM: place.spanM,
      spanErrorM: spanErrorOf(place.spanM, ground),
      dbhM: [a.dbhM, b.dbhM],
      dbhAssumed: false,
      ...(fallM === undefined ? {} : { fallM }),
      bearingRad: bearing(b.xM - a.xM, b.yM - a.yM),
      stepItOut: ground.source !== DEFAULTS["ground.source"].value,
      stepped: false,
      middle: [(a.xM + b.xM) / 2, (a.yM + b.yM) / 2],
      footprint: place.footprint,
      ...(place.bare === undefined ? {} : { bare: place.bare }),
    },
  ];
}

/** Of two positions; never more than by stepping the span out, as whoever ties there can. */
function spanErrorOf(spanM: number, { source, positionErrorM }: Ground): number {
  const stepped = STEPPED_SPAN_ERROR_RATIO * spanM;
  return source === "taped" ? Math.min(Math.SQRT2 * positionErrorM, stepped) : stepped;
}

/** Ground at `b` below the ground at `a`: by their own elevations, else by the slope of the site [m]. */
function fallBetween(a: Tree, b: Tree, slope: Ground["slope"]): number | undefined {
  if (a.elevationM !== undefined && b.elevationM !== undefined) return a.elevationM - b.elevationM;
  if (slope === undefined) return undefined;
  const downhillM = (b.xM - a.xM) * Math.sin(slope.downhillRad) + (b.yM - a.yM) * Math.cos(slope.downhillRad);
  return Math.round(slope.riseRatio * downhillM * PER_TENTH_MICRON) / PER_TENTH_MICRON;
}

/** A sine's value that decides which end is lower is rounded first, the same on every machine. */
const PER_TENTH_MICRON = 1e7;

function countBlocks({ blocked }: Places): Record<PlaceBlock, number> {
  const counts = { stem: 0, "dead-tree": 0, overhead: 0, obstacle: 0 };
  blocked.forEach(({ by }) => (counts[by] += 1));
  return counts;
}
