import type { HangInput } from "./hang-types.ts";

type SuspensionKind = HangInput["suspension"]["type"];

/** Cells of the cloth between its gathers in a planned hang; even, so that a node lies in the middle. */
export const CLOTH_CELLS = 32;

/**
 * Stiffness EA of one strap where nobody states it [N]. Source: sling-practice for webbing: polyester slings give 3 to
 * 7 % at a fifth of breaking, so EA is 2.9 to 6.7 times the breaking strength, 20 to 47 kN for 7 kN (nylon 2.0 to 3.3
 * times, half of that). Slings of slick fibre: common-practice, from memory, under 1 % at 800 N.
 * Spread: half to twice (see the band).
 */
export const STRAP_EA_N: Readonly<Record<SuspensionKind, number>> = {
  "tied-webbing": 40_000,
  "whoopie-sling": 100_000,
};

/** Popliteal height through the means of women and men: slope and height at 1.7 m [m]. Source: ansur-ii. */
export const POPLITEAL_SLOPE = (0.4298 - 0.3882) / (1.7562 - 1.6285);
export const POPLITEAL_AT_1_7_M = 0.3882 + POPLITEAL_SLOPE * (1.7 - 1.6285);

/** Shoe added to the popliteal height [m]. Source: common-practice (ergonomists' allowance, from memory). */
export const SHOE_M = 0.025;

/** Seat height where the stature is not known [m]. Source: common-practice (chair height). */
export const SEAT_HEIGHT_UNKNOWN_M = 0.45;

/** Hip breadth sitting over stature: mean of women (0.399/1.6285) and men (0.3793/1.7562). Source: ansur-ii. */
export const HIP_BREADTH_RATIO = (0.399 / 1.6285 + 0.3793 / 1.7562) / 2;

/** Full turns of tied webbing round the trunk. Source: common-practice. */
export const WRAPS = 1;
/** Webbing taken up by the slipped knot and its half hitch, and the tail left over [m]. Source: common-practice. */
export const KNOT_M = 0.25;
export const TAIL_M = 0.15;
/** Tree strap beyond the trunk's girth so that its eyes meet clear of the bark [m]. Source: common-practice. */
export const STRAP_OVERLAP_M = 0.3;
/** The same for a strap through its own eye: one end comes clear, with the eye itself [m]. Source: common-practice. */
export const OWN_EYE_OVERLAP_M = 0.2;
/** A sewn eye, lying flat [m]. Source: common-practice. */
export const EYE_M = 0.06;

/** Bedding-in of wraps and knot in the first ten minutes of sitting, each strap [m], spread half to twice. Source: common-practice. */
export const BEDDING_IN_M: Readonly<Record<SuspensionKind, number>> = {
  "tied-webbing": 0.015,
  "whoopie-sling": 0.005,
};
/** Creep under the night's load over the strap's length, spread half to twice. Source: common-practice. */
export const CREEP_RATIO: Readonly<Record<SuspensionKind, number>> = {
  "tied-webbing": 0.01,
  "whoopie-sling": 0.002,
};

/** Stiffness of nylon over polyester: 2.0 to 3.3 times breaking strength beside 2.9 to 6.7. Source: sling-practice. */
export const NYLON_STIFFNESS_RATIO = 0.5;
/** Stretch of wet nylon over dry: yarns give 18 to 32 % wet, 15 to 28 % dry. Source: textile-tables, from memory. */
export const WET_NYLON_RATIO = 1.2;

/** Seat height for a stature: popliteal height and a shoe [m]; 0.45 m where nobody knows the stature. */
export function seatHeightOf(statureM: number | undefined): number {
  if (statureM === undefined) return SEAT_HEIGHT_UNKNOWN_M;
  return POPLITEAL_AT_1_7_M + POPLITEAL_SLOPE * (statureM - 1.7) + SHOE_M;
}
