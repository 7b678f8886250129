import { readFileSync } from "node:fs";
import { planCamp, type Camp, type Plan } from "@nightspan/core";
import { ENGINE } from "./engine.ts";
import type { OpenedCamp } from "./format/camp-document.ts";
import { readCamp } from "./format/open-camp.ts";

/** The text of a file in examples/. */
export function exampleText(name: string): string {
  return readFileSync(new URL(`../../../examples/${name}.camp.json`, import.meta.url), "utf8");
}

export function exampleCamp(name: string): OpenedCamp {
  const opened = readCamp(exampleText(name));
  if (!opened.ok) throw new Error(JSON.stringify(opened.refusals));
  return opened.value;
}

export function planOf(camp: Camp): Plan {
  const planned = planCamp(camp, { engine: ENGINE });
  if (!planned.ok) throw new Error(JSON.stringify(planned.refusals));
  return planned.value;
}

/** The smallest camp file, with some fields put over it. */
export function smallCamp(over: object = {}): Record<string, unknown> {
  return {
    format: "nightspan-camp/1",
    name: "Small",
    sleepers: [{ id: "s1", name: "Ada", mass_kg: 70, stature_m: 1.7 }],
    ...over,
  };
}

/** The same with trees on its ground. */
export function woodCamp(trees: readonly object[], over: object = {}): Record<string, unknown> {
  return smallCamp({ ground: { trees, ...over } });
}

/** "field: need" of each refusal; nothing for a success. */
export function faults(
  outcome: { ok: true } | { ok: false; refusals: readonly { field: string; need: string }[] },
) {
  return outcome.ok ? [] : outcome.refusals.map(({ field, need }) => `${field}: ${need}`);
}

/** The fields of the refusals. */
export function faultFields(outcome: { ok: true } | { ok: false; refusals: readonly { field: string }[] }) {
  return outcome.ok ? [] : outcome.refusals.map(({ field }) => field);
}
