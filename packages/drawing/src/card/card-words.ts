import type { Camp, Plan, PlanPart, RuleKey } from "@nightspan/core";
import type { BerthFacts } from "../berth/berth-facts.ts";
import { name, quantity, word } from "../scene/names.ts";
import type { TextItem } from "../scene/text-item.ts";

/** Several texts in a row, with commas between. */
export function listed(items: readonly TextItem[]): TextItem {
  const [first, ...rest] = items;
  if (first === undefined) return { said: "" };
  return rest.length === 0 ? first : word("list.two", { first, rest: listed(rest) });
}

/** Several texts in a row, a dot between. */
export function dotted(items: readonly TextItem[]): TextItem {
  const [first, ...rest] = items;
  if (first === undefined) return { said: "" };
  return rest.length === 0 ? first : word("list.dots", { first, rest: dotted(rest) });
}

/** Several whole sentences, one after another. */
export function sentences(items: readonly TextItem[]): TextItem {
  const [first, ...rest] = items;
  if (first === undefined) return { said: "" };
  return rest.length === 0 ? first : word("list.sentences", { first, rest: sentences(rest) });
}

/** The parts that nobody computed, "Not checked: tarp, warmth"; nothing where all were. */
export function notCheckedText(parts: readonly PlanPart[]): TextItem | undefined {
  if (parts.length === 0) return undefined;
  return word("not-checked", { parts: listed(parts.map((part) => word(`part.${part}`))) });
}

/** Who looked at the trees of a berth, of two. */
export function lookedAtText({ head, foot }: BerthFacts, plan: Plan, camp: Camp): TextItem {
  const done = quantity("count", [head, foot].filter(({ lookedAt }) => lookedAt).length, 0);
  const day = camp.date ?? plan.treesLookedAt.on;
  const by = [...new Set([head, foot].flatMap(({ lookedBy }) => (lookedBy === undefined ? [] : [lookedBy])))];
  if (day === undefined || by.length === 0) return word("looked-at.berth", { done });
  return word("looked-at.berth-by-on", { done, by: listed(by.map(name)), day: { day, style: "short" } });
}

/** Parts of a plan that are about one berth; cutting and packing are the store's. */
export function partsOfABerth(parts: readonly PlanPart[]): PlanPart[] {
  return parts.filter((part) => part !== "cuts" && part !== "packing");
}

/** Who looked at the trees of the whole plan. */
export function allLookedAtText(plan: Plan, camp: Camp): TextItem {
  const { done, of, by } = plan.treesLookedAt;
  const counts = { done: quantity("count", done, 0), of: quantity("count", of, 0) };
  const day = plan.treesLookedAt.on ?? camp.date;
  if (by.length === 0) return word("looked-at.trees", counts);
  const who = { ...counts, by: listed(by.map(name)) };
  if (day === undefined) return word("looked-at.trees-by", who);
  return word("looked-at.trees-by-on", { ...who, day: { day, style: "short" } });
}

/** Which of the two trees still wants somebody to look at it. */
export function notLookedText({ head, foot }: BerthFacts): TextItem | undefined {
  const unseen = [head, foot].filter(({ lookedAt }) => !lookedAt);
  const [first, second] = unseen.map(({ tag }) => tag);
  if (first === undefined) return undefined;
  if (unseen.every(({ seenBefore }) => seenBefore))
    return word("card.look-on-the-day", { tags: listed(unseen.map(({ tag }) => name(tag))) });
  if (second === undefined) return word("card.nobody-looked", { tag: name(first) });
  return word("card.nobody-looked-both", { first: name(first), second: name(second) });
}

/**
 * What a card says of pulls, in place of a figure: within the plate only where a rated part was compared and none
 * is over it; a strap of unknown strength is told as not checked.
 */
export function plateText({ berth }: BerthFacts): TextItem {
  const compared = berth.findings.filter(({ rule }) => RATED.includes(rule));
  const unknown = berth.findings.some(
    ({ rule }) => rule === "part.strength-unknown" || rule === "sleeper.weight-assumed",
  );
  const over = compared.some(({ verdict }) => verdict === "do-not-hang");
  if (over) return word("card.plate-over");
  return word(compared.length === 0 || unknown ? "card.plate-unknown" : "card.plate-kept");
}

const RATED: readonly RuleKey[] = ["part.working-load", "part.breaking-load"];

/** Whom to wake: a leader with a berth, never oneself. */
export function wakeText({ sleeper }: BerthFacts, plan: Plan, camp: Camp): TextItem {
  const leaders = camp.sleepers.filter(({ leads, id }) => leads && id !== sleeper.id);
  for (const leader of leaders) {
    const berth = plan.berths.find((one) => one.sleeper === leader.id);
    if (berth !== undefined) return word("card.wake", { name: name(leader.name), berth: name(berth.id) });
  }
  const [leader] = leaders;
  return leader === undefined
    ? word("card.wake-somebody")
    : word("card.wake-leader", { name: name(leader.name) });
}

/** The camp and the day. */
export function whereText(camp: Camp): TextItem {
  if (camp.date === undefined) return name(camp.name);
  return word("card.where", { camp: name(camp.name), day: { day: camp.date, style: "with-weekday" } });
}
