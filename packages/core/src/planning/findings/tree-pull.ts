import { compare, type Finding } from "../../outcome/finding.ts";
import { greatestSum, type Vector } from "../greatest-sum.ts";
import type { TrunkPull } from "../trunk-pulls.ts";
import { ENDS, type BerthCase } from "./berth-case.ts";

/**
 * All that pulls the two trees of a berth sideways, added as vectors, against what the house allows at one tree:
 * nothing where no house caps it. Two that balance do so only while somebody lies in each.
 */
export function treePullFindings({ id, trunks, camp, ...berth }: BerthCase): Finding[] {
  const limit = camp.rules.treePullMaxN?.value;
  if (limit === undefined) return [];
  return ENDS.map((end) => {
    const others = trunks[end].map((pull) => pull.berth).filter((other) => other !== id);
    return compare({
      rule: "tree.pull",
      source: "house-rules",
      subject: `tree/${berth[end].id}`,
      sense: "at-most",
      demand: greatestPullN(trunks[end]),
      limit,
      unit: "N",
      ...(others.length === 0 ? {} : { about: others }),
    });
  });
}

function greatestPullN(pulls: readonly TrunkPull[]): number {
  const vectors = pulls.flatMap(({ sidewaysN, towardsRad }): Vector[] =>
    towardsRad === undefined ? [] : [[sidewaysN * Math.sin(towardsRad), sidewaysN * Math.cos(towardsRad)]],
  );
  const anyWayN = pulls.reduce(
    (sum, { sidewaysN, towardsRad }) => (towardsRad === undefined ? sum + sidewaysN : sum),
    0,
  );
  return anyWayN + greatestSum(vectors);
}
