import type { Camp } from "../../plan/camp.ts";
import { screenHang, type HangKit } from "../../statics/hang-screen.ts";
import type { HangEnd } from "../../statics/hang-types.ts";
import { strapParts } from "../../statics/strap-parts.ts";
import type { DealtKit } from "../dealt-kit.ts";
import { hangKit, hangLimits } from "../hang-request.ts";

/** How much of the spans and girths asked for a kit can be hung at [m]. */
export interface SpanReach {
  /** Of the spans asked for, at a middling girth. */
  readonly servedM: number;
  readonly askedM: number;
  /** The stoutest trunk at which some span asked for serves. */
  readonly girthM: number;
  readonly girthAskedM: number;
}

/**
 * Where one sleeper could hang in one kit, over all spans of the house rules and a range of girths.
 *
 * The hang is asked every 10 cm of span; the share that serves is told as a length of span.
 *
 * Error    10 cm of span, 10 cm of girth
 * Source   hang-chain
 */
export function spanReach(camp: Camp, kit: DealtKit): SpanReach {
  const [low, high] = fitSpansM(camp);
  const rig = hangKit(kit, hangLimits(camp, kit.sleeper.statureM));
  const screen = screenHang(rig);
  const serves = (spanM: number, girthM: number) => {
    const end = { dbhM: girthM / Math.PI, elevationM: 0 };
    return goesRound(rig, end) && screen({ spanM, head: end, foot: end }).serves;
  };
  const spans = steps(low, high);
  const served = spans.filter((spanM) => serves(spanM, MIDDLE_GIRTH_M)).length;
  const girths = steps(...FIT_GIRTHS_M).filter((girthM) => spans.some((spanM) => serves(spanM, girthM)));
  const askedM = high - low;
  return {
    servedM: (askedM * served) / spans.length,
    askedM,
    girthM: Math.max(0, ...girths),
    girthAskedM: FIT_GIRTHS_M[1],
  };
}

/** A big trunk eats a short tree strap. Webbing is judged with its span, by the hang itself. */
function goesRound(rig: HangKit, end: HangEnd): boolean {
  const { type, ownedM } = rig.suspension;
  if (type === "tied-webbing" || ownedM === undefined) return true;
  const { roundTrunkM, tieM } = strapParts(rig, end, 0);
  return roundTrunkM + tieM <= ownedM;
}

/** Spans that a kit without ground should serve: those of the house rules [m]. */
export function fitSpansM({ rules }: Pick<Camp, "rules">): readonly [number, number] {
  return [rules.spanMinM.value, rules.spanMaxM.value];
}

/** Trunks of 20 to 50 cm [m]. Source: common-practice. */
export const FIT_GIRTHS_M: readonly [number, number] = [0.6, 1.6];

/** A trunk of 30 cm. */
const MIDDLE_GIRTH_M = 0.94;

function steps(low: number, high: number): number[] {
  const count = Math.max(1, Math.round((high - low) * 10));
  return Array.from({ length: count + 1 }, (_, step) => low + ((high - low) * step) / count);
}
