import { refuse, succeed, type Outcome } from "../../outcome/outcome.ts";
import type { Camp } from "../../plan/camp.ts";
import type { Tarp } from "../../plan/kit.ts";
import type { PlannedBerth } from "../../plan/plan.ts";
import type { BerthTarp, RoseSpoke, WetMap } from "../../plan/tarp-types.ts";
import { rainRose } from "../../shelter/rain-rose.ts";
import { wetMap } from "../../shelter/wet-map.ts";
import { ASSUMED_HAMMOCK } from "../assumed-kit.ts";
import type { CampPlace } from "../camp-places-types.ts";
import { findBerthTarp, type PitchedBerth } from "./berth-tarp.ts";
import { tarpWeather, type HungPlace } from "./shelter-place.ts";
import { wetRates } from "./wet-answers.ts";

/**
 * One berth's tarp with all that stands behind its plain answer: many pitches of every tarp of the store searched, the
 * trade-off among them, the wet map and the rose.
 *
 * Shapes   a camp and one berth of its plan → the tarp in full; its pitch may differ from the plan's short search
 * Units    SI
 * Holds    berths whose plan has a tarp; guys are not compared with neighbours here
 * Source   rain-shade, tarp-geometry (handbook/shelter.md)
 */
export function tarpInFull(camp: Camp, berth: PlannedBerth): Outcome<BerthTarp> {
  const tarps = storeTarps(camp, berth.kit.tarp);
  if (tarps.length === 0) return refuse("kit", berth.kit.tarp, "a tarp in use in the store");
  const found = findBerthTarp({
    camp,
    weather: tarpWeather(camp),
    hung: hungPlaceOf(camp, berth),
    around: { trees: [], obstacles: [], berths: [] },
    effort: "many",
    tarps,
  });
  if (found === undefined) return refuse("tarp", berth.id, "a tarp whose ridge can be tied within reach");
  return succeed({ ...found.tarp, wetMap: wetMapOf(found), rose: roseOf(found) });
}

/** The berth's own tarp first, then one of every other line in use. */
function storeTarps({ kit }: Camp, own: string | undefined): Tarp[] {
  const tarps = kit.flatMap((item) => (item.kind === "tarp" && item.state === "in-use" ? [item] : []));
  return [...tarps.filter(({ id }) => id === own), ...tarps.filter(({ id }) => id !== own)];
}

function hungPlaceOf({ kit, sleepers, ground }: Camp, berth: PlannedBerth): HungPlace {
  const { id, spanM, bearingRad, hang } = berth;
  const at = (tree: string) => ground?.trees.find((one) => one.id === tree);
  const [head, foot] = [at(berth.headTree), at(berth.footTree)];
  const hammock = kit.find((item) => item.kind === "hammock" && item.id === berth.kit.hammock);
  const sleeper = sleepers.find((one) => one.id === berth.sleeper);
  const place: CampPlace = {
    first: 0,
    second: 1,
    spanM,
    spanErrorM: 0,
    dbhM: [head?.dbhM ?? 0, foot?.dbhM ?? 0],
    dbhAssumed: false,
    headSecond: false,
    stepItOut: berth.stepItOut,
    stepped: false,
    ...(bearingRad === undefined ? {} : { bearingRad }),
    ...(head === undefined || foot === undefined
      ? {}
      : { middle: [(head.xM + foot.xM) / 2, (head.yM + foot.yM) / 2] as const }),
  };
  return {
    id,
    place,
    hang,
    kit: {
      hammock: { widthM: hammock?.kind === "hammock" ? hammock.widthM : ASSUMED_HAMMOCK.widthM },
      sleeper: { hand: sleeper?.hand ?? "right" },
    },
  };
}

/** A level grid at the height of the lying body, a metre past the trees' middles and 2 m aside. */
function wetMapOf({ where, tarp }: PitchedBerth): WetMap {
  const { body } = where;
  const { berth, weather } = where.site;
  const grid = {
    fromXM: -1,
    fromYM: -ASIDE_M,
    zM: body.patches.reduce((sum, { middle }) => sum + middle[2], 0) / body.patches.length,
    cellM: CELL_M,
    columns: Math.ceil((berth.spanM + 2) / CELL_M),
    rows: Math.round((2 * ASIDE_M) / CELL_M),
  };
  return { ...grid, shares: wetMap(grid, tarp.panels, weather, where.windsFrom) };
}

const CELL_M = 0.1;
const ASIDE_M = 2;

function roseOf({ where, tarp }: PitchedBerth): RoseSpoke[] {
  const { weather } = where.site;
  return rainRose(where.body, tarp.panels, weather).map(({ windFrom, wet }) => ({
    windFromRad: turned((where.bearingRad ?? 0) - windFrom),
    wet: wetRates(wet, weather.rain),
  }));
}

function turned(rad: number): number {
  const inTurn = rad % (2 * Math.PI);
  return inTurn < 0 ? inTurn + 2 * Math.PI : inTurn;
}
