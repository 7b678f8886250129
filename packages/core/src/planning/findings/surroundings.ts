import { compare, kept, type Finding } from "../../outcome/finding.ts";
import type { Ground } from "../../plan/camp.ts";
import { pointToConvex } from "../../geometry/polygon-distance.ts";
import { estimatedHeightM } from "../../site/estimated-height.ts";
import type { GroundXY, Obstacle } from "../../site/obstacle.ts";
import { shapeToFootprintM } from "../../site/shape-distance.ts";
import type { Tree } from "../../site/tree.ts";
import { berthSubject, type BerthCase } from "./berth-case.ts";

/**
 * How far the berth's ground is from what may fall or burn: for dead and doubtful trees, overhead hazards and
 * set-backs, each the one that comes nearest to its limit. Nothing for a berth that is not on the map.
 */
export function surroundingFindings(berth: BerthCase): Finding[] {
  const { footprint } = berth.place;
  const { ground } = berth.camp;
  if (footprint === undefined || ground === undefined) return [];
  return [
    ...nearest(ground.trees.flatMap((tree) => fallingTree(berth, tree, footprint))),
    ...nearest(obstacles(ground, true).map((obstacle) => obstacleFinding(berth, obstacle, footprint))),
    ...nearest(obstacles(ground, false).map((obstacle) => obstacleFinding(berth, obstacle, footprint))),
  ];
}

function nearest(findings: readonly Finding[]): Finding[] {
  const [first, ...rest] = findings;
  if (first === undefined) return [];
  return [
    rest.reduce(
      (worst, next) => ((next.margin ?? Infinity) < (worst.margin ?? Infinity) ? next : worst),
      first,
    ),
  ];
}

function fallingTree({ id, camp }: BerthCase, tree: Tree, footprint: readonly GroundXY[]): Finding[] {
  const { deadTreeHeights, doubtfulTreeHeights } = camp.rules;
  if (tree.condition !== "dead" && tree.condition !== "doubtful") return [];
  const heights = tree.condition === "dead" ? deadTreeHeights : (doubtfulTreeHeights ?? deadTreeHeights);
  if (!(heights.value > 0)) return [];
  const finding = {
    rule: tree.heightM === undefined ? "tree.height-estimated" : "site.dead-tree-reach",
    source: "house-rules",
    subject: berthSubject(id),
    sense: "at-least",
    demand: pointToConvex([tree.xM, tree.yM], footprint),
    limit: heights.value * estimatedHeightM(tree),
    unit: "m",
    about: [tree.id],
  } as const;
  return [tree.heightM === undefined ? compare(finding) : kept(finding, "do-not-hang")];
}

function obstacles(ground: Ground, overhead: boolean): Obstacle[] {
  return ground.obstacles.filter(({ kind }) => (kind === "overhead") === overhead);
}

function obstacleFinding({ id }: BerthCase, obstacle: Obstacle, footprint: readonly GroundXY[]): Finding {
  return kept(
    {
      rule: obstacle.kind === "overhead" ? "site.overhead-reach" : "site.setback",
      source: "house-rules",
      subject: berthSubject(id),
      sense: "at-least",
      demand: shapeToFootprintM(obstacle.shape, footprint),
      limit: obstacle.setbackM,
      unit: "m",
      about: [obstacle.id],
    },
    "do-not-hang",
  );
}
