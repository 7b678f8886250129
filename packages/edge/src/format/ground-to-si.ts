import {
  degrees,
  type Ground,
  type GroundXY,
  type HouseRules,
  type Obstacle,
  type ObstacleShape,
  type Spot,
  type StatedPair,
  type Tree,
} from "@nightspan/core";
import type {
  CampDocument,
  GroundDocument,
  ObstacleDocument,
  PairDocument,
  TreeDocument,
} from "./camp-document.ts";
import type { DefaultsLedger } from "./defaults-ledger.ts";
import { convert, present } from "./optional.ts";
import { stepOf } from "./people-to-si.ts";

export function groundToSi(
  document: CampDocument,
  rules: HouseRules,
  defaults: DefaultsLedger,
): Ground | undefined {
  const { ground } = document;
  if (ground === undefined) return undefined;
  return present({
    trees: (ground.trees ?? []).map((tree) => treeToSi(tree, defaults)),
    pairs: (ground.pairs ?? []).map((pair) => pairToSi(pair, document, defaults)),
    obstacles: (ground.obstacles ?? []).map((obstacle) => obstacleToSi(obstacle, rules, defaults)),
    slope: slopeToSi(ground),
    source: ground.source ?? defaults.take("ground.source"),
    positionErrorM: ground.position_error_m ?? defaults.take("ground.position_error_m"),
    hollow: ground.hollow,
    canopy: ground.canopy,
    origin: originToSi(ground),
    meetingPoint: spotToSi(ground.meeting_point),
    muster: spotToSi(ground.muster),
    fallback: spotToSi(ground.fallback),
  });
}

function originToSi({ origin }: GroundDocument): Ground["origin"] {
  return origin && { latDeg: origin.lat_deg, lonDeg: origin.lon_deg };
}

function slopeToSi({ slope }: GroundDocument): Ground["slope"] {
  return slope && { riseRatio: slope.rise_ratio, downhillRad: degrees(slope.downhill_deg) };
}

function treeToSi(tree: TreeDocument, defaults: DefaultsLedger): Tree {
  const condition = tree.condition ?? defaults.take("ground.trees[].condition", tree.id);
  const falls = condition === "dead" || condition === "doubtful";
  if (falls && tree.height_m === undefined) defaults.take("ground.trees[].height_m", tree.id);
  return present({
    id: tree.id,
    xM: tree.x_m,
    yM: tree.y_m,
    dbhM: diameterM(tree),
    condition,
    species: tree.species,
    lookedAt: tree.looked_at,
    heightM: tree.height_m,
    elevationM: tree.elevation_m,
    leanRad: convert(tree.lean_deg, degrees),
    tag: tree.tag ?? tree.id,
    use: tree.use ?? defaults.take("ground.trees[].use", tree.id),
  });
}

function diameterM({ dbh_cm, girth_cm }: TreeDocument): number {
  return (dbh_cm ?? (girth_cm ?? 0) / Math.PI) / 100;
}

function pairToSi(pair: PairDocument, document: CampDocument, defaults: DefaultsLedger): StatedPair {
  const assumed = pair.dbh_cm === undefined ? defaults.take("ground.pairs[].dbh_cm", pair.id) : undefined;
  const [first, second] = pair.dbh_cm ?? [assumed ?? 0, assumed ?? 0];
  return present({
    id: pair.id,
    trees: pair.trees,
    spanM: pair.span_m ?? (pair.steps ?? 0) * stepperStepM(pair, document, defaults),
    stepped: pair.span_m === undefined || document.ground?.source === "stepped",
    bearingRad: convert(pair.bearing_deg, degrees),
    fallM: pair.fall_m,
    dbhM: [first / 100, second / 100] as const,
    dbhAssumed: assumed !== undefined,
    lookedAt: pair.looked_at,
    conditions: pair.conditions,
    use: pair.use,
    tooNear: pair.too_near ?? [],
  });
}

/** Whose steps they were: the one named, else the first who leads, else the first of the list. */
function stepperStepM(pair: PairDocument, { sleepers }: CampDocument, defaults: DefaultsLedger): number {
  const named = sleepers.find(({ id }) => id === pair.stepped_by);
  const stepper = named ?? sleepers.find(({ leads }) => leads === true) ?? sleepers[0];
  if (stepper === undefined) return 0;
  if (named === undefined) defaults.note("ground.pairs[].stepped_by", stepper.id, pair.id);
  return stepOf(stepper);
}

function obstacleToSi(obstacle: ObstacleDocument, rules: HouseRules, defaults: DefaultsLedger): Obstacle {
  const { id, kind } = obstacle;
  const setbackM = obstacle.setback_m ?? usualSetback(kind, id, rules, defaults);
  return { id, kind, shape: shapeToSi(obstacle.shape), setbackM };
}

function usualSetback(
  kind: Obstacle["kind"],
  id: string,
  rules: HouseRules,
  defaults: DefaultsLedger,
): number {
  return kind === "overhead"
    ? defaults.take("ground.obstacles[].setback_m", id)
    : rules.setbacksM[kind].value;
}

function shapeToSi(shape: ObstacleDocument["shape"]): ObstacleShape {
  switch (shape.type) {
    case "Point":
      return { type: "point", at: level(shape.coordinates) };
    case "LineString":
      return { type: "line", points: shape.coordinates.map(level) };
    case "Polygon":
      return { type: "polygon", ring: (shape.coordinates[0] ?? []).slice(0, -1).map(level) };
  }
}

function level([x, y]: readonly [number, number, ...unknown[]]): GroundXY {
  return [x, y];
}

function spotToSi(spot: GroundDocument["meeting_point"]): Spot | undefined {
  if (spot === undefined) return undefined;
  if (typeof spot === "string") return { note: spot };
  const { x_m, y_m, note } = spot;
  return present({ at: x_m === undefined || y_m === undefined ? undefined : ([x_m, y_m] as const), note });
}
