import { byRule, type Finding } from "../../outcome/finding.ts";
import type { Camp } from "../../plan/camp.ts";
import type { RefusedPin } from "../../plan/plan.ts";
import { stemFindings } from "./stems.ts";

/** What is about the whole camp: a night without the wind at which everybody gets up; people without a berth; stems in each other. */
export function campFindings({ ground, night }: Camp, placed: number, asked: number): Finding[] {
  const blank = night !== undefined && night.stopGustMS === undefined;
  return [
    ...(blank ? [stopLineBlank()] : []),
    ...(placed < asked ? [notAllPlaced(placed, asked)] : []),
    ...stemFindings(ground?.trees ?? []),
  ];
}

/** Stop lines that are set, of the one that is needed. */
function stopLineBlank(): Finding {
  return byRule(
    {
      rule: "night.stop-line-blank",
      source: "camp-file",
      subject: "camp",
      sense: "at-least",
      demand: 0,
      limit: 1,
      unit: "1",
    },
    "look-again",
  );
}

function notAllPlaced(placed: number, asked: number): Finding {
  return byRule(
    {
      rule: "layout.no-berth",
      source: "layout-search",
      subject: "camp",
      sense: "at-least",
      demand: placed,
      limit: asked,
      unit: "1",
    },
    "look-again",
  );
}

/** Pins that could not be kept, each told once; the reasons stand with the pin. */
export function refusedPinFindings(refused: readonly RefusedPin[]): Finding[] {
  return refused.map(({ sleeper, trees }) =>
    byRule(
      {
        rule: "pin.refused",
        source: "camp-file",
        subject: `sleeper/${sleeper}`,
        sense: "at-least",
        demand: 0,
        limit: 1,
        unit: "1",
        about: trees,
      },
      "look-again",
    ),
  );
}
