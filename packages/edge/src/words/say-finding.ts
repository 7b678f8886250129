import { DROP_TOLD_M, type Finding, type RuleKey } from "@nightspan/core";
import { ENGLISH } from "@nightspan/drawing";
import type { Names } from "./names.ts";
import { SHELTER_SENTENCES } from "./say-shelter.ts";
import { WARMTH_SENTENCES } from "./say-warmth.ts";
import { angle, day, length, trunk, width } from "./quantities.ts";
import { findLimit, sayLimit } from "./say-limit.ts";

/**
 * One sentence for a finding. It never tells a person's weight nor a pull, so it may stand on papers too.
 * A rule without words fails to compile.
 */
export function sayFinding(finding: Finding, names: Names): string {
  return SENTENCES[finding.rule](finding, names);
}

/** The same for a finding of a saved plan; nothing where this version has no words for its rule. */
export function saySavedFinding({ rule, ...told }: SavedFinding, names: Names): string | undefined {
  return isRule(rule) ? SENTENCES[rule](told, names) : undefined;
}

/** A finding as a file keeps it: keys of rules and sources are text there. */
export interface SavedFinding extends Told {
  readonly rule: string;
}

/** What a sentence is made from. */
interface Told extends Omit<Finding, "rule" | "source" | "margin" | "about" | "depth"> {
  readonly source: string;
  readonly about?: readonly string[] | undefined;
}

type Say = (finding: Told, names: Names) => string;

