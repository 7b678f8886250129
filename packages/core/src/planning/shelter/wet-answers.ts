import type { BerthTarp, WetRates, WetVerdict } from "../../plan/tarp-types.ts";
import { dripping, type FallingRain } from "../../shelter/falling-rain.ts";
import {
  BODY_PARTS,
  COVERED_SHARE,
  coveredWettings,
  findLowerBy,
  worstShares,
} from "../../shelter/lower-by.ts";
import type { PitchTrial } from "../../shelter/pitch-trial.ts";
import { wetting, type Wetting } from "../../shelter/wetting.ts";
import type { ShelterPlace, TarpWeather } from "./shelter-place.ts";

/** What gets wet, plainly for each side and end and as water for each layer, tonight and when the leaves drip. */
export function wetAnswers(
  weather: TarpWeather,
  { site, body, windsFrom }: ShelterPlace,
  { tarp, room }: PitchTrial,
): Pick<BerthTarp, "wetVerdicts" | "wet" | "canopyDrip"> {
  const { panels } = tarp;
  const common = { body, weather: site.weather, windsFrom };
  const open = coveredWettings({ ...common, panels: [] });
  const wets = coveredWettings({ ...common, panels });
  const input = { ...common, panels, open };
  const shares = worstShares(open, wets);
  const mostM = Math.min(room.headroomM - LEAST_ROOM_M, room.lowestEdgeM);
  const wetVerdicts = BODY_PARTS.map((part): WetVerdict => {
    const covered = shares[part] < COVERED_SHARE;
    const lowerByM = covered ? undefined : findLowerBy(input, part, mostM);
    return { part, covered, shareRatio: shares[part], ...(lowerByM === undefined ? {} : { lowerByM }) };
  });
  const worst = wets.reduce((most, wet) => (wet.wholeM2 > most.wholeM2 ? wet : most));
  const drip = dripping(weather.assumedMmH, CANOPY_DROP_MM);
  const calm = { rain: drip, winds: [{ windMS: 0, share: 1 }] };
  return {
    wetVerdicts,
    wet: weather.rainMmH > 0 ? wetRates(worst, site.weather.rain) : DRY,
    canopyDrip: wetRates(wetting(body, panels, calm, 0), drip),
  };
}

/** What must stay over the hammock when the tarp comes down [m]. */
const LEAST_ROOM_M = 0.05;
/** Median by volume under a wood in leaf. Source: throughfall-2014. */
const CANOPY_DROP_MM = 3.31;
const DRY: WetRates = { hammockM3S: 0, sleeperM3S: 0, underM3S: 0 };

export function wetRates({ layersM2 }: Wetting, { rateMS }: FallingRain): WetRates {
  return {
    hammockM3S: layersM2.hammock * rateMS,
    sleeperM3S: layersM2.sleeper * rateMS,
    underM3S: layersM2.under * rateMS,
  };
}
