/**
 * Peak over still weight, sitting down hard: the highest vertical force on a seat, 20 people on a chair.
 * Spread not printed. Source: ergonomics-2016 (abstract).
 */
export { HARD_SITTING_FACTOR as SITTING_DOWN_HARD } from "../../statics/drop-load.ts";

/** Share of its strength that webbing keeps with a knot in it; the low end of what was read. Source: knot-strength. */
export const KNOT_KEEPS = 0.5;

/** Share of its rated load that a strap through its own eye keeps. Source: sling-practice. */
export const OWN_EYE_KEEPS = 0.8;

/** Fall for which the energy of a drop is told [m]: a hand's breadth. Source: house-convention. */
export const DROP_TOLD_M = 0.1;

/** One standard deviation of bending strength between clear pieces of one species, of the mean. Source: wood-handbook. */
export const WOOD_VARIES = 0.16;

/** Standard deviations below the mean under which 5 of 100 lie. */
export const ONE_IN_TWENTY = 1.645;
