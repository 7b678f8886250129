import { degrees, type Camp, type CampPlace, type Night, type Pin } from "@nightspan/core";
import type { CampDocument, NightDocument, PinDocument } from "./camp-document.ts";
import { defaultsLedger, type DefaultsLedger } from "./defaults-ledger.ts";
import { groundToSi } from "./ground-to-si.ts";
import { kelvin, kitItemToSi } from "./kit-to-si.ts";
import { convert, present } from "./optional.ts";
import { groupToSi, sleeperToSi } from "./people-to-si.ts";
import { rulesToSi } from "./rules-to-si.ts";

/** The camp in SI units with every default filled in and listed: the one place of conversion. */
export function toCamp(document: CampDocument): Camp {
  const defaults = defaultsLedger();
  const rules = rulesToSi(document.rules, defaults);
  const parts = {
    name: document.name,
    date: document.date,
    place: placeToSi(document.place),
    ground: groundToSi(document, rules, defaults),
    rules,
    sleepers: document.sleepers.map((sleeper) => sleeperToSi(sleeper, defaults)),
    groups: (document.groups ?? []).map(groupToSi),
    kit: (document.kit ?? []).map((item) => kitItemToSi(item, defaults)),
    pins: document.pins?.map(pinToSi),
    night: nightToSi(document.night, defaults),
  };
  return present({ ...parts, defaultsUsed: defaults.used() });
}

function pinToSi({ sleeper, trees, pair, head }: PinDocument): Pin {
  return present({ sleeper, trees, pair, head });
}

function placeToSi(place: CampDocument["place"]): CampPlace | undefined {
  if (place === undefined) return undefined;
  return present({
    latDeg: place.lat_deg,
    lonDeg: place.lon_deg,
    elevationM: place.elevation_m,
    timezone: place.timezone,
  });
}

function nightToSi(night: NightDocument | undefined, defaults: DefaultsLedger): Night | undefined {
  if (night === undefined) return undefined;
  return present({
    lowK: kelvin(night.low_c),
    highK: convert(night.high_c, kelvin),
    windMS: night.wind_m_s,
    gustMS: night.gust_m_s ?? asWind(night, defaults),
    windHeightM: night.wind_height_m ?? defaults.take("night.wind_height_m"),
    windFromRad: convert(night.wind_from_deg, degrees),
    rainMmH: night.rain_mm_h ?? defaults.take("night.rain_mm_h"),
    humidityRatio: night.humidity ?? defaults.take("night.humidity"),
    cloudRatio: night.cloud ?? defaults.take("night.cloud"),
    stationElevationM: night.station_elevation_m,
    stopGustMS: night.stop_gust_m_s,
  });
}

/** A gust that nobody forecast is at least the wind; that it was taken so is told. */
function asWind({ wind_m_s }: NightDocument, defaults: DefaultsLedger): number {
  defaults.note("night.gust_m_s", wind_m_s);
  return wind_m_s;
}
