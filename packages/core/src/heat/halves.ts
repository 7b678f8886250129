import { halfFlow, type HalfFlow } from "./half-flow.ts";
import { outerFilm, type Surroundings } from "./outer-film.ts";
import { SKIN_K } from "./sleep-states.ts";
import { windThroughRatio } from "./wind-through.ts";

/** One half of a sleeper's insulation. */
export interface InsulatedHalf {
  /** Skin to outer cloth, in still air [m²K/W]. */
  readonly insulationM2KPerW: number;
  /** Air that the outer cloth lets through [m/s]. */
  readonly permeabilityMS: number;
  /** Wind there where it is not the night's [m/s]. */
  readonly windMS?: number;
}

export interface HalvesInput {
  readonly night: Surroundings & { readonly humidityRatio: number };
  readonly top: InsulatedHalf;
  /** What is below, where it covers; beside it the back has the pressed bag or clothes alone. */
  readonly bottom: InsulatedHalf & { readonly coveredRatio: number };
  /** Share of the skin that loses its heat upwards. */
  readonly topShareRatio: number;
  /** How the head is kept; absent: in a hood like all the rest of the top. */
  readonly head?: HeadCover;
}

export type HeadCover = "hood" | "hat" | "bare";

export interface Halves {
  /** Each half by itself, per area of that half [W/m²]. */
  readonly topWM2: number;
  readonly bottomWM2: number;
  /** Skin to air: both together, and each as if it were all round [m²K/W]. */
  readonly totalM2KPerW: number;
  readonly topM2KPerW: number;
  readonly bottomM2KPerW: number;
  readonly iterations: number;
}

/**
 * Heat out of the two halves of a sleeper in tonight's air, skin at 33 °C. Patches of a half lie side by side, so their
 * flows are added, not their resistances.
 *
 *   q_bottom = c q(R) + (1 − c) q(R_bare),   q_top = (1 − h) q(R) + h q(R_head),   h = 0.07/f for a head not in a hood
 *
 * Shapes   two halves in, scalars out
 * Units    [m²K/W], [K], [m/s] → [W/m²], [m²K/W]
 * Holds    as `sleeperBalance`
 * Error    shares of the skin and of the head are estimates: 0.1 of share is 2 to 4 K where one half is poor
 * Source   sleeper-balance (handbook/heat.md)
 */
export function halves({ night, top, bottom, topShareRatio, head = "hood" }: HalvesInput): Halves {
  const above = sideOf(top, night);
  const below = sideOf(bottom, { ...night, radiantK: night.airK });
  const bareM2KPerW = Math.min(bottom.insulationM2KPerW, BARE_M2K_PER_W);
  // What is pressed to the back stays there, however hard the wind blows through what hangs below.
  const covered = below(Math.max(bareM2KPerW, inWind(bottom, night.windMS)));
  const bare = bottom.coveredRatio < 1 ? below(bareM2KPerW) : covered;
  const body = above(inWind(top, night.windMS));
  const headShare = topShareRatio > HEAD_SHARE ? HEAD_SHARE / topShareRatio : 1;
  const headFlow = head === "hood" ? body : above(Math.min(HEAD_M2K_PER_W[head], top.insulationM2KPerW));
  const topWM2 = mix(headShare, headFlow, body);
  const bottomWM2 = mix(bottom.coveredRatio, covered, bare);
  const drivesK = SKIN_K - night.airK;
  return {
    topWM2,
    bottomWM2,
    totalM2KPerW: drivesK / (topShareRatio * topWM2 + (1 - topShareRatio) * bottomWM2),
    topM2KPerW: drivesK / topWM2,
    bottomM2KPerW: drivesK / bottomWM2,
    iterations: covered.iterations + bare.iterations + body.iterations + headFlow.iterations,
  };
}

/** What the back has where nothing lies under it: a pressed bag, or clothes and cloth [m²K/W]. Source: common-practice. */
export const BARE_M2K_PER_W = 0.1;

/** Head and face, of all skin. Source: sleeper-balance, from memory. */
const HEAD_SHARE = 0.07;

/** Hair, and a warm hat [m²K/W]. Source: common-practice. */
const HEAD_M2K_PER_W = { bare: 0.1, hat: 0.3 } as const;

type Flow = (insulationM2KPerW: number) => HalfFlow;

function sideOf({ windMS }: InsulatedHalf, night: Surroundings): Flow {
  const around = { ...night, windMS: windMS ?? night.windMS };
  const film = outerFilm(around);
  return (insulationM2KPerW) => halfFlow(insulationM2KPerW, SKIN_K, film, around);
}

/** What the wind leaves of an insulation. */
function inWind({ insulationM2KPerW, permeabilityMS, windMS }: InsulatedHalf, nightMS: number): number {
  return insulationM2KPerW * windThroughRatio(windMS ?? nightMS, permeabilityMS);
}

function mix(share: number, a: HalfFlow, b: HalfFlow): number {
  return share * a.flowWM2 + (1 - share) * b.flowWM2;
}
