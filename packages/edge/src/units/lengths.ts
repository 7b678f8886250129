import { refuse, succeed, type Outcome } from "@nightspan/core";

/** Inch and foot [m], exact by the agreement of 1959. */
const INCH_M = 0.0254;
const FOOT_M = 0.3048;

const METRIC: Readonly<Record<string, number>> = { "": 1, m: 1, cm: 0.01, mm: 0.001 };
const METRIC_TEXT = /^(-?\d+(?:\.\d+)?)\s*(m|cm|mm)?$/;
const FEET_TEXT = /^(-?)(\d+(?:\.\d+)?)\s*(?:ft|')(?:\s*(\d+(?:\.\d+)?)\s*(?:in|")?)?$/;
const INCH_TEXT = /^(-?\d+(?:\.\d+)?)\s*(?:in|")$/;

/** A length as a person writes it, "4.5", "450 cm", "14ft", "5'9\"" [m]. */
export function parseLength(field: string, written: string): Outcome<number> {
  const text = written.trim().toLowerCase().replace("−", "-");
  const metric = METRIC_TEXT.exec(text);
  if (metric !== null) return succeed(Number(metric[1]) * (METRIC[metric[2] ?? ""] ?? 1));
  const feet = FEET_TEXT.exec(text);
  if (feet !== null) {
    const lengthM = Number(feet[2]) * FOOT_M + Number(feet[3] ?? 0) * INCH_M;
    return succeed(feet[1] === "-" ? -lengthM : lengthM);
  }
  const inches = INCH_TEXT.exec(text);
  if (inches !== null) return succeed(Number(inches[1]) * INCH_M);
  const comma = /^\d+,\d+$/.test(text) ? ", with a point and not a comma" : "";
  return refuse(field, written, `a length such as 4.5, 450cm or 14ft9in${comma}`);
}

/** Feet and inches, to the nearest inch: "5 ft 9 in". */
export function formatFeet(lengthM: number): string {
  const inches = Math.round(Math.abs(lengthM) / INCH_M);
  const sign = lengthM < 0 && inches > 0 ? "\u2212" : "";
  const feet = Math.floor(inches / 12);
  const rest = inches % 12;
  const parts = [feet > 0 ? `${feet}\u00a0ft` : "", rest > 0 || feet === 0 ? `${rest}\u00a0in` : ""];
  return sign + parts.filter((part) => part !== "").join(" ");
}
