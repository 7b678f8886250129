import { compare, kept, type Finding } from "../../outcome/finding.ts";
import type { Ground } from "../../plan/camp.ts";
import { pointToConvex } from "../../geometry/polygon-distance.ts";
import { estimatedHeightM } from "../../site/estimated-height.ts";
import type { GroundXY, Obstacle } from "../../site/obstacle.ts";
import { shapeToFootprintM } from "../../site/shape-distance.ts";
import type { Tree } from "../../site/tree.ts";
import { berthSubject, type BerthCase } from "./berth-case.ts";

/** All that may fall or burn in a camp, sorted out once for all its berths. */
export interface Hazards {
  readonly falling: readonly Tree[];
  readonly overhead: readonly Obstacle[];
  readonly setbacks: readonly Obstacle[];
}

export function hazardsOf(ground: Pick<Ground, "trees" | "obstacles">): Hazards {
  return {
    falling: ground.trees.filter(({ condition }) => condition === "dead" || condition === "doubtful"),
    overhead: ground.obstacles.filter(({ kind }) => kind === "overhead"),
    setbacks: ground.obstacles.filter(({ kind }) => kind !== "overhead"),
  };
}

/**
 * How far the berth's ground is from what may fall or burn: for dead and doubtful trees, overhead hazards and
 * set-backs, each the one that comes nearest to its limit. Nothing for a berth that is not on the map.
 */
export function surroundingFindings(berth: BerthCase, { falling, overhead, setbacks }: Hazards): Finding[] {
  const { footprint } = berth.place;
  if (footprint === undefined) return [];
  return [
    ...nearest(falling.flatMap((tree) => fallingTree(berth, tree, footprint))),
    ...nearest(overhead.map((obstacle) => obstacleFinding(berth, obstacle, footprint))),
    ...nearest(setbacks.map((obstacle) => obstacleFinding(berth, obstacle, footprint))),
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
