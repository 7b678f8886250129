import { handMarks, type BandRange, type Limit, type PlannedBerth } from "@nightspan/core";
import { name, quantity, word } from "../scene/names.ts";
import type { TextItem } from "../scene/text-item.ts";
import type { BerthFacts, EndFacts } from "./berth-facts.ts";

/** Strap heights are told to 5 cm: hands set them no closer. */
export function markHeightM(heightM: number): number {
  return Math.round(heightM * 20) / 20;
}

/** The height of a strap as it is told for hands, with the other marks of its berth [m]. */
export function toldHeightM(berth: PlannedBerth, end: "head" | "foot"): number {
  const { headHeightM, footHeightM } = handMarks(berth);
  return end === "head" ? headHeightM : footHeightM;
}

export function markText(heightM: number): TextItem {
  return quantity("length", markHeightM(heightM), 2);
}

export function bodyMarkText(heightM: number, statureM: number): TextItem {
  return { bodyMarkM: heightM, statureM };
}

/** Tag, species and trunk of a tree. */
export function treeText({ tag, species, dbhM, dbhAssumed }: EndFacts): TextItem {
  if (dbhAssumed) return word("berth.tree-assumed", { tag: name(tag) });
  const trunk = quantity("diameter", dbhM, 0);
  if (species === undefined) return word("berth.tree", { tag: name(tag), trunk });
  return word("berth.tree-species", { tag: name(tag), species: name(species), trunk });
}

export function limitText(limit: Limit): TextItem {
  return word(`limit.${limit}`);
}

/** How the foot strap lies to the head strap: as a sentence, with how it is found, or the bare figure. */
export function levelText({ berth }: BerthFacts, length: "long" | "short" | "bare"): TextItem {
  const over = handMarks(berth).footOverHeadM;
  const by = quantity("short-length", markHeightM(Math.abs(over)), 0);
  const way = levelWay(over);
  const room = { long: "berth.level", short: "berth.foot", bare: "level" } as const;
  return way === "same" ? word(`${room[length]}-same`) : word(`${room[length]}-${way}`, { by });
}

export function levelWay(overM: number): "same" | "higher" | "lower" {
  const rounded = markHeightM(overM);
  if (rounded === 0) return "same";
  return rounded > 0 ? "higher" : "lower";
}

export type SpanLength = "long" | "short" | "bare";

/** The sleeper's steps between the trees with how they are counted, and the metres where there is room. */
export function spanText(
  { berth, barkToBarkM, steps, stepped }: BerthFacts,
  length: SpanLength = "long",
): TextItem {
  const span = quantity("length", barkToBarkM, 2);
  const told = quantity("steps", steps, 1);
  if (length === "bare" && !berth.stepItOut) return word("berth.span-bare", { steps: told });
  const room = length === "long" ? "span" : "span-short";
  if (stepped) {
    return word(`berth.${room}-stepped`, { span: quantity("length", berth.spanM, 1), steps: told });
  }
  if (berth.stepItOut) return word("berth.step-it-out", { span });
  return word(`berth.${room}-steps`, { span, steps: told });
}

export function pullText(pullN: number): TextItem {
  return word("berth.pull", { mass: quantity("hanging", pullN, 0) });
}

export function newtonText(pullN: number): TextItem {
  return word("berth.newtons", { force: quantity("force", pullN, 0) });
}

/** How unsure a height is: 90 of 100 such hangs lie there. */
export function aboutText([low, high]: BandRange): TextItem {
  return word("berth.about", { low: quantity("length", low, 2), high: quantity("length", high, 2) });
}

/** Who sets the straps, where the sleeper cannot reach. */
export function setByText({ setter }: BerthFacts): TextItem {
  return word("berth.set-by", { name: name(setter.name) });
}

/** How high the tarp's ridge is tied, where there is one. */
export function tarpRidgeTexts({ berth }: BerthFacts): TextItem[] {
  if (berth.tarp === undefined) return [];
  const [head, foot] = [berth.tarp.ridge.headTieM, berth.tarp.ridge.footTieM].map(markHeightM);
  if (head === foot) return [word("tarp.ridge", { height: quantity("length", head ?? 0, 2) })];
  const [from, to] = [quantity("length", head ?? 0, 2), quantity("length", foot ?? 0, 2)];
  return [word("tarp.ridge-two", { head: from, foot: to })];
}
