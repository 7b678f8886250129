import type { BorrowWish, CutList, Dealing, KitShortage, MaterialCuts, Plan } from "@nightspan/core";
import { ENGLISH } from "@nightspan/drawing";
import type { Names } from "./names.ts";
import { length, width } from "./quantities.ts";

/** What of the store there is too little of: who goes without, who competes, what to borrow. */
export function shortageLines({ dealing }: Plan, names: Names): readonly string[] {
  return dealing === undefined
    ? []
    : [...dealing.shortages.map((one) => sayShortage(one, names)), ...spare(dealing)];
}

/** What is proven of how warm layers were dealt, where these do not go round. */
export function provenLines({ shortages, provenOf }: Dealing): readonly string[] {
  const isShort = shortages.some(({ kind }) => kind === "under" || kind === "over");
  if (!isShort || !provenOf.below) return [];
  const more = provenOf.leastMargin ? ["the coldest of them can be no warmer"] : [];
  const not = [
    ...(provenOf.leastMargin ? [] : ["the coldest can be no warmer"]),
    ...(provenOf.order ? [] : ["those below come as near as can be"]),
  ];
  return [
    `Proven of warm layers, by what each half asks: ${["no fewer people can be below what is asked", ...more].join("; ")}.`,
    ...(not.length === 0 ? [] : [`Not proven: ${not.join("; ")}.`]),
  ];
}

function sayShortage(
  { kind, lacking, competing, isFewest, items, pieces, borrow }: KitShortage,
  names: Names,
): string {
  const who = (ids: readonly string[]) => ids.map((id) => names.sleeper(id)).join(", ");
  const what = ENGLISH[`packed.${kind}`];
  const without =
    kind === "under" || kind === "over"
      ? `No ${what} that is warm enough tonight is left for ${who(lacking)}`
      : `No ${what} serves ${who(lacking)}`;
  const rest = competing.filter((id) => !lacking.includes(id));
  const why =
    rest.length === 0 || items.length === 0
      ? ""
      : ` ${competing.length} people for ${pieces} of ${items.join(", ")}${isFewest ? "" : ", the fewest found"}: ${who(competing)}.`;
  return [`${without}.${why}`, ...borrow.map(sayBorrow)].join(" ");
}

function sayBorrow({ kind, count, lengthM, strapWidthM, airK }: BorrowWish): string {
  const needs = [
    lengthM === undefined ? "" : `at least ${length(lengthM)} long`,
    strapWidthM === undefined ? "" : `at least ${width(strapWidthM)} wide`,
    airK === undefined ? "" : "warm enough for tonight",
  ].filter((need) => need !== "");
  return `Borrow or buy ${count} × ${[ENGLISH[`packed.${kind}`], ...needs].join(", ")}.`;
}

function spare({ spareUnderLacking, groundPlaces }: Dealing): readonly string[] {
  const places = groundPlaces === 1 ? "one place" : `${groundPlaces} places`;
  return [
    ...(spareUnderLacking === 0 ? [] : [`Spare under layers to find: ${spareUnderLacking}.`]),
    ...(groundPlaces === 0
      ? []
      : [`Keep ${places} on the ground or under a roof free, one for every six sleepers.`]),
  ];
}

/** What is to be cut, one line a material; what to buy is told first. */
export function cutLines(cuts: CutList | undefined): readonly string[] {
  return (cuts?.materials ?? []).map(sayMaterial);
}

function sayMaterial({ material, widthM, pieces, patterns, toBuy, piecesM, proven }: MaterialCuts): string {
  const name =
    widthM === undefined ? ENGLISH[`cuts.${material}`] : `${ENGLISH[`cuts.${material}`]} ${width(widthM)}`;
  const count = pieces.reduce((sum, piece) => sum + piece.count, 0);
  const begun = patterns.reduce((sum, { times }) => sum + times, 0);
  const buy = toBuy.map(({ lengthM, count: many }) => `${many} × ${length(lengthM, 0)}`).join(", ");
  const from = begun === 1 ? "one spool" : `${begun} spools`;
  return [
    `${name}: ${count} ${count === 1 ? "piece" : "pieces"}, ${length(piecesM, 1)}, from ${from}`,
    buy === "" ? "" : `; to buy: ${buy}`,
    proven ? "." : "; another way may buy or begin less.",
  ].join("");
}
