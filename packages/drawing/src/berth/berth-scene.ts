import { handMarks, type Camp, type Plan } from "@nightspan/core";
import { name, quantity, word } from "../scene/names.ts";
import type { Scene } from "../scene/scene.ts";
import type { Words } from "../scene/text-item.ts";
import { berthCompact } from "./berth-compact.ts";
import { berthFacts, type BerthFacts } from "./berth-facts.ts";
import { berthWide } from "./berth-wide.ts";
import { markText } from "./berth-words.ts";

export interface BerthOptions {
  readonly words: Words;
  /** 840 and wider: figures beside the drawing; narrower: beneath it. */
  readonly widthPx: number;
  /** False keeps pulls off: for everything that is printed or shared. */
  readonly pulls?: boolean;
  /** False leaves out the figures beneath a narrow drawing, for a page that says them itself. */
  readonly figures?: boolean;
}

/** The side view of one berth: head left, one scale across and up, from the computed shape. */
export function berthScene(plan: Plan, camp: Camp, berthId: string, options: BerthOptions): Scene {
  const facts = berthFacts(plan, camp, berthId);
  const draw = options.widthPx >= WIDE_PX ? berthWide : berthCompact;
  const { items, height } = draw(facts, {
    ...options,
    pulls: options.pulls ?? true,
    figures: options.figures ?? true,
  });
  return {
    name: "berth",
    size: { width: options.widthPx, height, unit: "px" },
    title: word("berth.title", { berth: name(berthId), sleeper: name(facts.sleeper.name) }),
    desc: description(facts),
    ground: "paper",
    items,
  };
}

const WIDE_PX = 840;

function description({ berth, head, foot }: BerthFacts) {
  return word("berth.desc", {
    head: name(head.tag),
    headHeight: markText(handMarks(berth).headHeightM),
    foot: name(foot.tag),
    low: quantity("short-length", berth.hang.lowPointM, 0),
    verdict: word(`verdict.${berth.verdict}.capital`),
  });
}
