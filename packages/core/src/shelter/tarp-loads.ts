import { inDegrees, radians } from "../quantity/angle.ts";
import { GRAVITY_M_S2 } from "../quantity/constants.ts";
import { clothEdgePullN, ridgePull, type RidgePull } from "./ridge-pull.ts";
import type { PitchedTarp, Side } from "./tarp-geometry.ts";
import { canopyCoefficients, dynamicPressurePa, type Roof } from "./wind-load.ts";

export interface TarpLoadsInput {
  readonly tarp: PitchedTarp;
  readonly spanM: number;
  /** Gust at the tarp's height. */
  readonly gustMS: number;
  readonly blockageRatio: number;
  readonly massKg: number;
  readonly setN: number;
  readonly eaN: number;
  /** Guys on each side. */
  readonly guys: Readonly<Record<Side, number>>;
}

export interface TarpLoads {
  /** Greatest pull in each guy of a side. */
  readonly guyN: Readonly<Record<Side, number>>;
  readonly calm: RidgePull;
  readonly gust: RidgePull;
  /** Level part of the gust's load on the ridge, square to it. */
  readonly asideN: number;
}

/**
 * What a gust does to guys and ridge.
 *
 *   side: F = max(c_up, c_down) q A, along the cloth F √(1/4 + 1/(8 b)²), shared by its guys
 *   ridge: the worse of both sides sucked, and one pressed while the other is sucked
 *
 * Shapes   a pitched tarp and a gust → pulls
 * Units    metres, m/s, kg, newtons
 * Holds    coefficients of the canopy tables; sides steeper than 30° take their last row
 * Error    cloth is no stiff roof and shares of guys are uneven: half as much again
 * Source   en-1991-1-4, tarp-statics (handbook/shelter.md)
 */
export function tarpLoads(input: TarpLoadsInput): TarpLoads {
  const { tarp, spanM, gustMS, guys, massKg, setN, eaN } = input;
  const left = sideForce(input, "left");
  const right = sideForce(input, "right");
  const perGuy = (side: Side, force: SideForce) =>
    guys[side] > 0 ? clothEdgePullN(Math.max(force.upN, force.downN)) / guys[side] : 0;
  const cases = [
    onRidge(tarp, left.upN, right.upN),
    onRidge(tarp, -left.downN, right.upN),
    onRidge(tarp, left.upN, -right.downN),
  ];
  const worst = cases.reduce((most, each) =>
    Math.hypot(each.asideN, each.downN) > Math.hypot(most.asideN, most.downN) ? each : most,
  );
  const weightN = massKg * GRAVITY_M_S2;
  const cord = { spanM, setN, eaN };
  const gustN = gustMS > 0 ? Math.max(weightN, Math.hypot(worst.asideN, worst.downN)) : weightN;
  return {
    guyN: { left: perGuy("left", left), right: perGuy("right", right) },
    calm: ridgePull({ ...cord, loadN: weightN }),
    gust: ridgePull({ ...cord, loadN: gustN }),
    asideN: Math.max(...cases.map(({ asideN }) => Math.abs(asideN))),
  };
}

interface SideForce {
  readonly upN: number;
  readonly downN: number;
}

function sideForce({ tarp, gustMS, blockageRatio }: TarpLoadsInput, side: Side): SideForce {
  const roof: Roof = tarp.angle.left === tarp.angle.right ? "duo" : "mono";
  const pitchDeg = inDegrees(radians(tarp.angle[side]));
  const inTable = roof === "mono" ? Math.abs(pitchDeg) : Math.max(-20, pitchDeg);
  const { up, down } = canopyCoefficients(roof, inTable, blockageRatio);
  const force = dynamicPressurePa(gustMS) * tarp.flat.areaM2;
  return { upN: up * force, downN: down * force };
}

/** Load of both cloths on the ridge: half of what presses each, and its pull along the side. Suction is positive. */
function onRidge({ angle }: PitchedTarp, leftN: number, rightN: number) {
  const [left, right] = [cloth(angle.left, leftN), cloth(angle.right, rightN)];
  return { asideN: left.outN - right.outN, downN: left.downN + right.downN };
}

function cloth(angle: number, squareN: number): { readonly outN: number; readonly downN: number } {
  const halfN = squareN / 2;
  const alongN = Math.sqrt(Math.max(0, clothEdgePullN(squareN) ** 2 - halfN * halfN));
  return {
    outN: alongN * Math.cos(angle) + halfN * Math.sin(angle),
    downN: alongN * Math.sin(angle) - halfN * Math.cos(angle),
  };
}
