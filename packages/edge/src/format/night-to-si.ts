import { degrees, type Night, type NightHour, type SetUp } from "@nightspan/core";
import type { CampDocument, NightDocument } from "./camp-document.ts";
import type { DefaultsLedger } from "./defaults-ledger.ts";
import { findInstant, type ClockOf } from "./instant.ts";
import { kelvin } from "./kit-to-si.ts";
import { convert, present } from "./optional.ts";

export function nightToSi({ night, date, place }: CampDocument, defaults: DefaultsLedger): Night | undefined {
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
    hours: hoursToSi(night, { date, timezone: place?.timezone }),
    thunder: night.thunder,
    thunderRule: thunderRuleToSi(night),
  });
}

/** A gust that nobody forecast is at least the wind; that it was taken so is told. */
function asWind({ wind_m_s }: NightDocument, defaults: DefaultsLedger): number {
  defaults.note("night.gust_m_s", wind_m_s);
  return wind_m_s;
}

/** In order of time; that each hour has an instant was seen to before. */
function hoursToSi({ hours }: NightDocument, clock: ClockOf): readonly NightHour[] | undefined {
  if (hours === undefined || hours.length === 0) return undefined;
  return hours
    .map((hour) =>
      present({
        at: findInstant(hour.at, clock) ?? hour.at,
        airK: kelvin(hour.air_c),
        windMS: hour.wind_m_s,
        gustMS: hour.gust_m_s,
        rainMmH: hour.rain_mm_h,
      }),
    )
    .sort((one, other) => (one.at < other.at ? -1 : 1));
}

function thunderRuleToSi({ thunder_rule: rule }: NightDocument): Night["thunderRule"] {
  if (rule === undefined) return undefined;
  return { flashToBangS: rule.flash_to_bang_s, waitS: rule.wait_min * 60 };
}

export function setUpToSi({ set_up: setUp }: CampDocument): Partial<SetUp> | undefined {
  if (setUp === undefined) return undefined;
  return present({
    perBerthS: convert(setUp.per_berth_min, seconds),
    helpers: setUp.helpers,
    treeCheckS: convert(setUp.tree_check_min, seconds),
    marginS: convert(setUp.margin_min, seconds),
  });
}

function seconds(minutes: number): number {
  return minutes * 60;
}
