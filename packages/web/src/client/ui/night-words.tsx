import type { Night } from "@nightspan/core";
import { opened } from "../state/camp-store.ts";
import { sayDay } from "../state/today.ts";
import { WORDS } from "../words.ts";
import { fill } from "../words.ts";

const ZERO_C_IN_K = 273.15;
const POINTS = ["N", "NE", "E", "SE", "S", "SW", "W", "NW"] as const;

/** The night in a few words: the day, how cold, how windy. */
export function NightWords() {
  const camp = opened.value?.camp;
  if (camp === undefined) return null;
  const parts = [
    ...(camp.date === undefined ? [] : [sayDay(camp.date, true)]),
    ...(camp.night === undefined ? [] : nightParts(camp.night)),
  ];
  return <p class="strip-night wide-only">{parts.join(" · ")}</p>;
}

function nightParts(night: Night): readonly string[] {
  const from = night.windFromRad;
  const gust = fill(WORDS.night.gusts, { speed: Math.round(night.gustMS) });
  const point = from === undefined ? undefined : POINTS[Math.round(from / (Math.PI / 4)) % POINTS.length];
  return [
    fill(WORDS.night.lowShort, { low: sayWhole(night.lowK - ZERO_C_IN_K) }),
    point === undefined ? gust : fill(WORDS.night.gustsFrom, { gusts: gust, point }),
    ...(night.rainMmH > 0 ? [fill(WORDS.night.rainShort, { rain: night.rainMmH })] : []),
  ];
}

function sayWhole(value: number): string {
  const whole = Math.round(value);
  return whole < 0 ? `\u2212${Math.abs(whole)}` : String(whole);
}
