import type { Camp, Plan } from "@nightspan/core";
import { mapScene, renderSvg, type Scene } from "@nightspan/drawing";
import { labels, measure, planFile, writePlan } from "@nightspan/edge";
import type { Paper } from "./put-papers.ts";

const WORDS = { labels, measure };

/** All files of a plan: the plan itself, the map, and for each berth its side view and its card. */
export function papersOf(plan: Plan, camp: Camp): readonly Paper[] {
  return [
    { name: "plan.json", content: writePlan(planFile(plan)) },
    { name: "map.svg", content: svg(mapScene(plan, camp, { words: WORDS, widthPx: 1400, heightPx: 1000 })) },
  ];
}

function svg(scene: Scene): string {
  return renderSvg(scene, { ...WORDS, standalone: true });
}
