import { GRAVITY_M_S2, toldBodyMark } from "@nightspan/core";
import type { Labels, QuantityText, TextItem } from "../scene/text-item.ts";
import { hasRightToLeft } from "../svg/direction.ts";
import { ENGLISH } from "./english.ts";

/** Plain SI English: what goldens are drawn with, and what `edge` may build on. */
export const plainLabels: Labels = (item) => {
  if ("name" in item) return item.name;
  if ("said" in item) return item.said;
  if ("word" in item) return sentence(ENGLISH[item.word], item.args ?? {});
  if ("quantity" in item) return quantityWords(item);
  if ("day" in item) return dayWords(item.day, item.style);
  return bodyMarkWords(item.bodyMarkM, item.statureM);
};

function sentence(pattern: string, args: Readonly<Record<string, TextItem>>): string {
  return pattern.replace(/\{(\w+)\}/g, (hole, key: string) => {
    const item = args[key];
    if (item === undefined) return hole;
    const words = plainLabels(item);
    return hasRightToLeft(words) ? `\u2068${words}\u2069` : words;
  });
}

/** "chin", "chin + 10 cm": a height, told to 5 cm, as a place on a body. */
export function bodyMarkWords(heightM: number, statureM: number): string {
  const { mark, deviationM } = toldBodyMark(heightM, statureM);
  const place = ENGLISH[`mark.${mark}`];
  if (deviationM === 0) return place;
  const off = plainLabels({ quantity: "short-length", value: Math.abs(deviationM), digits: 0 });
  return `${place} ${deviationM > 0 ? "+" : "\u2212"} ${off}`;
}

function quantityWords(item: QuantityText): string {
  const [number, unit] = numberAndUnit(item);
  if (item.part === "number") return number;
  if (item.part === "unit") return unit;
  if (unit === "") return number;
  return unit === "°" ? number + unit : `${number}${NO_BREAK}${unit}`;
}

function numberAndUnit({ quantity, value, digits }: QuantityText): readonly [string, string] {
  switch (quantity) {
    case "length":
      return [decimal(value, digits), "m"];
    case "short-length":
    case "diameter":
      return [decimal(value * 100, digits), "cm"];
    case "width":
      return [decimal(value * 1000, digits), "mm"];
    case "angle":
      return [decimal((value * 180) / Math.PI, digits), "°"];
    case "force":
      return [decimal(value, digits), "N"];
    case "hanging":
      return [decimal(value / GRAVITY_M_S2, digits), "kg"];
    case "steps":
      return [halves(value), ""];
    case "count":
      return [decimal(value, digits), ""];
    case "slope":
      return [`1 in ${decimal(1 / value, digits)}`, ""];
    case "flow":
      return [decimal(value * 3.6e9, digits), `mL${NO_BREAK}in${NO_BREAK}an${NO_BREAK}hour`];
    case "speed":
      return [decimal(value, digits), "m/s"];
    case "temperature":
      return [decimal(value - ZERO_C_IN_K, digits), "°C"];
    case "mass":
      return [decimal(value, digits), "kg"];
    case "share":
      return [decimal(value * 100, digits), "%"];
    case "heat":
      return [decimal(value, digits), "W/m²"];
    case "area":
      return [decimal(value, digits), "m²"];
    case "bearing":
      return [WINDS[Math.round((value * 4) / Math.PI + 8) % 8] ?? "", ""];
  }
}

function decimal(value: number, digits: number): string {
  const text = Math.abs(value).toFixed(digits);
  return value < 0 && Number(text) !== 0 ? `−${text}` : text;
}

function halves(value: number): string {
  const twice = Math.round(value * 2);
  const whole = Math.floor(twice / 2);
  if (twice % 2 === 0) return String(whole);
  return whole === 0 ? "½" : `${whole}½`;
}

function dayWords(day: string, style: "short" | "with-weekday"): string {
  const [year = 0, month = 1, date = 1] = day.split("-").map(Number);
  const short = `${date} ${MONTHS[month - 1] ?? ""}`;
  return style === "short" ? short : `${DAYS[weekday(year, month, date)] ?? ""} ${short}`;
}

/** Day of the week by Zeller's rule for the Gregorian calendar, Sunday 0. */
function weekday(year: number, month: number, date: number): number {
  const [m, y] = month < 3 ? [month + 12, year - 1] : [month, year];
  const sum = date + Math.floor((13 * (m + 1)) / 5) + y + Math.floor(y / 4) - Math.floor(y / 100);
  return (sum + Math.floor(y / 400) + 6) % 7;
}

const ZERO_C_IN_K = 273.15;
const NO_BREAK = "\u00a0";
const WINDS = ["north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"];
const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];
const DAYS = ["Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"];
