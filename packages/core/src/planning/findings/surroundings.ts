import { byRule, compare, kept, worstFirst, type Finding } from "../../outcome/finding.ts";
import type { Ground } from "../../plan/camp.ts";
import { keptHalfWidthM, type HouseRules } from "../../plan/house-rules.ts";
import { pointToConvex } from "../../geometry/polygon-distance.ts";
import { estimatedHeightM } from "../../site/estimated-height.ts";
import type { GroundXY, Obstacle } from "../../site/obstacle.ts";
import { hexagonFootprint } from "../../site/hexagon-footprint.ts";
import { roomFor } from "../../site/position-room.ts";
import { shapeToFootprintM } from "../../site/shape-distance.ts";
import type { Tree } from "../../site/tree.ts";
import type { BlockedStrip } from "../camp-places-types.ts";
import { surveyOffM } from "../survey-off.ts";
import { berthSubject, type BerthCase } from "./berth-case.ts";

/** All that may fall or burn in a camp, sorted out once for all its berths. */
export interface Hazards {
  readonly falling: readonly Tree[];
  readonly overhead: readonly Obstacle[];
  readonly setbacks: readonly Obstacle[];
  /** Positions for which places keep room may be off by so much [m]. */
  readonly offM: number;
}

export function hazardsOf(ground: Pick<Ground, "trees" | "obstacles" | "offM">): Hazards {
  return {
    offM: ground.offM ?? 0,
    falling: ground.trees.filter(({ condition }) => condition === "dead" || condition === "doubtful"),
    overhead: ground.obstacles.filter(({ kind }) => kind === "overhead"),
    setbacks: ground.obstacles.filter(({ kind }) => kind !== "overhead"),
  };
}

/**
 * How far the berth's ground is from what may fall or burn: for dead and doubtful trees, overhead hazards and
 * set-backs, each the one that comes nearest to its limit. Nothing for a berth that is not on the map.
 */
export function surroundingFindings(berth: BerthCase, hazards: Hazards): Finding[] {
  const { footprint } = berth.place;
  if (footprint === undefined) return [];
  const { rules, ground } = berth.camp;
  const { aroundM: roomM } = roomFor({
    offM: ground === undefined ? 0 : surveyOffM(ground),
    halfWidthM: keptHalfWidthM(rules),
    spanMinM: berth.place.spanM,
  });
  const strip = { subject: berthSubject(berth.id), footprint, rules, roomM };
  return [
    ...nearest(hazards.falling.flatMap((tree) => fallingTree(strip, tree))),
    ...nearest(hazards.overhead.map((obstacle) => obstacleFinding(strip, obstacle))),
    ...nearest(hazards.setbacks.map((obstacle) => obstacleFinding(strip, obstacle))),
  ];
}

/** What stands in the way of every pair of a map: for each cause the pair that it leaves the most room. */
export function blockedFindings(
  subject: string,
  blocked: readonly BlockedStrip[],
  { falling, overhead, setbacks, offM }: Hazards,
  rules: HouseRules,
): Finding[] {
  const trees = new Map(falling.map((tree) => [tree.id, tree]));
  const obstacles = new Map([...overhead, ...setbacks].map((obstacle) => [obstacle.id, obstacle]));
  const halfWidthM = keptHalfWidthM(rules);
  const { aroundM: roomM } = roomFor({ offM, halfWidthM, spanMinM: rules.spanMinM.value });
  const best = new Map<string, Finding>();
  for (const { trees: ends, by, cause } of blocked) {
    const [a, b] = ends.map(({ xM, yM }): GroundXY => [xM, yM]);
    if (by === "stem" || a === undefined || b === undefined) continue;
    const footprint = hexagonFootprint(a, b, halfWidthM);
    const strip = { subject, rules, footprint, roomM };
    const [tree, obstacle] = by === "dead-tree" ? [trees.get(cause)] : [undefined, obstacles.get(cause)];
    const found = tree === undefined ? [] : fallingTree(strip, tree);
    if (obstacle !== undefined) found.push(obstacleFinding(strip, obstacle));
    for (const finding of found) {
      const known = best.get(cause);
      if (known === undefined || finding.demand > known.demand) best.set(cause, finding);
    }
  }
  return [...best.values()];
}

interface Strip {
  readonly subject: string;
  readonly footprint: readonly GroundXY[];
  readonly rules: HouseRules;
  /** Of a distance, so much may be an error of the survey [m]. */
  readonly roomM: number;
}

function nearest(findings: readonly Finding[]): Finding[] {
  const room = ({ margin }: Finding): number => margin ?? Infinity;
  return [...findings].sort((a, b) => worstFirst(a, b) || room(a) - room(b)).slice(0, 1);
}

/** What is clear by less than the survey may be off asks for a tape. */
function surveyed(told: Finding, roomM: number): Finding {
  const { verdict, demand, limit } = told;
  return verdict === "clear" && demand < limit + roomM ? byRule(told, "look-again") : told;
}

function fallingTree({ subject, footprint, rules, roomM }: Strip, tree: Tree): Finding[] {
  const { deadTreeHeights, doubtfulTreeHeights } = rules;
  const heights = tree.condition === "dead" ? deadTreeHeights : (doubtfulTreeHeights ?? deadTreeHeights);
  if (!(heights.value > 0)) return [];
  const finding = {
    rule: tree.heightM === undefined ? "tree.height-estimated" : "site.dead-tree-reach",
    source: "house-rules",
    subject,
    sense: "at-least",
    demand: pointToConvex([tree.xM, tree.yM], footprint),
    limit: heights.value * estimatedHeightM(tree),
    unit: "m",
    about: [tree.id],
  } as const;
  const told = tree.heightM === undefined ? compare(finding) : kept(finding, "do-not-hang");
  const near = finding.demand < LOOK_AGAIN_HEIGHTS * estimatedHeightM(tree) + roomM;
  return [told.verdict === "clear" && near ? byRule(finding, "look-again") : told];
}

/** Heights of a dead or doubtful tree within which a berth asks for a second look. Source: common-practice. */
const LOOK_AGAIN_HEIGHTS = 1.5;

function obstacleFinding({ subject, footprint, roomM }: Strip, obstacle: Obstacle): Finding {
  const overhead = obstacle.kind === "overhead";
  const finding = {
    rule: overhead ? "site.overhead-reach" : "site.setback",
    source: "house-rules",
    subject,
    sense: "at-least",
    demand: shapeToFootprintM(obstacle.shape, footprint),
    limit: obstacle.setbackM,
    unit: "m",
    about: [obstacle.id],
  } as const;
  return surveyed(overhead ? compare(finding) : kept(finding, "do-not-hang"), roomM);
}
