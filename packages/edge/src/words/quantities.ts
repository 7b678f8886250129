import { GRAVITY_M_S2, toldBodyMark } from "@nightspan/core";
import { bodyMarkWords, ENGLISH, plainLabels } from "@nightspan/drawing";

/** Heights and lengths for hands are told to this step [m]. */
const HAND_STEP_M = 0.05;

/** A length as measured, "4.12 m". */
export function length(valueM: number, digits = 2): string {
  return plainLabels({ quantity: "length", value: valueM, digits });
}

/** A height or length for hands, to 5 cm: "1.75 m". */
export function handLength(valueM: number): string {
  return length(toHandStep(valueM));
}

/** A difference for hands, to 5 cm: "20 cm". */
export function handDifference(valueM: number): string {
  return plainLabels({ quantity: "short-length", value: toHandStep(valueM), digits: 0 });
}

export function toHandStep(valueM: number): number {
  return Math.round(valueM / HAND_STEP_M) * HAND_STEP_M;
}

export function width(valueM: number): string {
  return `${plainLabels({ quantity: "count", value: valueM * 1000, digits: 0 })}\u00a0mm`;
}

export function trunk(valueM: number): string {
  return plainLabels({ quantity: "diameter", value: valueM, digits: 0 });
}

export function angle(valueRad: number): string {
  return plainLabels({ quantity: "angle", value: valueRad, digits: 0 });
}

/** A pull as the mass that would hang there, to 5 kg: "like 80 kg hanging". For the planner's own screen only. */
export function hanging(pullN: number): string {
  const massKg = Math.round(pullN / GRAVITY_M_S2 / 5) * 5;
  return `like ${massKg}\u00a0kg hanging`;
}

export function force(valueN: number): string {
  return plainLabels({ quantity: "force", value: valueN, digits: 0 });
}

export function mass(valueKg: number): string {
  return `${plainLabels({ quantity: "count", value: valueKg, digits: 0 })}\u00a0kg`;
}

export function speed(valueMS: number): string {
  return `${plainLabels({ quantity: "count", value: valueMS, digits: 0 })}\u00a0m/s`;
}

/** Steps of somebody, to the half: "5½". */
export function steps(spanM: number, stepM: number): string {
  return plainLabels({ quantity: "steps", value: spanM / stepM, digits: 0 });
}

export function day(civilDay: string): string {
  return plainLabels({ day: civilDay, style: "short" });
}

/** A height, told to 5 cm, as a place on a body, "at your chin", "10 cm above Maren's chin". */
export function atBodyMark(heightM: number, statureM: number, whose: string): string {
  const { mark, deviationM: off } = toldBodyMark(heightM, statureM);
  const place = `${whose} ${ENGLISH[`mark.${mark}`]}`;
  if (off === 0) return `at ${place}`;
  return `${handDifference(Math.abs(off))} ${off > 0 ? "above" : "below"} ${place}`;
}

/** The same as one short mark for tables: "chin", "chin + 10 cm". */
export function shortBodyMark(heightM: number, statureM: number): string {
  return bodyMarkWords(heightM, statureM);
}
