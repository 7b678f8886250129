/** What a bag or mat is filled with. */
export type Filling = "down" | "polyester" | "foam";

/** What a body's weight leaves of a thickness. Source: common-practice, from memory: ± 0.05, 0.10, 0.05. */
export const PRESSED_RATIO: Readonly<Record<Filling, number>> = { down: 0.1, polyester: 0.25, foam: 0.95 };

/** Conductivity of a lofted filling, radiation in it included [W/mK]. Source: common-practice, from memory: ± 20 %. */
export const FILLING_W_M_K: Readonly<Record<Filling, number>> = { down: 0.04, polyester: 0.045, foam: 0.04 };

/** Resistance of a filling by its thickness [m²K/W]. */
export function loftedM2KPerW(loftM: number, filling: Filling): number {
  return loftM / FILLING_W_M_K[filling];
}

/**
 * Resistance of a layer under a lying body: as its thickness.
 *
 * Units    [m²K/W]
 * Error    half of it; it is small but for foam, and never to be added to what hangs below
 * Source   common-practice, from memory (handbook/heat.md)
 */
export function pressedM2KPerW(insulationM2KPerW: number, filling: Filling): number {
  return insulationM2KPerW * PRESSED_RATIO[filling];
}