const SENTENCES: Readonly<Record<RuleKey, Say>> = {
  "part.user-weight": (f) =>
    `The sleeper is ${nearness(f)} the greatest user weight of ${item(f, "the hammock")}.`,
  "part.working-load": (f) =>
    `The pull at the ${part(f)} is ${nearness(f)} the rated load of ${item(f, "the strap")}${choked(f)}.`,
  "part.breaking-load": (f) =>
    `The pull at the ${part(f)}, times the design factor, is ${nearness(f)} the breaking strength of ${item(f, "the strap")}.`,
  "part.strength-unknown": (f) => `Nobody knows what the ${part(f)} carries. Read the maker's plate.`,
  "sleeper.weight-assumed": (f, names) =>
    `The weight of ${somebody(f, names)} is not given, so no strength is known to be enough. State it.`,
  "sleeper.small-child": (f, names) =>
    `No hammock is meant for small children. Whoever answers for ${somebody(f, names)} looks again.`,
  "hammock.length": (f) => measured(`The cloth of ${item(f, "the hammock")} is`, f, length, "long"),
  "part.flop-in": (f) =>
    `Sitting down hard pulls the ${part(f)} ${nearness(f)} what ${item(f, "the strap")} bears with its knots${fromRated(f)}.`,
  "part.drop-in": (f) =>
    `Dropping ${length(DROP_TOLD_M)} into it pulls up to ${f.demand.toFixed(1)} times as hard as lying still, sitting down hard ${f.limit.toFixed(1)} times.`,
  "part.one-person": (f) =>
    `One person only in ${item(f, "the hammock")}: ${f.source === "maker-plate" ? "two are more than it carries, even for a moment" : "nothing here is reckoned for two, not even for a moment"}.`,
  "strap.width": (f) => measured("The straps are", f, width, "wide"),
  "fit.spans": (f) =>
    `The suspension serves over ${length(f.demand)} of the ${length(f.limit)} between the least and greatest span.`,
  "fit.girth": (f) => measured("The suspension goes round trunks of up to", f, length, "of girth"),
  "fit.tarp-ridge": (f) => measured("The ridge of the tarp is", f, length, "long"),
  "fit.mat-layers": (f) =>
    f.verdict === "clear"
      ? "The mat stays between the two layers of the hammock."
      : "The mat slides on a single layer. Take a hammock of two layers, or tie the mat in.",
  "fit.under-length": (f) => measured("The underblanket is", f, length, "long"),
  "fit.net": (f) =>
    f.verdict === "clear"
      ? "The underblanket goes with the hammock's net."
      : "The underblanket does not go over a net that is all round.",
  "strap.reach": sayReach,
  "strap.height-cap": (f) => measured(`The ${part(f)} is tied at`, f, length),
  "cap.angle": (f) =>
    `${cap(f)} makes the straps hang ${angle(f.demand)} below level; without it they would hang ${angle(f.limit)}.`,
  "cap.pull": (f) => `${cap(f)} makes the straps pull ${(f.demand / f.limit).toFixed(2)} times as hard.`,
  "cap.seat": (f) =>
    `${cap(f)} brings the seat to ${length(f.demand)}; without it it would come to ${length(f.limit)}.`,
  "strap.angle-flattest": (f) => measured(`The ${part(f)} hangs`, f, angle, "below level"),
  "strap.angle-steepest": (f) => measured(`The ${part(f)} hangs`, f, angle, "below level"),
  "sling.shortest": (f) => measured(`The ${part(f)} is let out`, f, length),
  "sling.longest": (f) => measured(`The ${part(f)} is let out`, f, length),
  "webbing.length": (f) => measured(`The ${part(f)} has`, f, length, "of webbing"),
  "strap.slip": (f) =>
    f.verdict === "clear"
      ? `The ${part(f)} grips ordinary bark by its own turns. On smooth wet bark take one more.`
      : `The ${part(f)} is steep enough to slip down ordinary bark. Take one turn more, or tie it above a swelling.`,
  "seat.height": (f) => aboveGround("The seat", "comes", f),
  "low-point.ground": (f) => aboveGround("The lowest cloth", "comes", f),
  "low-point.cap": (f) => measured("The lowest cloth comes", f, length, "above the ground"),
  "low-point.morning": (f) => aboveGround("By morning the lowest cloth", "comes", f),
  "low-point.wet": (f) => aboveGround("With straps of wet nylon the lowest cloth by morning", "comes", f),
  "foot.raise": sayRaise,
  "hang.refused": (f) => `It cannot be hung here${f.about === undefined ? "" : `: ${f.about.join(", ")}`}.`,
  "tree.trunk-least": (f, names) => measured(`The trunk of ${tree(f, names)} is`, f, trunk, "thick"),
  "tree.trunk-unknown": (f, names) => `Nobody has measured the trunk of ${tree(f, names)}. Measure it.`,
  "tree.looked-at": sayLooked("at"),
  "tree.above-looked-at": sayLooked("above"),
  "tree.doubtful": (f, names) => `Doubtful: ${tree(f, names)}. Ask an arborist, and stay out of its reach.`,
  "tree.dead": (f, names) => `Dead: ${tree(f, names)}. Never tie to it, and stay out of its reach.`,
  "tree.not-allowed": (f, names) => `Not to be used: ${tree(f, names)}.`,
  "pair.not-allowed": (f, names) =>
    `Not to be used: the pair ${(f.about ?? []).map((id) => names.tree(id)).join(" and ")}.`,
  "tree.bending": (f, names) =>
    `The trunk of ${tree(f, names)} is bent ${nearness(f)} what sound green wood bears${sharing(f)}. Roots, rot and lean are not in this.`,
  "tree.pull": (f, names) =>
    `All that pulls ${tree(f, names)} sideways is ${nearness(f)} what the house allows at one tree${sharing(f)}.`,
  "tree.bark-pressure": (f, names) =>
    `The strap presses the bark of ${tree(f, names)} ${f.verdict === "clear" ? "no more than" : "more than"} the least strap and trunk of the house rules would (common practice, no source).`,
  "tree.height-estimated": (f, names) =>
    `May fall: ${other(f, names)}. ${measured("The berth is", f, length, "from it")} Its height is an estimate. Measure it.`,
  "tree.species-unknown": (f, names) =>
    f.about?.[0] === undefined
      ? `Nobody has named the species of ${tree(f, names)}: it is taken as the weakest wood listed.`
      : `The wood of ${tree(f, names)}, ${f.about[0]}, is not listed: it is taken as the weakest of its kind, or of all.`,
  "tree.lean": (f, names) => measured(`The trunk of ${tree(f, names)} leans`, f, angle, "from upright"),
  "span.least": (f) => measured("The trees stand", f, length, "apart"),
  "span.most": (f) => measured("The trees stand", f, length, "apart"),
  "span.stepped": (f) =>
    f.verdict === "clear"
      ? `The span was stepped; it may be off by ${length(f.demand)}, and the hang allows that.`
      : "The span is not measured well enough. Step it out before you tie.",
  "span.window": sayWindow,
  "site.dead-tree-reach": sayFalls,
  "site.overhead-reach": (f) =>
    measured(`From under ${item(f, "what hangs above")} the berth is`, f, length, "away"),
  "site.setback": (f) => measured(`From ${item(f, "an obstacle")} the berth is`, f, length, "away"),
  "site.capacity": (f, names) => `On ${tree(f, names)} hang ${f.demand} hammocks, at most ${f.limit}.`,
  "site.stem": (f, names) => `A stem stands in the strip: ${other(f, names)}.`,
  "site.stems-touch": sayStemsTouch,
  "site.stems-touch-more": (f) =>
    `${f.demand} more ${f.demand === 1 ? "pair" : "pairs"} of stems at the same spot, or nearer than their trunks allow.`,
  "site.in-the-way": (f, names) => `In the way of the berth of ${somebody(f, names)}.`,
  "site.taken": (f, names) => `Taken by ${somebody(f, names)}.`,
  "pin.refused": sayPinRefused,
  "layout.no-berth": sayNoBerth,
  "layout.kit-short": sayKitShort,
  "layout.spare": (f) =>
    `${f.demand} of the ${f.limit} spare ${f.limit === 1 ? "berth" : "berths"} that the house asks for ${f.demand === 1 ? "is" : "are"} kept free.`,
  "people.group-radius": sayRadius,
  "people.near": sayNear,
  "people.apart": (f, names) => measured(`Between ${both(f, names)} it is`, f, distance),
  "people.zone": (f, names) => measured(`Between ${both(f, names)}, of different zones, it is`, f, distance),
  "people.adult-youth": (f, names) =>
    measured(`Between ${both(f, names)}, one of them under 18, it is`, f, distance),
  ...WARMTH_SENTENCES,
  ...SHELTER_SENTENCES,
  "defaults.assumed": (f) => `${f.demand} fields were silent and taken from the table of defaults.`,
};

