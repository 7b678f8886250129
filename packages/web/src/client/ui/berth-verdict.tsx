import { worstFirst, type Camp, type PlannedBerth } from "@nightspan/core";
import { namesOf, sayFinding } from "@nightspan/edge";
import { treeTag, unlookedEnds } from "../state/camp-names.ts";
import { fill, WORDS } from "../words.ts";
import { VerdictWord } from "./verdict-plate.tsx";

interface BerthVerdictProps {
  readonly camp: Camp;
  readonly berth: PlannedBerth;
}

/** The verdict of one berth, and at what to look or why not to hang. */
export function BerthVerdict({ camp, berth }: BerthVerdictProps) {
  return <VerdictWord verdict={berth.verdict} about={aboutOf(camp, berth)} />;
}

function aboutOf(camp: Camp, berth: PlannedBerth): string | undefined {
  if (berth.verdict === "clear") return undefined;
  const tags = unlookedEnds([berth]).map(({ tree }) => treeTag(camp, tree));
  if (berth.verdict === "look-again" && tags.length > 0) {
    return tags.length === 1 ? fill(WORDS.map.treeLower, { tag: tags.join("") }) : WORDS.map.bothTrees;
  }
  const worst = [...berth.findings].sort(worstFirst)[0];
  return worst === undefined ? undefined : sayFinding(worst, namesOf(camp));
}
