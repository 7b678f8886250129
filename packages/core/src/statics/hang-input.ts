import type { Refusal } from "../outcome/outcome.ts";
import { degrees, inDegrees, radians } from "../quantity/angle.ts";
import type { HangEnd, HangInput } from "./hang-types.ts";

/**
 * Everything in a hang's input that cannot be used, by field; empty where all can.
 * Ranges are wide: they keep out slips of unit and sign, not unusual camps.
 */
export function hangInputRefusals(input: HangInput): readonly Refusal[] {
  const { spanM, head, foot, hammock, suspension, sleeper, targets, limits } = input;
  return [
    ...within("spanM", spanM, 0.5, 30),
    ...endRefusals("head", head),
    ...endRefusals("foot", foot),
    ...fallRefusals(input),
    ...within("hammock.lengthM", hammock.lengthM, 1.2, 6),
    ...ridgelineRefusals(hammock),
    ...within("hammock.massKg", hammock.massKg, 0, 10),
    ...maybe("hammock.eaN", hammock.eaN, 2_000, 1e9),
    ...within("suspension.minM", suspension.minM, 0, 10),
    ...maybe("suspension.maxM", suspension.maxM, Math.max(0.05, suspension.minM), 30),
    ...maybe("suspension.eaN", suspension.eaN, 2_000, 1e9),
    ...maybe("suspension.wraps", suspension.wraps, 0.5, 10),
    ...maybe("suspension.connectorM", suspension.connectorM, 0, 0.5),
    ...maybe("suspension.ownedM", suspension.ownedM, 0, 100),
    ...within("sleeper.massKg", sleeper.massKg, 5, 300),
    ...within("sleeper.statureM", sleeper.statureM, 0.7, Math.min(2.5, hammock.lengthM)),
    ...limitRefusals(limits, "limits"),
    ...(input.okLimits === undefined ? [] : limitRefusals(input.okLimits, "okLimits")),
    ...targetRefusals(targets, limits),
    ...maybe("spanErrorM", input.spanErrorM, 0, 2),
  ];
}

function endRefusals(end: "head" | "foot", { dbhM, elevationM }: HangEnd): readonly Refusal[] {
  return [...within(`${end}.dbhM`, dbhM, 0.03, 5), ...within(`${end}.elevationM`, elevationM, -500, 9_000)];
}

/** The ground between the trees may not be steeper than a person can set a hang on. */
function fallRefusals({ head, foot, spanM }: HangInput): readonly Refusal[] {
  const fallM = Math.abs(head.elevationM - foot.elevationM);
  if (!(fallM > STEEPEST_GROUND * spanM)) return [];
  return [
    {
      field: "foot.elevationM",
      got: foot.elevationM,
      need: `within ${STEEPEST_GROUND} × span of the head tree's ground`,
    },
  ];
}

function ridgelineRefusals({ ridgelineM, lengthM }: HangInput["hammock"]): readonly Refusal[] {
  if (ridgelineM === undefined) return [];
  const field = "hammock.ridgelineM";
  if (ridgelineM >= lengthM) {
    const need = "shorter than the cloth";
    return [{ field, got: ridgelineM, need, binds: "ridgeline-longer-than-cloth" }];
  }
  return within(field, ridgelineM, 0.5 * lengthM, lengthM);
}

function limitRefusals(limits: HangInput["limits"], name: "limits" | "okLimits"): readonly Refusal[] {
  return [
    ...angleWithin(`${name}.angleMin`, limits.angleMin, 5, 75),
    ...angleWithin(`${name}.angleMax`, limits.angleMax, Math.max(5, inDegrees(limits.angleMin)), 75),
    ...maybe(`${name}.reachM`, limits.reachM, 0.5, 10),
    ...maybe(`${name}.strapHeightMaxM`, limits.strapHeightMaxM, 0.3, 30),
    ...maybe(`${name}.lowPointMaxM`, limits.lowPointMaxM, 0.05, 10),
    ...within(`${name}.lowPointMinM`, limits.lowPointMinM, 0, 2),
    ...within(`${name}.seatHeightMinM`, limits.seatHeightMinM, 0.05, 3),
    ...within(`${name}.seatHeightMaxM`, limits.seatHeightMaxM, Math.max(0.05, limits.seatHeightMinM), 3),
    ...within(`${name}.footRaiseMinM`, limits.footRaiseMinM, -1, 1),
    ...within(`${name}.footRaiseMaxM`, limits.footRaiseMaxM, limits.footRaiseMinM, 1),
  ];
}

function targetRefusals(targets: HangInput["targets"], limits: HangInput["limits"]): readonly Refusal[] {
  const [least, most] = [inDegrees(limits.angleMin), inDegrees(limits.angleMax)];
  return [
    ...angleWithin("targets.angle", targets.angle, Math.max(5, least), Math.min(75, most)),
    ...bounded(
      "targets.seatHeightM",
      targets.seatHeightM,
      limits.seatHeightMinM,
      limits.seatHeightMaxM,
      SEAT,
    ),
    ...bounded("targets.footRaiseM", targets.footRaiseM, limits.footRaiseMinM, limits.footRaiseMaxM, RAISE),
  ];
}

const STEEPEST_GROUND = 0.7;
const SEAT = ["seat-lowest", "seat-highest"] as const;
const RAISE = ["foot-raise-least", "foot-raise-most"] as const;

function within(field: string, got: number, low: number, high: number): readonly Refusal[] {
  if (got >= low && got <= high) return [];
  const bounds =
    Number.isFinite(low) && Number.isFinite(high) ? `from ${rounded(low)} to ${rounded(high)}` : "";
  return [{ field, got, need: bounds === "" ? "a finite number" : bounds }];
}

function maybe(field: string, got: number | undefined, low: number, high: number): readonly Refusal[] {
  return got === undefined ? [] : within(field, got, low, high);
}

function angleWithin(
  field: string,
  got: number,
  lowDegrees: number,
  highDegrees: number,
): readonly Refusal[] {
  const low = degrees(lowDegrees) - ANGLE_SLACK;
  const high = degrees(highDegrees) + ANGLE_SLACK;
  if (got >= low && got <= high) return [];
  const need = `from ${rounded(lowDegrees)} to ${rounded(highDegrees)} degrees`;
  return [{ field, got: rounded(inDegrees(radians(got))), need }];
}

/** Angles went through a conversion: a bound is met within this [rad]. */
const ANGLE_SLACK = 1e-9;

function bounded(
  field: string,
  got: number | undefined,
  low: number,
  high: number,
  [lowest, highest]: readonly ["seat-lowest" | "foot-raise-least", "seat-highest" | "foot-raise-most"],
): readonly Refusal[] {
  if (got === undefined || (got >= low && got <= high)) return [];
  const need = `from ${rounded(low)} to ${rounded(high)}`;
  if (got < low) return [{ field, got, need, binds: lowest }];
  return got > high ? [{ field, got, need, binds: highest }] : [{ field, got, need }];
}

function rounded(value: number): number {
  return Math.round(value * 1000) / 1000;
}
