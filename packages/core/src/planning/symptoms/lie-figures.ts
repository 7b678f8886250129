import type { HangInput, HangShape, Point2 } from "../../statics/hang-types.ts";
import { degrees, radians } from "../../quantity/angle.ts";
import { AS_PLANNED, hungModel, type Come, type HungModel } from "../adjust/hung-model.ts";
import { CLOTH_OVER_STATURE_M } from "../assumed-kit.ts";
import type { AdviceKey, SymptomFigure, SymptomFigureKey } from "./symptom-types.ts";

/** A hang looked at, as it is or as it would be. */
export interface LookedAt {
  readonly come: Come;
  readonly shape: HangShape;
  readonly weightN: number;
}

/** How far trunk and shanks are folded against each other, lying along the middle; 0 is flat [rad]. */
export function bendOf({ shape: { body } }: LookedAt): number {
  return rise(body.hip, body.shoulder) + rise(body.knee, body.ankle);
}

/** Sideways pull of the cloth alone, without the ridgeline, over the weight: what squeezes the shoulders. */
export function clothPullOf({ come, weightN }: LookedAt): number {
  const { head } = come.state;
  return (head.pullN * Math.cos(head.angle) - come.ridgeN) / weightN;
}

/** How the hang would be, planned anew with something else asked for; nothing where that is refused. */
export function plannedWith(request: HangInput): LookedAt | undefined {
  const model = hungModel(request);
  return model.ok ? asPlanned(model.value) : undefined;
}

export function asPlanned({ planned, shape, weightN }: HungModel): LookedAt {
  return { come: planned, shape: shape(AS_PLANNED), weightN };
}

/** The request with its ridgeline longer by so much; nothing where there is none. */
export function withRidgeline(request: HangInput, byM: number): HangInput | undefined {
  const { ridgelineM } = request.hammock;
  if (ridgelineM === undefined) return undefined;
  return { ...request, hammock: { ...request.hammock, ridgelineM: ridgelineM + byM } };
}

/** The request with its straps steeper by so much, inside their limits. */
export function withAngle(request: HangInput, by: number): HangInput {
  const { angleMin, angleMax } = request.limits;
  const angle = radians(Math.min(angleMax, Math.max(angleMin, request.targets.angle + by)));
  return { ...request, targets: { ...request.targets, angle } };
}

/** One step of a ridgeline, and of the straps, that people try at a time. Source: common-practice. */
export const RIDGELINE_STEP_M = 0.03;
export const ANGLE_STEP: number = degrees(3);

/** Something that may help, planned anew; nothing where it cannot be asked for. */
export interface LieTry {
  readonly figure: SymptomFigureKey;
  readonly key: AdviceKey;
  readonly request: HangInput | undefined;
}

/** How a figure of the lie would come out for each thing tried, and which of them are worth it. */
export function lieTries(
  tries: readonly LieTry[],
  { now, worth, unit, of }: LieMeasure,
): { readonly figures: readonly SymptomFigure[]; readonly advice: readonly AdviceKey[] } {
  const tried = tries.flatMap(({ figure, key, request }) => {
    const then = request === undefined ? undefined : plannedWith(request);
    return then === undefined ? [] : [{ figure, key, value: of(then) }];
  });
  return {
    figures: tried.map(({ figure, value }) => ({ figure, value, unit })),
    advice: tried.filter(({ value }) => value < now - worth).map(({ key }) => key),
  };
}

/** A figure of the lie that is better the less it is: as it is now, and from how much less on it is worth a change. */
export interface LieMeasure {
  readonly of: (looked: LookedAt) => number;
  readonly now: number;
  readonly worth: number;
  readonly unit: SymptomFigure["unit"];
}

/** Whether the cloth is long enough for the sleeper. */
export function clothFigure({ hammock, sleeper }: HangInput): SymptomFigure {
  const value = hammock.lengthM - sleeper.statureM;
  return { figure: "cloth-over-stature", value, unit: "m", low: CLOTH_OVER_STATURE_M };
}

export function isShortCloth({ hammock, sleeper }: HangInput): boolean {
  return hammock.lengthM - sleeper.statureM < CLOTH_OVER_STATURE_M;
}

function rise([fromX, fromZ]: Point2, [toX, toZ]: Point2): number {
  return Math.atan((toZ - fromZ) / Math.abs(toX - fromX));
}