function isRule(text: string): text is RuleKey {
  return Object.hasOwn(SENTENCES, text);
}

/** Demand beside limit: "…, at least 20 cm is asked for". */
function measured(lead: string, f: Told, unit: (value: number) => string, after = ""): string {
  const [demand, limit] = [unit(f.demand), unit(f.limit)];
  const what = `${lead} ${demand}${after === "" ? "" : ` ${after}`}`;
  const most = f.sense === "at-most";
  if (f.verdict === "clear") return `${what}, ${most ? "at most" : "at least"} ${limit}.`;
  const beyond = most ? f.demand > f.limit : f.demand < f.limit;
  if (!beyond) return `${what}: close to the ${most ? "most" : "least"}, ${limit}.`;
  if (demand === limit) return `${what}: just ${most ? "over the most" : "under the least"}, ${limit}.`;
  return most ? `${what}: more than the ${limit} allowed.` : `${what}: less than the ${limit} needed.`;
}

/** A height of cloth; where it would come to lie on the ground there is no figure worth telling. */
function aboveGround(what: string, does: string, f: Told): string {
  if (f.demand <= 0)
    return `${what} would lie on the ground: at least ${length(f.limit)} above it is needed.`;
  return measured(`${what} ${does}`, f, length, "above the ground");
}

/** How much higher the foot end hangs, or how much lower. */
function sayRaise(f: Told): string {
  if (f.demand >= 0) return measured("The foot end hangs", f, length, "higher than the head end");
  return `The foot end hangs ${length(-f.demand)} lower than the head end: at least ${length(f.limit)} higher is needed.`;
}

/** Two stems of which one must stand elsewhere. */
function sayStemsTouch(f: Told, names: Names): string {
  const both = `${tree(f, names)} and ${other(f, names)}`;
  if (f.verdict === "clear") return `Stems apart: ${both}.`;
  if (length(f.demand) === length(0)) return `Stems at the same spot: ${both}. Find out which is right.`;
  return `Stems nearer than their trunks allow, ${length(f.demand)} apart: ${both}. Find out which is right.`;
}

/** What may fall reaches its own height; where brittle tops fly further a second look is asked for. */
function sayFalls(f: Told, names: Names): string {
  const lead = `From what may fall at ${other(f, names)} the berth is`;
  if (f.verdict !== "look-again" || f.demand <= f.limit) return measured(lead, f, length, "away");
  return `${lead} ${length(f.demand)} away: beyond the ${length(f.limit)} refused, but near.`;
}

/** Where a figure would tell a person's weight, only how near it is. */
function nearness({ verdict }: Told): string {
  return { clear: "within", "look-again": "close to", "do-not-hang": "over" }[verdict];
}

/** A strap through its own eye keeps four fifths of its rated load. */
function choked({ source }: Told): string {
  return source === "sling-practice" ? ", four fifths of it as the strap goes through its own eye" : "";
}

/** Where nobody knows the breaking strength, what it was taken from. */
function fromRated({ source }: Told): string {
  return source === "sling-practice" ? ", its breaking strength taken from its rated load" : "";
}

function sayKitShort({ demand, limit, about = [] }: Told): string {
  const [kind, chosen] = about;
  if (kind === "pinned" && chosen !== undefined)
    return `Kept for this sleeper, and none is left of it: ${chosen}.`;
  const what = kind === undefined ? "kit" : (KIT_NAMES[kind] ?? kind);
  return demand < limit
    ? `The store has ${demand} of the ${limit} needed: ${what}.`
    : `The store has as many as are needed: ${what}.`;
}

