import { worstFirst, type Finding } from "../../outcome/finding.ts";
import type { BerthCase } from "./berth-case.ts";
import { capFindings } from "./caps.ts";
import { dropFindings, flopFindings } from "./flop-in.ts";
import { lieFindings } from "./lie.ts";
import { sleeperFindings } from "./sleeper.ts";
import { spanFindings } from "./span.ts";
import { strapFindings } from "./strap.ts";
import { strengthFindings } from "./strength.ts";
import { surroundingFindings, type Hazards } from "./surroundings.ts";
import { treePullFindings } from "./tree-pull.ts";
import { treeFindings } from "./trees.ts";
import { trunkFindings } from "./trunk.ts";

/** Every comparison of one berth, the worst first. */
export function berthFindings(berth: BerthCase, hazards: Hazards): Finding[] {
  return [
    ...treeFindings(berth),
    ...surroundingFindings(berth, hazards),
    ...sleeperFindings(berth),
    ...strengthFindings(berth),
    ...flopFindings(berth),
    ...strapFindings(berth),
    ...spanFindings(berth),
    ...lieFindings(berth),
    ...capFindings(berth),
    ...treePullFindings(berth),
    ...trunkFindings(berth),
    ...dropFindings(berth),
  ].sort(worstFirst);
}
