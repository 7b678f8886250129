import type { KitItem } from "@nightspan/core";
import type { KitDocument } from "./camp-document.ts";
import type { DefaultsLedger } from "./defaults-ledger.ts";
import { convert, present } from "./optional.ts";

export function kitItemToSi(item: KitDocument, defaults: DefaultsLedger): KitItem {
  const common = {
    id: item.id,
    count: item.count ?? defaults.take("kit[].count", item.id),
    massKg: item.mass_kg,
    state: item.state ?? defaults.take("kit[].state", item.id),
  };
  switch (item.kind) {
    case "hammock":
      return hammockToSi(item, common, defaults);
    case "suspension":
      return suspensionToSi(item, common, defaults);
    case "tarp":
      return present({
        ...common,
        kind: item.kind,
        shape: item.shape,
        ridgeM: item.ridge_m,
        widthM: item.width_m,
      });
    case "under":
      return present({
        ...common,
        kind: item.kind,
        insulationM2KPerW: item.r_m2k_w,
        limitK: convert(item.limit_c, kelvin),
        coveredRatio: item.covered,
      });
    case "over":
      return present({
        ...common,
        kind: item.kind,
        insulationM2KPerW: item.r_m2k_w,
        comfortK: convert(item.comfort_c, kelvin),
      });
    default:
      return present({ ...common, kind: item.kind, label: item.label });
  }
}

/** 0 °C [K], exact by definition. */
const ICE_K = 273.15;

export function kelvin(celsius: number): number {
  return celsius + ICE_K;
}

interface Common {
  readonly id: string;
  readonly count: number;
  readonly massKg: number | undefined;
  readonly state: KitItem["state"];
}

type Of<K extends KitDocument["kind"]> = Extract<KitDocument, { kind: K }>;

function hammockToSi(item: Of<"hammock">, common: Common, defaults: DefaultsLedger): KitItem {
  return present({
    ...common,
    kind: item.kind,
    lengthM: item.length_m,
    widthM: item.width_m ?? defaults.take("kit[].width_m", item.id),
    ridgelineM: item.ridgeline_m,
    maxUserKg: item.max_user_kg,
    layers: item.layers ?? defaults.take("kit[].layers", item.id),
    net: item.net ?? defaults.take("kit[].net", item.id),
    eaN: item.ea_n,
  });
}

function suspensionToSi(item: Of<"suspension">, common: Common, defaults: DefaultsLedger): KitItem {
  const widthMm = item.strap_width_mm ?? defaults.take("kit[].strap_width_mm", item.id);
  return present({
    ...common,
    kind: item.kind,
    type: item.type,
    minM: item.min_m ?? defaults.take("kit[].min_m", item.id),
    maxM: item.max_m,
    strapLengthM: item.strap_length_m,
    strapWidthM: widthMm / 1000,
    eaN: item.ea_n,
    ratedLoadN: item.rated_load_n,
    breakingN: item.breaking_n,
    throughOwnEye: item.through_own_eye,
  });
}