const KIT_NAMES: Readonly<Record<string, string>> = {
  hammock: ENGLISH["packed.hammock"],
  suspension: ENGLISH["packed.suspension"],
  tarp: ENGLISH["packed.tarp"],
  under: ENGLISH["packed.under"],
  over: ENGLISH["packed.over"],
};

function sharing({ about = [] }: Told): string {
  if (about.length === 0) return "";
  return `, with ${about.length === 1 ? "berth" : "berths"} ${about.join(", ")} on it too`;
}

function cap({ about }: Told): string {
  return about?.[0] === "low-point-cap" ? "The cap on the low point" : "The cap on strap height";
}

function sayReach(f: Told, names: Names): string {
  const where = `The ${part(f)} is tied at ${length(f.demand)}`;
  if (f.demand <= f.limit) return `${where}, within the sleeper's reach.`;
  const helper = f.about?.[0];
  return `${where}, out of the sleeper's reach${helper === undefined ? "" : `: ${names.sleeper(helper)} sets it`}.`;
}

/** A span outside the window, and what ends the window there. */
function sayWindow({ demand, limit: end, sense, about }: Told): string {
  const limit = findLimit(about?.[0] ?? "");
  const side = sense === "at-least" ? "Under" : "Over";
  const why = limit === undefined ? "this does not hang" : sayLimit(limit);
  return `The trees stand ${length(demand)} apart. ${side} ${length(end)} ${why}.`;
}

function sayPinRefused({ subject, about = [] }: Told, names: Names): string {
  const [one, other] = about;
  const who = names.sleeper(subject.slice(subject.indexOf("/") + 1));
  if (one === undefined) return `Not kept where the pin says: ${who}.`;
  const between = other === undefined || other === "" ? one : `${names.tree(one)} and ${names.tree(other)}`;
  return `Not kept between ${between}: ${who}.`;
}

function somebody({ about }: Told, names: Names): string {
  return about?.[0] === undefined ? "somebody else" : names.sleeper(about[0]);
}

function sayNoBerth({ subject, demand, limit, about }: Told): string {
  if (subject === "camp") return `${demand} of ${limit} have a berth.`;
  if (about?.[0] === "all-taken") return "Every berth that would serve is taken.";
  return about?.[0] === "no-ground" ? "No trees are given." : "No pair of trees here serves.";
}

function sayRadius(f: Told, names: Names): string {
  const hub = f.about?.[0] === undefined ? "the middle of the group" : names.sleeper(f.about[0]);
  const [kind, id = ""] = f.subject.split("/");
  const who = kind === "group" ? `the farthest of ${id}` : names.sleeper(id);
  return measured(`From ${hub} to ${who} it is`, f, distance);
}

/** Two whose zones keep them apart can be near only in the ring between the two distances. */
function sayNear(f: Told, names: Names): string {
  const told = measured(`Between ${both(f, names)} it is`, f, distance);
  const [, kind, apart] = f.about ?? [];
  if (kind !== "zones-apart" || f.verdict === "clear") return told;
  return `${told} Their zones keep them apart: only from ${distance(Number(apart))} to ${distance(f.limit)} meets both.`;
}

/** Two people by name: whom the finding is about, and the other. */
function both({ subject, about }: Told, names: Names): string {
  const other = about?.[0] === undefined ? "somebody" : names.sleeper(about[0]);
  return `${names.sleeper(subject.slice(subject.indexOf("/") + 1))} and ${other}`;
}

function distance(valueM: number): string {
  return length(valueM, 1);
}

function sayLooked(where: "at" | "above"): Say {
  return (f, names) => {
    const by = f.about?.[0];
    if (f.verdict !== "clear") {
      const seen = where === "at" ? names.seenOn?.(f.subject.slice("tree/".length)) : undefined;
      if (seen === undefined) return `Nobody has looked ${where} ${tree(f, names)}.`;
      return `Somebody looked at ${tree(f, names)} on ${day(seen)}. Look again on the day of the camp.`;
    }
    return `${by === undefined ? "Somebody" : names.sleeper(by)} looked ${where} ${tree(f, names)}.`;
  };
}

/** The last part of "berth/3/head-strap" in words. */
function part({ subject }: Told): string {
  return (subject.split("/")[2] ?? "rig").replaceAll("-", " ");
}

function tree({ subject }: Told, names: Names): string {
  return names.tree(subject.slice(subject.indexOf("/") + 1));
}

function other(f: Told, names: Names): string {
  const id = f.about?.[0];
  return id === undefined ? "a tree" : names.tree(id);
}

function item({ about }: Told, otherwise: string): string {
  return about?.[0] ?? otherwise;
}
