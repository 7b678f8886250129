import type { DefaultUsed, Sleeper } from "../../plan/camp.ts";
import { DEFAULTS, type DefaultKey } from "../../plan/defaults.ts";
import type { UnderInsulation } from "../../plan/kit.ts";
import type { DealtKit } from "../dealt-kit.ts";
import { placeOf } from "./kit-halves.ts";
import { isYoung } from "./warmth-margin.ts";

/** Defaults that the warmth of these sleepers rested on. */
export function warmthDefaults(dealt: readonly DealtKit[]): readonly DefaultUsed[] {
  const unders = dealt.flatMap(({ under, hammock }) => (under === undefined ? [] : [{ under, hammock }]));
  const people = dealt.map(({ sleeper }) => sleeper);
  const overs = dealt.flatMap(({ over }) => over ?? []);
  const bare = (hangs: boolean) =>
    unders.filter(
      ({ under, hammock }) => !covers(under) && (placeOf(under, hammock) === "hung-below") === hangs,
    );
  const hung = unders.filter(({ under, hammock }) => placeOf(under, hammock) === "hung-below");
  return [
    ...used("sleepers[].age", people.filter(ageless)),
    ...used(
      "kit[].covered_underblanket",
      bare(true).map(({ under }) => under),
    ),
    ...used(
      "kit[].covered_mat",
      bare(false).map(({ under }) => under),
    ),
    ...used(
      "kit[].gap",
      hung.map(({ under }) => under).filter(({ gapRatio }) => gapRatio === undefined),
    ),
    ...used("kit[].permeability_under", hung.map(({ under }) => under).filter(unknownCloth)),
    ...used("kit[].permeability_over", overs.filter(unknownCloth)),
    ...used("warmth.top_share", []),
    ...(people.every(isYoung) ? [] : [...used("warmth.margin_k", []), ...used("warmth.band_share", [])]),
    ...(people.some(isYoung) ? used("warmth.youth_margin_k", []) : []),
    ...(people.some(isCoolOnce) ? used("warmth.youth_warmer_k", []) : []),
    ...used("warmth.cold_back_w_m2", []),
  ];
}

function isCoolOnce({ learnt }: Sleeper): boolean {
  return learnt?.by === "youth-rule" && [learnt.under, learnt.over].includes("warmer-than-the-rule");
}

function covers({ coveredRatio }: UnderInsulation): boolean {
  return coveredRatio !== undefined;
}

function ageless({ ageYears }: Sleeper): boolean {
  return ageYears === undefined;
}

function unknownCloth({ permeabilityMS }: { readonly permeabilityMS?: number }): boolean {
  return permeabilityMS === undefined;
}

/** A field of people or kit is used where somebody is it for; one of `warmth` always. */
function used(field: DefaultKey, things: readonly { readonly id: string }[]): readonly DefaultUsed[] {
  const ids = [...new Set(things.map(({ id }) => id))];
  if (ids.length === 0 && !field.startsWith("warmth.")) return [];
  return [{ field, value: DEFAULTS[field].value, for: ids }];
}
