import type { Night, Sleeper } from "../../plan/camp.ts";
import { DEFAULTS } from "../../plan/defaults.ts";
import type { Enough, WarmthHalf } from "../../plan/warmth-types.ts";
import { enoughOf } from "../warmth/half-verdict.ts";
import { tonightAir, type HammockAir } from "../warmth/tonight-air.ts";
import { halfMargins, warmKit, type HalfMargins } from "../warmth/warmth-margin.ts";
import type { Holding, LineOf } from "./store-hands.ts";
import type { HalfMarginsOf } from "./warmth-tables.ts";

export interface TonightMargins extends HalfMarginsOf {
  /** Whether each half of what is held is enough, helped by the other. */
  readonly enough: (sleeper: Sleeper, held: Holding) => Readonly<Record<WarmthHalf, Enough>>;
}

/**
 * The margin of each half by itself, as the store deals by it: as if the other half were just good enough, and without what a
 * bag pressed below the back adds. So neither hangs on the other, and nobody is less warm than the dealing says.
 *
 * Without a night a usual one stands in, so that who sleeps cold gets the warmer things; then no margin is told.
 */
export function tonightMargins(air: HammockAir = tonightAir(STAND_IN)): TonightMargins {
  const kept = new Map<string, HalfMargins>();
  const margins = (sleeper: Sleeper, hung: Holding, warm: WarmLines): HalfMargins => {
    const { tarp, hammock } = hung;
    const { massKg, statureM, ageYears, sex, sleeps, hat, learnt } = sleeper;
    const body = [massKg, statureM, ageYears, sex, sleeps, hat, learntKey(learnt)];
    const key = [warm.under?.id, warm.over?.id, tarp === undefined, hammock?.layers, ...body].join("|");
    const known = kept.get(key) ?? halfMargins(sleeper, air, warmKit(sleeper, { ...warm, tarp, hammock }));
    kept.set(key, known);
    return known;
  };
  const isBarred = (hung: Holding, under: LineOf<"under"> | undefined) =>
    under?.fitsNet === false && hung.hammock?.net === true && !hung.pinned.has("under");
  return {
    underK: (sleeper, hung, under) =>
      isBarred(hung, under) ? -Infinity : margins(sleeper, hung, { under, over: undefined }).under.marginK,
    overK: (sleeper, hung, over) => margins(sleeper, hung, { under: undefined, over }).over.marginK,
    enough: (sleeper, held) => {
      const { under, over } = margins(sleeper, held, { under: held.under, over: held.over });
      return { under: enoughOf(under), over: enoughOf(over) };
    },
    both: (sleeper, held) => {
      const { under, over } = margins(sleeper, held, { under: held.under, over: held.over });
      return { under: under.marginK, over: over.marginK };
    },
  };
}

function learntKey(learnt: Sleeper["learnt"]): string {
  if (learnt === undefined) return "";
  if (learnt.by === "youth-rule") return `${learnt.under} ${learnt.over}`;
  return [learnt.under, learnt.over].map(({ offsetK, bandK }) => `${offsetK} ${bandK}`).join(" ");
}

/** What a layer that is borrowed should be rated for [K]; nothing without a night. */
export function airAskedK(air: HammockAir | undefined): ((sleeper: Sleeper) => number) | undefined {
  return air === undefined ? undefined : () => air.airK - DEFAULTS["warmth.label_below_k"].value;
}

interface WarmLines {
  readonly under: LineOf<"under"> | undefined;
  readonly over: LineOf<"over"> | undefined;
}

/** A low of 5 °C, for order alone. */
const STAND_IN: Night = {
  lowK: 278.15,
  windMS: 3,
  gustMS: 5,
  windHeightM: DEFAULTS["night.wind_height_m"].value,
  rainMmH: DEFAULTS["night.rain_mm_h"].value,
  humidityRatio: DEFAULTS["night.humidity"].value,
  cloudRatio: DEFAULTS["night.cloud"].value,
};
