import { inDegrees, radians } from "../quantity/angle.ts";
import { GRAVITY_M_S2 } from "../quantity/constants.ts";
import { clothEdgePullN, ridgePull, type RidgePull } from "./ridge-pull.ts";
import { closedSide, openSide } from "./side-coefficients.ts";
import type { PitchedTarp, Side } from "./tarp-geometry.ts";
import { dynamicPressurePa, type CanopyCoefficients } from "./wind-load.ts";

export interface TarpLoadsInput {
  readonly tarp: PitchedTarp;
  readonly spanM: number;
  /** Gust at the tarp's own mean height. */
  readonly gustMS: number;
  /** Sides pegged to the ground, and how many ends are folded shut. */
  readonly pegged: readonly Side[];
  readonly closedEnds: number;
  readonly massKg: number;
  readonly setN: number;
  readonly eaN: number;
}

export interface TarpLoads {
  /** Greatest pull along the cloth at the lower edge of each side, for its guys to share. */
  readonly edgeN: Readonly<Record<Side, number>>;
  readonly calm: RidgePull;
  readonly gust: RidgePull;
  /** Level part of the gust's load on the ridge, square to it. */
  readonly asideN: number;
}

/**
 * What a gust does to guys and ridge.
 *
 *   side: F = max(c_up, c_down) q A, along the cloth F √(1/4 + 1/(8 b)²)
 *   ridge: the worse of both sides sucked, and one pressed while the other is sucked
 *
 * Shapes   a pitched tarp and a gust → pulls
 * Units    metres, m/s, kg, newtons
 * Holds    a side with air beneath: canopy, a duopitch where both sides are alike, a monopitch where they are 20° apart;
 *          a side pegged to the ground: pitched roof, outside and inside
 * Error    cloth is no stiff roof and shares of guys are uneven: half as much again
 * Source   en-1991-1-4, tarp-statics (handbook/shelter.md)
 */
export function tarpLoads(input: TarpLoadsInput): TarpLoads {
  const { tarp, spanM, gustMS, massKg, setN, eaN } = input;
  const left = sideForce(input, "left");
  const right = sideForce(input, "right");
  const edgeOf = ({ upN, downN }: SideForce) => clothEdgePullN(Math.max(upN, downN));
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
    edgeN: { left: edgeOf(left), right: edgeOf(right) },
    calm: ridgePull({ ...cord, loadN: weightN }),
    gust: ridgePull({ ...cord, loadN: gustN }),
    asideN: Math.max(...cases.map(({ asideN }) => Math.abs(asideN))),
  };
}

/** Sides whose slopes differ by so much count each as a roof of its own; between, straight lines. House convention. */
const UNLIKE_DEG = 20;

interface SideForce {
  readonly upN: number;
  readonly downN: number;
}

function sideForce(input: TarpLoadsInput, side: Side): SideForce {
  const { up, down } = coefficients(input, side);
  const force = dynamicPressurePa(input.gustMS) * input.tarp.flat.areaM2;
  return { upN: up * force, downN: down * force };
}

function coefficients({ tarp, pegged, closedEnds }: TarpLoadsInput, side: Side): CanopyCoefficients {
  const pitchDeg = inDegrees(radians(tarp.angle[side]));
  const otherPegged = pegged.includes(side === "left" ? "right" : "left");
  if (pegged.includes(side)) return closedSide(pitchDeg, 2 - closedEnds + (otherPegged ? 0 : 1));
  const blockageRatio = otherPegged ? 1 : closedEnds / BLOCKING_FACES;
  const unlike = Math.min(1, Math.abs(inDegrees(radians(tarp.angle.left - tarp.angle.right))) / UNLIKE_DEG);
  const duo = openSide("duo", Math.max(-20, pitchDeg), blockageRatio);
  const mono = openSide("mono", Math.abs(pitchDeg), blockageRatio);
  return { up: duo.up + unlike * (mono.up - duo.up), down: duo.down + unlike * (mono.down - duo.down) };
}

/** Of the faces that could be closed beneath an open side, each end counts a third. House convention. */
const BLOCKING_FACES = 3;

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
