import type { Finding } from "@nightspan/core";
import { findingFile } from "./finding-file.ts";
import { tidy } from "./tidy.ts";

/**
 * A part of a plan in SI units in the form of its file: names in snake_case with the file's unit last, numbers in that
 * unit and tidied, nothing null or undefined. Units are told from the names alone, by the table below.
 *
 *   headTieM → head_tie_m    airK → air_c    marginK → margin_k    leftAngle → left_angle_deg    hammockM3S → hammock_ml_h
 *
 * The schemas of the parts say what comes out; a test holds every name against them.
 */
export function fileForm(value: unknown): unknown {
  return formed(value, PLAIN);
}

interface Unit {
  readonly name: string;
  readonly written: (value: number) => number;
}

const PLAIN: Unit = { name: "", written: (value) => value };

function formed(value: unknown, unit: Unit): unknown {
  if (typeof value === "number") return tidy(unit.written(value));
  if (Array.isArray(value)) return value.map((item: unknown) => formed(item, unit));
  if (typeof value !== "object" || value === null) return value;
  if (isFinding(value)) return findingFile(value);
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, inner]: [string, unknown]) => {
      if (inner === undefined || inner === null) return [];
      const [name, own] = named(key);
      return [[name, formed(inner, own.name === "" ? unit : own)]];
    }),
  );
}

function isFinding(value: object): value is Finding {
  return "rule" in value && "demand" in value;
}

function named(key: string): readonly [string, Unit] {
  for (const [pattern, unit] of UNITS) {
    const match = pattern.exec(key);
    if (match === null) continue;
    const stem = snake(match[1] ?? "");
    return [unit.name === "" || stem === "" ? stem + unit.name : `${stem}_${unit.name}`, unit];
  }
  return [snake(key), PLAIN];
}

function snake(name: string): string {
  return name.replaceAll(/(?<=[a-z0-9])[A-Z]/g, (letter) => `_${letter}`).toLowerCase();
}

const same = (value: number): number => value;
const inDegrees = (radians: number): number => (radians * 180) / Math.PI;
const inCelsius = (kelvin: number): number => kelvin - 273.15;
const inMillimetres = (metres: number): number => metres * 1000;
const inMinutes = (seconds: number): number => seconds / 60;
const inMlPerHour = (m3PerS: number): number => m3PerS * 3.6e9;

/** The first that fits; what is caught is the name without its unit. */
const UNITS: readonly (readonly [RegExp, Unit])[] = [
  [/^(from|peg|corners)$/, { name: "m", written: same }],
  [/^(width|strapWidth)M$/, { name: "mm", written: inMillimetres }],
  [/^(.*)M2KPerW$/, { name: "m2k_w", written: same }],
  [/^(.*)M3S$/, { name: "ml_h", written: inMlPerHour }],
  [/^(.*)WM2$/, { name: "w_m2", written: same }],
  [/^(.*)MmH$/, { name: "mm_h", written: same }],
  [/^(.*)MS$/, { name: "m_s", written: same }],
  [/^(.*)M2$/, { name: "m2", written: same }],
  [/^(air|dewPoint|cloth|sky|comfort|limit|low)K$/, { name: "c", written: inCelsius }],
  [/^(.*)K$/, { name: "k", written: same }],
  [/^(.*)Rad$/, { name: "deg", written: inDegrees }],
  [/^(.*[aA]ngle)$/, { name: "deg", written: inDegrees }],
  [/^(.*)Ratio$/, { name: "", written: same }],
  [/^(.*)Kg$/, { name: "kg", written: same }],
  [/^(.*)M$/, { name: "m", written: same }],
  [/^(.*)N$/, { name: "n", written: same }],
  [/^(.*)S$/, { name: "min", written: inMinutes }],
];
