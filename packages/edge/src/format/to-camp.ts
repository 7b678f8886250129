import type { Camp, CampPlace, Pin } from "@nightspan/core";
import type { CampDocument, PinDocument } from "./camp-document.ts";
import { defaultsLedger } from "./defaults-ledger.ts";
import { groundToSi } from "./ground-to-si.ts";
import { kitItemToSi } from "./kit-to-si.ts";
import { nightToSi, setUpToSi } from "./night-to-si.ts";
import { present } from "./optional.ts";
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
    night: nightToSi(document, defaults),
    setUp: setUpToSi(document),
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
