import type { Enough, Finding, RuleKey, WarmthChange, WarmthHalf } from "@nightspan/core";
import type { Names } from "./names.ts";

/** What a sentence about warmth is made from. */
type Told = Pick<Finding, "demand" | "limit" | "verdict"> & {
  readonly about?: readonly string[] | undefined;
};

type WarmthRule = Extract<RuleKey, `warmth.${string}` | "under.enough" | "over.enough">;

/** Sentences about warmth. No degree and nobody's age stands in any of them, so they may stand on papers too. */
export const WARMTH_SENTENCES: Readonly<Record<WarmthRule, (finding: Told, names: Names) => string>> = {
  "under.enough": (f) => `What is under the sleeper is ${enough(f)}${itemOf(f)}.`,
  "over.enough": (f) => `What is over the sleeper is ${enough(f)}${itemOf(f)}.`,
  "warmth.no-under": (f) =>
    f.verdict === "clear"
      ? "Nothing is under the sleeper. Tonight that is enough."
      : "Nothing is under the sleeper: the back gets cold.",
  "warmth.no-over": (f) =>
    f.verdict === "clear"
      ? "Nothing is over the sleeper. Tonight that is enough."
      : "Nothing is over the sleeper.",
  "warmth.weaker-half": (f) => `The weaker half rules: what is ${halfOf(f.about?.[0])} the sleeper.`,
  "warmth.helps": (f) => `What would help most: ${changeOf(f.about)}.`,
  "warmth.far-short": () => "Far too cold in this kit. Change it, or sleep on the ground or indoors.",
  "warmth.youth-rule": sayYouthRule,
  "warmth.spare-per-six": (f) =>
    f.demand < f.limit
      ? `Spare under layers: ${f.demand} of the ${f.limit} to carry, one for every six sleepers.`
      : `Spare under layers: ${f.demand}, at least one for every six sleepers.`,
};

/** A half in one word or two. */
export const ENOUGH: Readonly<Record<Enough, string>> = {
  enough: "enough",
  borderline: "borderline",
  "not-enough": "not enough",
};

function enough({ about, verdict }: Told): string {
  const told = about?.[0];
  if (told !== undefined && isEnough(told)) return ENOUGH[told];
  return { clear: ENOUGH.enough, "look-again": ENOUGH.borderline, "do-not-hang": ENOUGH["not-enough"] }[
    verdict
  ];
}

function isEnough(text: string): text is Enough {
  return Object.hasOwn(ENOUGH, text);
}

function itemOf({ about }: Told): string {
  return about?.[1] === undefined ? "" : `: ${about[1]}`;
}

function halfOf(half: string | undefined): WarmthHalf {
  return half === "over" ? "over" : "under";
}

const CHANGES: Readonly<Record<WarmthChange, string>> = {
  "add-mat": "a mat under the back",
  "add-underblanket": "an underblanket",
  "close-gap": "hanging it snug, so that no air moves between",
  "cover-more": "covering the whole back, shoulders to calves",
  "wind-side-down": "the tarp low on the windward side",
  "add-quilt": "a quilt on top",
  "warmer-bag": "a quilt over the bag, or a warmer bag",
  "wear-hat": "a warm hat",
  "dry-it": "drying it",
};

/** One change in words; something general where this version does not know it. */
export function changeOf(about: readonly string[] | undefined): string {
  const change = about?.[0];
  return change !== undefined && isChange(change) ? CHANGES[change] : "more insulation";
}

function isChange(text: string): text is WarmthChange {
  return Object.hasOwn(CHANGES, text);
}

function sayYouthRule({ about, verdict }: Told, names: Names): string {
  const [rated = "", spare = "", grown = ""] = about ?? [];
  const kit =
    rated === "not-rated" || (rated !== "rated" && verdict !== "clear")
      ? "Under and over are to be rated well below the low; in tonight's wind and sky they are not"
      : "Under and over are rated well below the low";
  const kept = spare === "" ? "no spare under layer is left" : `spare under layer: ${spare}`;
  const looks =
    grown === "" ? "nobody grown can look in at night" : `${names.sleeper(grown)} looks in at night`;
  return `${kit}; ${kept}; ${looks}.`;
}
