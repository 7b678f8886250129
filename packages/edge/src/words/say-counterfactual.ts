import type { Camp, ChangeKey, Counterfactual } from "@nightspan/core";
import { namesOf, type Names } from "./names.ts";
import { length, trunk } from "./quantities.ts";

/**
 * One change and what it would do, in a sentence or two. What only somebody who answers for it may change is told as
 * information, with who that is.
 */
export function sayCounterfactual(told: Counterfactual, camp: Camp): string {
  const names = namesOf(camp);
  const { gained, change, advice } = told;
  const condition = CONDITIONS[change](told, names);
  const who = WHO[change](told, camp);
  if (gained === 0) return `Nobody more would have a berth ${condition}.`;
  const more = gained === 1 ? "One more" : `${gained} more`;
  const sentence = `${more} would have a berth ${condition}.`;
  return [advice ? sentence : `For information: ${uncapital(sentence)}`, ...(who === "" ? [] : [who])].join(
    " ",
  );
}

/** What would change it, one line a change that gains somebody; those that gain nobody together in one line. */
export function sayCounterfactuals(told: readonly Counterfactual[], camp: Camp): readonly string[] {
  const names = namesOf(camp);
  const gains = told.filter(({ gained }) => gained > 0);
  const vain = told.filter(({ gained }) => gained === 0).map((one) => CONDITIONS[one.change](one, names));
  const none = vain.length === 0 ? [] : [`Nobody more would have a berth ${vain.join("; ")}.`];
  if (gains.length > 0) return [...gains.map((one) => sayCounterfactual(one, camp)), ...none];
  return ["None of the changes looked at here gives anybody else a berth.", ...none];
}

type Say<T> = (told: Counterfactual, context: T) => string;

const CONDITIONS: Readonly<Record<ChangeKey, Say<Names>>> = {
  "hammocks-per-tree": ({ from: [from], to: [to] }) =>
    `if a tree might carry ${count(to)} hammocks instead of ${count(from)}`,
  "strip-width": ({ from: [from], to: [to] }) =>
    `if each berth kept a strip of ${metres(to)} instead of ${metres(from)}: narrower tarps`,
  "span-window": ({ from, to }) =>
    `if trees ${metres(to[0])} to ${metres(to[1])} apart were used instead of ${metres(from[0])} to ${metres(from[1])}`,
  "kit-more": ({ about }) => `with ${about.map((kind) => `one more ${kind}`).join(" and ")}`,
  "line-more": ({ about: [line = ""], from: [from = 0], to: [to = 0] }) =>
    `with ${count(to - from)} more of ${line}, all kit dealt anew`,
  "kind-more": ({ about: [kind = ""], to: [to = 0] }) =>
    `with ${count(to)} more ${USUAL[kind] ?? kind}${to === 1 ? "" : "s"}, all kit dealt anew`,
  reach: ({ to: [to] }) => `if somebody who reaches ${metres(to)} set the straps`,
  setback: ({ about, from: [from], to: [to] }) =>
    `if berths might come to ${metres(to)} from ${about.join(", ")} instead of ${metres(from)}`,
  spokes: () => "if hammocks might hang like spokes at one tree",
  species: ({ about }) => `if trees of these species might be used: ${about.join(", ")}`,
  "trunk-least": ({ from: [from], to: [to] }) =>
    `if trunks of ${trunk(to ?? 0)} were stout enough instead of ${trunk(from ?? 0)}`,
  "doubtful-sound": ({ about }, names) => `if these doubtful trees were sound: ${trees(about, names)}`,
  "dead-gone": ({ about }, names) => `if these dead trees were felled: ${trees(about, names)}`,
  "limb-down": ({ about }) => `if what hangs above were taken down: ${about.join(", ")}`,
};

/** What is meant where no line of the store is. */
const USUAL: Readonly<Record<string, string>> = {
  hammock: "usual hammock",
  suspension: "tied webbing suspension",
};

/** Whose word it takes. */
const WHO: Readonly<Record<ChangeKey, Say<Camp>>> = {
  "hammocks-per-tree": (_, { rules }) => ask(rules.hammocksPerTree.source),
  "strip-width": (_, { rules }) => ask(rules.footprintHalfWidthM.source),
  "span-window": (_, { rules }) => ask(rules.spanMaxM.source),
  "kit-more": () => "",
  "line-more": () => "",
  "kind-more": () => "",
  reach: () => "",
  setback: ({ advice }) =>
    advice ? "Ask whoever set that distance." : "Cloth melts and sparks fly: this is no advice.",
  spokes: (_, { rules }) => ask(rules.noSpokes?.source),
  species: (_, { rules }) => ask(rules.speciesNot?.source),
  "trunk-least": () => "Only whoever answers for these trees may say so.",
  "doubtful-sound": () => "Only an arborist may say so.",
  "dead-gone": () => "Only an arborist may do that, and until then nobody goes near.",
  "limb-down": () => "Only an arborist may do that, and until then nobody goes near.",
};

/** Whom to ask for a rule: nobody stands behind a preset, and who wrote the file may have set one alone. */
function ask(source = OWN): string {
  if (PRESETS.has(source)) return "That rule is common practice: ask whoever owns the ground.";
  return source === OWN ? "Ask whoever set that rule." : `Ask ${source}.`;
}

/** What `rules` says of a rule without a source. */
const OWN = "camp file";

const PRESETS: ReadonlySet<string> = new Set(["cautious", "usual", "backcountry"]);

function trees(ids: readonly string[], names: Names): string {
  return ids.map((id) => names.tree(id)).join(", ");
}

function metres(valueM = 0): string {
  return length(valueM, Number.isInteger(Math.round(valueM * 100) / 10) ? 1 : 2);
}

function count(value = 0): string {
  return String(value);
}

function uncapital(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
